package hotidle.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hotidle.answer.StateJson;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.Caution;
import hotidle.answer.phrase.DoubtPhrase;
import hotidle.assess.Doubt;
import hotidle.circuits.DescribedCircuit;
import hotidle.result.Unsolved;
import hotidle.study.Comparison;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Builds side by side at the duty points. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        description = "Puts builds of a circuit side by side at each duty point, and says in plain words what differs.")
final class CompareCommand implements Callable<Integer> {

    @Mixin
    Asked asked;

    @Option(names = "--build", description = "a build to show; give it again for each. Default: all builds")
    List<String> builds = List.of();

    @Option(
            names = "--speed",
            defaultValue = "400..4000/50rpm",
            description =
                    "engine speeds searched for the onset of regulation and the least film. Default: ${DEFAULT-VALUE}")
    String speed;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        DescribedCircuit described = asked.load();
        List<String> named = builds.isEmpty()
                ? described.builds().stream().map(DescribedCircuit.Build::name).toList()
                : builds;
        List<Transmission> units = Circuits.units(described, named);
        List<Double> speeds = Choice.series("--speed", speed, hotidle.circuits.text.Dimension.SPEED);
        Comparison comparison = Comparison.of(units, speeds);
        String text =
                switch (asked.shared.format) {
                    case TABLE -> tables(described, comparison);
                    case CSV -> csv(comparison);
                    case JSON -> StateJson.text(json(comparison));
                };
        spec.commandLine().getOut().print(text);
        boolean all = comparison.cells().stream()
                .allMatch(cell -> cell.outcome().state().isPresent()
                        && cell.sweep().rising().stream()
                                .allMatch(outcome -> outcome.state().isPresent()));
        return all ? HotIdle.DONE : HotIdle.UNSOLVED;
    }

    private String tables(DescribedCircuit described, Comparison comparison) {
        StringBuilder text = new StringBuilder();
        text.append(Choice.headed(described.name(), described.about())).append("\n");
        described.builds().stream()
                .filter(build -> !build.about().isEmpty())
                .filter(build -> comparison.units().stream()
                        .anyMatch(unit -> unit.build().equals(build.name())))
                .forEach(build -> text.append("  ")
                        .append(build.name())
                        .append(": ")
                        .append(build.about())
                        .append("\n"));
        boolean bench = comparison.units().get(0).commanded().isEmpty();
        List<CompareRows.Row> rows = CompareRows.of(comparison, asked.shared.units);
        for (DutyPoint duty : comparison.duties()) {
            text.append("\n").append(title(comparison, duty, !bench)).append("\n");
            text.append(table(comparison, duty, rows).aligned());
        }
        text.append("\n").append(Wrap.lines(bench ? CompareRows.ABOUT_BENCH : CompareRows.ABOUT_FLOWS, "", ""));
        boolean someBack =
                CompareRows.someGiveBack(comparison.cells().stream().flatMap(cell -> cell.figures().stream()));
        text.append(someBack ? Wrap.lines(CompareRows.ABOUT_SHUT_LANDS, "", "") : "");
        text.append("\nIn plain words\n");
        PlainWords.of(comparison, asked.shared.units)
                .forEach(line -> text.append(
                        line.startsWith(" ") ? Wrap.lines(line, "    ", "    ") : Wrap.lines(line, "  ", "    ")));
        List<String> doubts = doubts(comparison);
        if (!doubts.isEmpty()) {
            text.append("\nTake with care\n");
            doubts.forEach(line -> text.append(Wrap.lines(line, "  ", "    ")));
        }
        text.append("\n").append(Caution.WHOLE).append("\n");
        text.append(NoStall.of(comparison.cells().stream()
                .filter(cell -> NoStall.lowAtIdle(
                        cell.unit(), cell.duty(), cell.outcome().state()))
                .map(cell -> cell.unit().build())
                .toList()));
        return text.toString();
    }

    private List<String> doubts(Comparison comparison) {
        Map<String, List<Doubt>> doubts = new LinkedHashMap<>();
        comparison
                .cells()
                .forEach(cell -> cell.outcome()
                        .state()
                        .ifPresent(state -> doubts.computeIfAbsent(cell.duty().name(), name -> new ArrayList<>())
                                .addAll(Doubt.of(cell.unit().network(), state))));
        return DoubtPhrase.summary(doubts, asked.shared.units);
    }

    private String title(Comparison comparison, DutyPoint duty, boolean commanded) {
        String name = Choice.titled(duty.name(), duty.about());
        if (!commanded) {
            return name + ": " + Quantity.SPEED.with(asked.shared.units, duty.speed()) + ", " + duty.range() + ", sump "
                    + Quantity.TEMPERATURE.with(
                            asked.shared.units, duty.temperatures().get("sump"));
        }
        return name + ": " + Quantity.SPEED.with(asked.shared.units, duty.speed()) + ", "
                + duty.range() + ", lockup " + lockup(comparison, duty) + ", sump "
                + Quantity.TEMPERATURE.with(
                        asked.shared.units, duty.temperatures().get("sump")) + ", engine torque "
                + Quantity.TORQUE.with(asked.shared.units, duty.engineTorque());
    }

    /** The lockup's state, where all builds have the same; a line of the table says it where they do not. */
    private static String lockup(Comparison comparison, DutyPoint duty) {
        boolean same = comparison.units().stream()
                .allMatch(unit -> unit.duty(duty.name()).orElseThrow().lockup() == duty.lockup());
        return same ? CompareRows.word(duty.lockup()) : "as the build has it";
    }

    private static TextTable table(Comparison comparison, DutyPoint duty, List<CompareRows.Row> rows) {
        List<String> head = new ArrayList<>(List.of(""));
        comparison.units().forEach(unit -> head.add(unit.build()));
        TextTable table = new TextTable(head);
        for (CompareRows.Row row : rows) {
            List<String> cells = new ArrayList<>(List.of(row.label()));
            for (Transmission unit : comparison.units()) {
                cells.add(row.text().apply(comparison.cell(unit.build(), duty.name())));
            }
            table.add(cells);
        }
        return table;
    }

    private String csv(Comparison comparison) {
        List<String> head = new ArrayList<>(List.of("duty", "build"));
        List<CompareRows.Row> rows = CompareRows.of(comparison, asked.shared.units);
        rows.forEach(row -> head.add(row.label().strip()));
        TextTable table = new TextTable(head);
        for (Comparison.Cell cell : comparison.cells()) {
            List<String> cells =
                    new ArrayList<>(List.of(cell.duty().name(), cell.unit().build()));
            rows.forEach(row -> cells.add(row.text().apply(cell)));
            table.add(cells);
        }
        return table.csv();
    }

    private static ObjectNode json(Comparison comparison) {
        ObjectNode root = StateJson.object();
        root.put("circuit", comparison.units().get(0).circuit());
        ArrayNode all = root.putArray("builds");
        for (Transmission unit : comparison.units()) {
            ObjectNode build = all.addObject();
            build.put("build", unit.build());
            ObjectNode onsets = build.putObject("onset_rpm");
            ObjectNode unloading = build.putObject("secondary_unloads_from_rpm");
            ObjectNode films = build.putObject("least_film");
            ArrayNode states = build.putArray("states");
            for (DutyPoint duty : comparison.duties()) {
                Comparison.Cell cell = comparison.cell(unit.build(), duty.name());
                StateJson.putSpeed(onsets, duty.name(), cell.sweep().onset());
                StateJson.putSpeed(unloading, duty.name(), cell.sweep().unloading());
                ObjectNode film = films.putObject(duty.name());
                film.put("metal_contact", !cell.sweep().contactSpeeds().isEmpty());
                cell.sweep()
                        .thinnestFilm()
                        .ifPresent(state -> film.put(
                                        "engine_speed_rpm", state.conditions().speed() * 60)
                                .put("least_film_m", CompareRows.leastFilm(cell).orElseThrow()));
                states.add(StateJson.state(unit, cell.duty(), cell.outcome()));
            }
        }
        return root;
    }

    /** An unsolved outcome in words. */
    static String why(Unsolved unsolved) {
        return "not solved: " + unsolved.culprit() + " does not settle (imbalance "
                + String.format(java.util.Locale.ROOT, "%.1e", unsolved.residual()) + " of its scale) after "
                + String.join(", ", unsolved.tried());
    }
}
