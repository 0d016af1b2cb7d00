package hotidle.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hotidle.answer.StateJson;
import hotidle.answer.format.Digits;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.assess.Margin;
import hotidle.circuits.DescribedCircuit;
import hotidle.part.Clutch;
import hotidle.study.Judgement;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Every limit of a build at every duty point. */
@Command(
        name = "margins",
        mixinStandardHelpOptions = true,
        description =
                "Judges a build at each duty point: does it regulate, do the clutches hold, is it lubricated, does the"
                        + " hub keep its film? Headroom below 0 fails, up to 10 %% is close.")
final class MarginsCommand implements Callable<Integer> {

    @Mixin
    CircuitOptions asked;

    @Option(names = "--build", description = "a build; give it again for each. Default: the circuit's first")
    List<String> builds = List.of();

    /** Step of the engine speeds searched, where none are given [rev/s]. */
    private static final double STEP = 50 / 60.0;

    @Option(names = "--speed", description = OptionValues.SEARCHED_SPEEDS + "50rpm")
    String speed;

    /** Now a command of its own; kept to say so. */
    @Option(names = "--sensitivity", hidden = true)
    Boolean sensitivity;

    @Spec
    CommandSpec spec;

    private MarginWords words;

    @Override
    public Integer call() {
        MovedOption.refuse("--sensitivity", sensitivity, "hotidle sensitivity CIRCUIT");
        words = new MarginWords(asked.shared.units);
        DescribedCircuit described = asked.load();
        List<Transmission> units = Circuits.units(described, builds);
        List<Double> speeds = OptionValues.searched(speed, units.get(0), STEP);
        List<Judgement> judged = judge(units, speeds);
        String text =
                switch (asked.shared.format) {
                    case TABLE -> new MarginsText(asked.shared.units, units, judged).tables(described.about());
                    case CSV -> csv(judged);
                    case JSON -> StateJson.text(json(units, judged));
                };
        spec.commandLine().getOut().print(text);
        return judged.stream().allMatch(Judgement::known) ? HotIdle.DONE : HotIdle.UNSOLVED;
    }

    private record Work(Transmission unit, DutyPoint duty) {}

    private List<Judgement> judge(List<Transmission> units, List<Double> speeds) {
        List<Work> work = new ArrayList<>();
        units.forEach(unit -> unit.duties().forEach(duty -> work.add(new Work(unit, duty))));
        Progress progress = new Progress(spec.commandLine().getErr(), "judging", work.size());
        List<Judgement> judged = work.parallelStream()
                .map(one -> {
                    Judgement done = Judgement.of(one.unit, one.duty, speeds);
                    progress.step();
                    return done;
                })
                .toList();
        progress.end();
        return judged;
    }

    private String csv(List<Judgement> judged) {
        TextTable table = new TextTable(List.of(
                "build",
                "duty",
                "limit",
                "part",
                "is",
                "needed or allowed",
                "unit",
                "headroom",
                "verdict",
                "rpm",
                "why"));
        for (Judgement one : judged) {
            for (Margin margin : one.margins()) {
                Quantity quantity = MarginWords.quantity(margin);
                table.add(List.of(
                        one.unit().build(),
                        one.duty().name(),
                        margin.kind().word(),
                        margin.part(),
                        quantity.number(asked.shared.units, margin.value()),
                        quantity.number(asked.shared.units, margin.needed()),
                        quantity.in(asked.shared.units).unit() + MarginWords.absolute(margin),
                        Double.isFinite(margin.headroom()) ? Digits.four(margin.headroom()) : "-",
                        margin.verdict().word(),
                        Quantity.SPEED.number(
                                asked.shared.units,
                                margin.speed().orElse(one.duty().speed())),
                        words.why(one, margin)));
            }
        }
        judged.forEach(one -> one.dragging().forEach((clutch, pressure) -> table.add(dragging(one, clutch, pressure))));
        return table.csv();
    }

    /** A clutch that is on where it should be off, as a row of the CSV. */
    private List<String> dragging(Judgement one, String clutch, double pressure) {
        double yields =
                ((Clutch) one.unit().network().part(clutch).orElseThrow().part()).yields();
        Quantity.UnitSystem units = asked.shared.units;
        return List.of(
                one.unit().build(),
                one.duty().name(),
                "clutch-off",
                clutch,
                Quantity.PRESSURE.number(units, pressure),
                Quantity.PRESSURE.number(units, yields),
                Quantity.PRESSURE.in(units).unit(),
                Digits.four(yields / pressure - 1),
                Margin.Verdict.FAILS.word(),
                Quantity.SPEED.number(units, one.duty().speed()),
                words.dragging(one.unit(), one.duty(), Map.of(clutch, pressure)).get(0));
    }

    private ObjectNode json(List<Transmission> units, List<Judgement> judged) {
        ObjectNode root = StateJson.object();
        root.put("circuit", units.get(0).circuit());
        MarginsText.notJudged(units.get(0))
                .ifPresent(line -> root.putObject("not_judged").put("regulation", line));
        ArrayNode all = root.putArray("builds");
        for (Transmission unit : units) {
            ObjectNode build = all.addObject();
            build.put("build", unit.build());
            build.put("summary", words.summary(unit.build(), MarginsText.of(unit, judged)));
            ArrayNode states = build.putArray("states");
            for (Judgement one : MarginsText.of(unit, judged)) {
                ObjectNode state = StateJson.state(unit, one.duty(), one.outcome());
                ArrayNode margins = state.putArray("margins");
                one.margins().forEach(margin -> margins.add(json(one, margin)));
                ObjectNode dragging = state.putObject("clutch_on_though_not_applied_pa");
                one.dragging().forEach(dragging::put);
                ObjectNode leaky = state.putObject("clutch_pressure_far_below_line_pa");
                one.leaky().forEach(leaky::put);
                states.add(state);
            }
        }
        return root;
    }

    private ObjectNode json(Judgement judged, Margin margin) {
        ObjectNode node = StateJson.object();
        node.put("margin", margin.kind().word());
        node.put("part", margin.part());
        StateJson.putFinite(node, "value", margin.value());
        StateJson.putFinite(node, "needed", margin.needed());
        node.put("unit", margin.scale().word());
        node.put("limit", margin.kind().upper() ? "upper" : "lower");
        StateJson.putFinite(node, "headroom", margin.headroom());
        node.put("verdict", margin.verdict().word());
        node.put("engine_speed_rpm", margin.speed().orElse(judged.duty().speed()) * 60);
        node.put("why", words.why(judged, margin));
        return node;
    }
}
