package hotidle.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hotidle.answer.StateJson;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.UnsolvedPhrase;
import hotidle.assess.OilBudget;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.text.Dimension;
import hotidle.newton.SteadySolver;
import hotidle.result.Outcome;
import hotidle.study.Repairs;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Where the oil of a build goes, and what each repair wins back. */
@Command(
        name = "leaks",
        mixinStandardHelpOptions = true,
        description =
                "Shows where every bit of oil goes at a duty point, what each repair wins back, and in which order"
                        + " repairs are best done.")
final class LeaksCommand implements Callable<Integer> {

    @Mixin
    Asked asked;

    @Option(names = "--build", description = "a build. Default: the circuit's first")
    String build;

    @Option(names = "--duty", description = "duty point. Default: the first")
    String duty;

    @Option(
            names = "--speed",
            defaultValue = "400..4000/100rpm",
            description = "engine speeds searched for the onset of regulation. Default: ${DEFAULT-VALUE}")
    String speed;

    @Option(
            names = "--steps",
            defaultValue = "12",
            description = "repairs that are put in order. Default: ${DEFAULT-VALUE}")
    int steps;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        DescribedCircuit described = asked.load();
        Adjustable chosen = Circuits.adjustable(described, build);
        Transmission unit = chosen.unit();
        DutyPoint at = duty == null ? unit.duties().get(0) : Choice.duty(unit, duty);
        List<Double> speeds = Choice.series("--speed", speed, Dimension.SPEED);
        if (steps < 0) {
            throw new WrongInputException("hotidle: --steps " + steps + ": allowed is 0 or more");
        }
        if (hotidle.assess.Roles.of(unit).chambers().isEmpty()) {
            throw new WrongInputException("hotidle: " + unit.circuit() + " has no pump, so there is no oil budget");
        }
        Outcome outcome = new SteadySolver(unit.network()).solve(unit.conditions(at));
        Optional<OilBudget> budget = outcome.state().map(state -> OilBudget.of(unit, state));
        Optional<Repairs> repairs = budget.isEmpty() ? Optional.empty() : repairs(chosen, at, speeds);
        Optional<LeaksText> text = budget.flatMap(oil -> repairs.map(
                wins -> new LeaksText(asked.shared.units, unit, at, abouts(described), oil, wins, speeds.get(0))));
        String printed =
                switch (asked.shared.format) {
                    case TABLE ->
                        text.map(known -> known.tables(described.about())).orElseGet(() -> unsolved(unit, at, outcome));
                    case CSV -> text.map(LeaksText::csv).orElseGet(() -> unsolved(unit, at, outcome));
                    case JSON -> StateJson.text(json(unit, at, outcome, budget, repairs));
                };
        spec.commandLine().getOut().print(printed);
        return repairs.isPresent() ? HotIdle.DONE : HotIdle.UNSOLVED;
    }

    private static Map<String, String> abouts(DescribedCircuit described) {
        return described.parts().stream()
                .collect(Collectors.toMap(DescribedCircuit.PartLine::name, DescribedCircuit.PartLine::about));
    }

    private Optional<Repairs> repairs(Adjustable chosen, DutyPoint at, List<Double> speeds) {
        int offered = Repairs.of(chosen).size();
        Progress progress =
                new Progress(spec.commandLine().getErr(), "trying repairs", offered + Math.min(steps, offered));
        Optional<Repairs> found = Repairs.study(chosen, at, speeds, steps, progress::step);
        progress.end();
        return found;
    }

    private static String unsolved(Transmission unit, DutyPoint at, Outcome outcome) {
        return Wrap.lines(
                unit.build() + " at " + at.name() + ": "
                        + outcome.unsolved()
                                .map(why -> UnsolvedPhrase.why(why.culprit(), why.residual(), why.tried()))
                                .orElse("not solved"),
                "",
                "  ");
    }

    private static ObjectNode json(
            Transmission unit, DutyPoint at, Outcome outcome, Optional<OilBudget> budget, Optional<Repairs> repairs) {
        ObjectNode root = StateJson.object();
        root.put("circuit", unit.circuit());
        ObjectNode build = root.putArray("builds").addObject();
        build.put("build", unit.build());
        build.putArray("states").add(StateJson.state(unit, at, outcome));
        budget.ifPresent(known -> {
            ObjectNode node = root.putObject("oil_budget");
            node.put("displaced_m3_s", known.displaced());
            node.put("unexplained_share", known.unexplained());
            ArrayNode paths = node.putArray("paths");
            known.paths()
                    .forEach(path -> paths.addObject()
                            .put("path", path.key())
                            .put("group", path.group().label())
                            .put("fate", path.fate().name().toLowerCase(java.util.Locale.ROOT))
                            .put("flow_m3_s", path.flow())
                            .put("share", path.flow() / known.displaced()));
        });
        repairs.ifPresent(known -> {
            root.set("before", json(known.before()));
            known.all().ifPresent(all -> root.set("all_as_new", json(all)));
            ArrayNode alone = root.putArray("repairs");
            known.alone().forEach(step -> alone.add(json(step)));
            ArrayNode order = root.putArray("order");
            known.order().forEach(step -> order.add(json(step)));
        });
        return root;
    }

    private static ObjectNode json(Repairs.Step step) {
        ObjectNode node = StateJson.object();
        node.put("repair", step.repair().name());
        ObjectNode sizes = node.putObject("sizes");
        step.repair()
                .dimensions()
                .forEach(dimension -> sizes.putObject(dimension.name())
                        .put("from", dimension.value())
                        .put("to", dimension.fresh())
                        .put("unit", dimension.kind() == hotidle.transmission.WearSize.Kind.AREA ? "m2" : "m"));
        node.set("after", json(step.after()));
        return node;
    }

    private static ObjectNode json(Repairs.Effect effect) {
        ObjectNode node = StateJson.object();
        node.put("line_pa", effect.line());
        StateJson.putFinite(node, "set_pressure_pa", effect.set());
        node.put("regulated", effect.regulated());
        ArrayNode starved = node.putArray("starved");
        effect.starved().forEach(starved::add);
        node.put("lube_m3_s", effect.lube());
        node.put("lost_m3_s", effect.lost());
        StateJson.putSpeed(node, "onset_rpm", effect.onset());
        return node;
    }
}
