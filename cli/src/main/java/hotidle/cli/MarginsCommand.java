package hotidle.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.text.Dimension;
import hotidle.duty.Adjustable;
import hotidle.duty.DutyPoint;
import hotidle.duty.Margin;
import hotidle.duty.Unit;
import hotidle.network.Placed;
import hotidle.newton.SteadySolver;
import hotidle.part.SpoolValve;
import hotidle.result.State;
import hotidle.result.Unsolved;
import hotidle.study.HeldLine;
import hotidle.study.HubOverSpeed;
import hotidle.study.Judgement;
import hotidle.study.Roles;
import hotidle.study.Sensitivity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
    Asked asked;

    @Option(names = "--build", description = "a build; give it again for each. Default: the circuit's first")
    List<String> builds = List.of();

    @Option(
            names = "--speed",
            defaultValue = "400..4000/50rpm",
            description = "engine speeds searched for the hub's least film and largest load. Default: ${DEFAULT-VALUE}")
    String speed;

    @Option(
            names = "--sensitivity",
            description = "shows instead how much each size moves the least headroom, per 0.001 in or 0.01 mm")
    boolean sensitivity;

    @Spec
    CommandSpec spec;

    private MarginWords words;

    @Override
    public Integer call() {
        words = new MarginWords(asked.shared.units);
        DescribedCircuit described = asked.load();
        List<Unit> units = Circuits.units(described, builds);
        List<Double> speeds = Choice.series("--speed", speed, Dimension.SPEED);
        if (sensitivity) {
            return sensitivity(described, units, speeds);
        }
        List<Judgement> judged = judge(units, speeds);
        String text =
                switch (asked.shared.format) {
                    case TABLE -> tables(described, units, judged);
                    case CSV -> csv(judged);
                    case JSON -> StateJson.text(json(units, judged));
                };
        spec.commandLine().getOut().print(text);
        return judged.stream().allMatch(Judgement::known) ? HotIdle.DONE : HotIdle.UNSOLVED;
    }

    /** What each size does to the margins. */
    private int sensitivity(DescribedCircuit described, List<Unit> units, List<Double> speeds) {
        List<SensitivityText> found = new ArrayList<>();
        for (Unit unit : units) {
            Adjustable build = described.adjustable(unit.build());
            Progress progress = new Progress(
                    spec.commandLine().getErr(),
                    "changing sizes of " + unit.build(),
                    unit.duties().size() + build.dimensions().size());
            found.add(new SensitivityText(asked.shared.units, build, Sensitivity.study(build, speeds, progress::step)));
            progress.end();
        }
        spec.commandLine()
                .getOut()
                .print(
                        switch (asked.shared.format) {
                            case TABLE -> sensitivityTables(described, found);
                            case CSV -> {
                                TextTable table = new TextTable(SensitivityText.head());
                                found.forEach(one -> one.rows().forEach(table::add));
                                yield table.csv();
                            }
                            case JSON -> {
                                ObjectNode root = StateJson.object();
                                root.put("circuit", described.name());
                                ArrayNode all = root.putArray("builds");
                                found.forEach(one -> all.add(one.json()));
                                yield StateJson.text(root);
                            }
                        });
        return found.stream().allMatch(one -> one.found().unsolved().isEmpty()) ? HotIdle.DONE : HotIdle.UNSOLVED;
    }

    private static String sensitivityTables(DescribedCircuit described, List<SensitivityText> found) {
        StringBuilder text =
                new StringBuilder(Wrap.lines(Choice.headed(described.name(), described.about()), "", "  "));
        text.append("\n").append(Shared.CAUTION).append("\n");
        found.forEach(one -> text.append("\n").append(one.table()));
        return text.append("\n")
                .append(Wrap.lines(SensitivityText.legend(), "", ""))
                .toString();
    }

    private record Work(Unit unit, DutyPoint duty) {}

    private List<Judgement> judge(List<Unit> units, List<Double> speeds) {
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

    private static List<Judgement> of(Unit unit, List<Judgement> judged) {
        return judged.stream()
                .filter(one -> one.unit().build().equals(unit.build()))
                .toList();
    }

    private String tables(DescribedCircuit described, List<Unit> units, List<Judgement> judged) {
        StringBuilder text = new StringBuilder();
        text.append(Wrap.lines(Choice.headed(described.name(), described.about()), "", "  "));
        for (Unit unit : units) {
            text.append(Wrap.lines(words.summary(unit.build(), of(unit, judged)), "", "  "));
            text.append(Wrap.lines(count(of(unit, judged)), "  ", "  "));
        }
        notJudged(units.get(0)).ifPresent(line -> text.append(Wrap.lines(line, "", "  ")));
        text.append("\n").append(Shared.CAUTION).append("\n");
        for (Unit unit : units) {
            for (Judgement one : of(unit, judged)) {
                text.append("\n").append(duty(units, one));
            }
        }
        if (units.size() > 1) {
            text.append(sameSpeed(units, judged));
        }
        return text.append("\n").append(Wrap.lines(LEGEND, "", "")).toString();
    }

    /** That regulation is not judged, why, and what to write to have it judged; empty where it is. */
    private static Optional<String> notJudged(Unit unit) {
        if (unit.commanded().isPresent()) {
            return Optional.empty();
        }
        boolean valve = unit.network().parts().stream().anyMatch(placed -> placed.part() instanceof SpoolValve);
        return Optional.of(
                !valve
                        ? "Regulation is not judged: the circuit has no spool-valve, so nothing in it regulates the line."
                        : "Regulation is not judged: the circuit asks for no line pressure that could be held. To have it"
                                + " judged add " + HowToCommand.of(unit)
                                + ", then the spring's own set pressure is what must be held; with a solenoid also solenoid,"
                                + " line-pressure and pilot-pressure (circuits/README.md, step 4).");
    }

    private static final String LEGEND =
            "Headroom is what is there over what is needed, less 1 (of a limit: what is allowed over"
                    + " what is there, less 1). FAILS: below 0; close: up to 10 %. Clutch figures carry the capacity factor of the"
                    + " circuit file. The film allowed is an assumption from the roughness of hub and bore.";

    private static String count(List<Judgement> judged) {
        List<Margin> all =
                judged.stream().flatMap(one -> one.margins().stream()).toList();
        return "Of " + all.size() + " limits at " + judged.size() + " duty points: " + count(all, Margin.Verdict.FAILS)
                + " fail, " + count(all, Margin.Verdict.CLOSE) + " close, " + count(all, Margin.Verdict.HOLDS)
                + " hold.";
    }

    private static long count(List<Margin> all, Margin.Verdict verdict) {
        return all.stream().filter(margin -> margin.verdict() == verdict).count();
    }

    private String duty(List<Unit> units, Judgement judged) {
        StringBuilder text = new StringBuilder();
        DutyPoint duty = judged.duty();
        text.append(Wrap.lines(
                (units.size() > 1 ? judged.unit().build() + ", " : "") + Choice.titled(duty.name(), duty.about()) + ": "
                        + Quantity.SPEED.with(asked.shared.units, duty.speed()) + ", " + duty.range() + ", lockup "
                        + duty.lockup().name().toLowerCase(Locale.ROOT) + ", sump "
                        + Quantity.TEMPERATURE.with(
                                asked.shared.units, duty.temperatures().get("sump"))
                        + ", engine torque " + Quantity.TORQUE.with(asked.shared.units, duty.engineTorque()),
                "",
                "  "));
        if (judged.outcome().state().isEmpty()) {
            return text.append(Wrap.lines(
                            CompareCommand.why(judged.outcome().unsolved().orElseThrow()) + "; nothing is known here.",
                            "  ",
                            "  "))
                    .toString();
        }
        TextTable table = new TextTable(List.of("limit", "part", "is", "needed or allowed", "headroom", "verdict"));
        for (Margin margin : judged.margins()) {
            table.add(List.of(
                    MarginWords.label(margin),
                    margin.part(),
                    words.value(margin),
                    (margin.kind().upper() ? "at most " : "") + words.needed(margin),
                    words.headroom(margin),
                    MarginWords.verdict(margin)));
        }
        text.append(table.aligned());
        judged.margins().stream()
                .filter(margin -> margin.verdict() != Margin.Verdict.HOLDS)
                .forEach(margin -> text.append(Wrap.lines(
                        MarginWords.verdict(margin) + " " + MarginWords.label(margin) + " (" + margin.part() + "). "
                                + words.why(judged, margin),
                        "  ",
                        "    ")));
        judged.leaky()
                .forEach((clutch, below) -> text.append(Wrap.lines(
                        clutch + " is " + Quantity.PRESSURE.with(asked.shared.units, below)
                                + " below the line: more than 15 psi points to a leak in its circuit (common practice).",
                        "  ",
                        "    ")));
        unknown(judged).ifPresent(line -> text.append(Wrap.lines(line, "  ", "    ")));
        hub(judged).ifPresent(line -> text.append(Wrap.lines(line, "  ", "    ")));
        return text.toString();
    }

    private Optional<String> unknown(Judgement judged) {
        List<Double> open = judged.hub().map(HubOverSpeed::unsolved).orElse(List.of());
        Optional<Unsolved> held = judged.held().flatMap(HeldLine::unsolved);
        if (held.isPresent()) {
            return Optional.of("Regulation is not known: " + CompareCommand.why(held.get()) + ".");
        }
        return open.isEmpty()
                ? Optional.empty()
                : Optional.of("At " + open.size() + " of the speeds searched no steady state was found, the first "
                        + Quantity.SPEED.with(asked.shared.units, open.get(0))
                        + ": film and load are not known there.");
    }

    /** Load, unit load, film and Trumpler's film where the film is thinnest. */
    private Optional<String> hub(Judgement judged) {
        return judged.hub().flatMap(HubOverSpeed::thinnest).map(state -> {
            String hub = Roles.of(judged.unit()).hub().map(Placed::name).orElseThrow();
            return "Hub where its film is thinnest, " + Quantity.SPEED.with(asked.shared.units, speedOf(state))
                    + ": load "
                    + Quantity.FORCE.with(asked.shared.units, state.measure(hub, "load_n")) + ", unit load "
                    + Quantity.PRESSURE.with(asked.shared.units, state.measure(hub, "unit_load_pa")) + ", film "
                    + Quantity.FILM.with(asked.shared.units, state.measure(hub, "least_film_m"))
                    + ". For comparison, not judged here: Trumpler's rule for ground journals asks for "
                    + Quantity.FILM.with(asked.shared.units, state.measure(hub, "trumpler_film_m")) + ".";
        });
    }

    private static double speedOf(State state) {
        return state.conditions().speed();
    }

    /** The films of all builds at the speeds at which one of them is thinnest: thinnest films at different speeds mislead. */
    private String sameSpeed(List<Unit> units, List<Judgement> judged) {
        StringBuilder text = new StringBuilder(
                "\nHub film [" + Quantity.FILM.in(asked.shared.units).unit()
                        + "] of all builds at the same speed: each line is a speed at which one build is thinnest\n");
        List<String> head = new ArrayList<>(List.of("duty", "rpm"));
        units.forEach(unit -> head.add(unit.build()));
        TextTable table = new TextTable(head);
        for (Judgement one : judged) {
            Optional<State> thinnest = one.hub().flatMap(HubOverSpeed::thinnest);
            if (thinnest.isPresent()) {
                List<String> row = new ArrayList<>(
                        List.of(one.duty().name(), Quantity.SPEED.number(asked.shared.units, speedOf(thinnest.get()))));
                units.forEach(unit -> row.add(filmAt(unit, one.duty(), thinnest.get())));
                table.add(row);
            }
        }
        return text.append(table.aligned()).toString();
    }

    private String filmAt(Unit unit, DutyPoint duty, State like) {
        DutyPoint same = unit.duty(duty.name()).orElseThrow();
        String hub = Roles.of(unit).hub().map(Placed::name).orElse("");
        return new SteadySolver(unit.network())
                .solve(unit.conditions(same).atSpeed(speedOf(like)), Optional.of(like))
                .state()
                .map(state -> state.measure(hub, "metal_contact") > 0
                        ? "contact"
                        : Quantity.FILM.number(asked.shared.units, state.measure(hub, "least_film_m")))
                .orElse("unsolved");
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
        return table.csv();
    }

    private ObjectNode json(List<Unit> units, List<Judgement> judged) {
        ObjectNode root = StateJson.object();
        root.put("circuit", units.get(0).circuit());
        notJudged(units.get(0)).ifPresent(line -> root.putObject("not_judged").put("regulation", line));
        ArrayNode all = root.putArray("builds");
        for (Unit unit : units) {
            ObjectNode build = all.addObject();
            build.put("build", unit.build());
            build.put("summary", words.summary(unit.build(), of(unit, judged)));
            ArrayNode states = build.putArray("states");
            for (Judgement one : of(unit, judged)) {
                ObjectNode state = StateJson.state(unit, one.duty(), one.outcome());
                ArrayNode margins = state.putArray("margins");
                one.margins().forEach(margin -> margins.add(json(one, margin)));
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
