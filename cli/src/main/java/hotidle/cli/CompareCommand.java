package hotidle.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hotidle.circuits.DescribedCircuit;
import hotidle.duty.DutyPoint;
import hotidle.duty.Tap;
import hotidle.duty.Unit;
import hotidle.network.Group;
import hotidle.network.Placed;
import hotidle.result.State;
import hotidle.result.Unsolved;
import hotidle.study.Comparison;
import hotidle.study.Doubt;
import hotidle.study.Figures;
import hotidle.study.Roles;
import hotidle.study.SpeedSweep;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.function.BiFunction;
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Builds side by side at the duty points. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        description = "Puts builds of a circuit side by side at each duty point, and says in plain words what differs.")
final class CompareCommand implements Callable<Integer> {

    @Parameters(paramLabel = "CIRCUIT", description = "a ready circuit (see 'hotidle list') or a circuit file")
    String circuit;

    @Option(names = "--build", description = "a build to show; give it again for each. Default: all builds")
    List<String> builds = List.of();

    @Option(
            names = "--speed",
            defaultValue = "400..4000/50rpm",
            description =
                    "engine speeds searched for the onset of regulation and the least film. Default: ${DEFAULT-VALUE}")
    String speed;

    @Mixin
    FilledSheet sheet;

    @Mixin
    Shared shared;

    @Spec
    CommandSpec spec;

    /** One line of the table: what it is called and what it says of a cell. */
    private record Row(String label, BiFunction<Comparison.Cell, Quantity.UnitSystem, String> text) {}

    @Override
    public Integer call() {
        DescribedCircuit described =
                Circuits.load(circuit, sheet.file(), spec.commandLine().getErr());
        List<String> named = builds.isEmpty()
                ? described.builds().stream().map(DescribedCircuit.Build::name).toList()
                : builds;
        List<Unit> units = Circuits.units(described, named);
        List<Double> speeds = Choice.series("--speed", speed, hotidle.circuits.text.Dimension.SPEED);
        Comparison comparison = Comparison.of(units, speeds);
        String text =
                switch (shared.format) {
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
        text.append(described.name())
                .append(described.about().isEmpty() ? "" : ": " + described.about())
                .append("\n");
        described.builds().stream()
                .filter(build -> !build.about().isEmpty())
                .filter(build -> comparison.units().stream()
                        .anyMatch(unit -> unit.build().equals(build.name())))
                .forEach(build -> text.append("  ")
                        .append(build.name())
                        .append(": ")
                        .append(build.about())
                        .append("\n"));
        for (DutyPoint duty : comparison.duties()) {
            text.append("\n")
                    .append(title(duty, comparison.units().get(0).commanded().isPresent()))
                    .append("\n");
            text.append(table(comparison, duty).aligned());
        }
        text.append("\nIn plain words\n");
        PlainWords.of(comparison, shared.units)
                .forEach(line -> text.append("  ").append(line).append("\n"));
        List<String> doubts = doubts(comparison);
        if (!doubts.isEmpty()) {
            text.append("\nTake with care\n");
            doubts.forEach(line -> text.append("  ").append(line).append("\n"));
        }
        text.append("\n").append(Shared.CAUTION).append("\n");
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
        return DoubtWords.summary(doubts, shared.units);
    }

    private String title(DutyPoint duty, boolean commanded) {
        String name = duty.name() + (duty.about().isEmpty() ? "" : " (" + duty.about() + ")");
        if (!commanded) {
            return name + ": " + Quantity.SPEED.with(shared.units, duty.speed()) + ", " + duty.range() + ", sump "
                    + Quantity.TEMPERATURE.with(
                            shared.units, duty.temperatures().get("sump"));
        }
        return name + ": " + Quantity.SPEED.with(shared.units, duty.speed()) + ", "
                + duty.range() + ", lockup " + duty.lockup().name().toLowerCase(java.util.Locale.ROOT) + ", sump "
                + Quantity.TEMPERATURE.with(shared.units, duty.temperatures().get("sump")) + ", engine torque "
                + Quantity.TORQUE.with(shared.units, duty.engineTorque());
    }

    private TextTable table(Comparison comparison, DutyPoint duty) {
        List<String> head = new ArrayList<>(List.of(""));
        comparison.units().forEach(unit -> head.add(unit.build()));
        TextTable table = new TextTable(head);
        for (Row row : rows(comparison)) {
            List<String> cells = new ArrayList<>(List.of(row.label));
            for (Unit unit : comparison.units()) {
                cells.add(row.text.apply(comparison.cell(unit.build(), duty.name()), shared.units));
            }
            table.add(cells);
        }
        return table;
    }

    private String csv(Comparison comparison) {
        List<String> head = new ArrayList<>(List.of("duty", "build"));
        rows(comparison).forEach(row -> head.add(row.label.strip()));
        TextTable table = new TextTable(head);
        for (Comparison.Cell cell : comparison.cells()) {
            List<String> cells =
                    new ArrayList<>(List.of(cell.duty().name(), cell.unit().build()));
            rows(comparison).forEach(row -> cells.add(row.text.apply(cell, shared.units)));
            table.add(cells);
        }
        return table.csv();
    }

    private List<Row> rows(Comparison comparison) {
        boolean commanded = comparison.units().get(0).commanded().isPresent();
        return commanded ? regulated() : bench(comparison);
    }

    /** What a bench shows on which nothing is commanded: every gauge, and the flow through every part. */
    private List<Row> bench(Comparison comparison) {
        List<Row> rows = new ArrayList<>();
        for (Tap tap : comparison.units().get(0).taps()) {
            rows.add(reading("gauge at " + tap.name(), Quantity.PRESSURE, state -> state.pressure(tap.node())));
        }
        comparison.cells().stream()
                .flatMap(cell -> cell.outcome().state().stream())
                .findFirst()
                .ifPresent(any -> any.streams()
                        .forEach(stream -> rows.add(
                                reading("flow " + stream.key(), Quantity.SEEPAGE, state -> state.flow(stream.key())))));
        return rows;
    }

    private Row reading(String label, Quantity quantity, Function<State, Double> of) {
        return new Row(
                label + " [" + quantity.in(shared.units).unit() + "]",
                (cell, units) -> cell.outcome()
                        .state()
                        .map(state -> quantity.number(units, of.apply(state)))
                        .orElse("unsolved"));
    }

    private List<Row> regulated() {
        return List.of(
                number("set pressure commanded", Quantity.PRESSURE, Figures::set),
                number("line pressure", Quantity.PRESSURE, Figures::line),
                number("  override (line less set)", Quantity.PRESSURE, f -> f.line() - f.set()),
                word("  regulator", Figures::regulator),
                word("secondary chamber", f -> f.secondary().word()),
                speed("onset of regulation", SpeedSweep::onset),
                speed("secondary unloads from", SpeedSweep::unloading),
                speed("primary bypasses from", SpeedSweep::bypassing),
                number("converter charge", Quantity.PRESSURE, Figures::charge),
                number("cooler flow", Quantity.FLOW, Figures::cooler),
                number("lube flow", Quantity.FLOW, Figures::lube),
                new Row("  needed [" + Quantity.FLOW.in(shared.units).unit() + "]", CompareCommand::lubeNeeded),
                number("pump delivery before slip", Quantity.FLOW, Figures::swept),
                number("  slip in the pump", Quantity.FLOW, Figures::slip),
                number("  lost to leaks", Quantity.FLOW, Figures::leak),
                number("  back to the inlet at the regulator", Quantity.FLOW, Figures::recirculated),
                number("  used by the solenoids", Quantity.FLOW, f -> f.used().getOrDefault(Group.SOLENOIDS, 0.0)),
                number("hub load", Quantity.FORCE, Figures::hubLoad),
                new Row("hub film [" + Quantity.FILM.in(shared.units).unit() + "]", CompareCommand::film),
                new Row("  least over speed", CompareCommand::leastFilm),
                new Row("    at [rpm]", CompareCommand::leastFilmSpeed),
                new Row("  least allowed (assumed)", CompareCommand::permissibleFilm),
                number("pump power", Quantity.POWER, Figures::pumpPower));
    }

    private Row number(String label, Quantity quantity, Function<Figures, Double> figure) {
        return new Row(
                label + " [" + quantity.in(shared.units).unit() + "]",
                (cell, units) -> cell.figures()
                        .map(figures -> quantity.number(units, figure.apply(figures)))
                        .orElse("unsolved"));
    }

    private static Row word(String label, Function<Figures, String> figure) {
        return new Row(label, (cell, units) -> cell.figures().map(figure).orElse("unsolved"));
    }

    private static Row speed(String label, Function<SpeedSweep, OptionalDouble> of) {
        return new Row(label + " [rpm]", (cell, units) -> {
            OptionalDouble speed = of.apply(cell.sweep());
            double lowest = cell.sweep().rising().get(0).conditions().speed();
            return speed.isEmpty()
                    ? "none"
                    : (speed.getAsDouble() <= lowest ? "<= " : "") + Quantity.SPEED.number(units, speed.getAsDouble());
        });
    }

    private static String lubeNeeded(Comparison.Cell cell, Quantity.UnitSystem units) {
        double needed = Roles.of(cell.unit()).lubeNeeded(cell.duty());
        boolean isShort = cell.figures().filter(f -> f.lube() < needed).isPresent();
        return (isShort ? "SHORT of " : "") + Quantity.FLOW.number(units, needed);
    }

    private static String film(Comparison.Cell cell, Quantity.UnitSystem units) {
        return cell.figures()
                .map(f -> f.metalContact() ? "metal contact" : Quantity.FILM.number(units, f.film()))
                .orElse("unsolved");
    }

    private static String leastFilm(Comparison.Cell cell, Quantity.UnitSystem units) {
        if (!cell.sweep().contactSpeeds().isEmpty()) {
            return "metal contact";
        }
        return least(cell).map(film -> Quantity.FILM.number(units, film)).orElse("-");
    }

    private static Optional<Double> least(Comparison.Cell cell) {
        String hub = Roles.of(cell.unit()).hub().map(Placed::name).orElse("");
        return cell.sweep().thinnestFilm().map(state -> state.measure(hub, "least_film_m"));
    }

    private static String leastFilmSpeed(Comparison.Cell cell, Quantity.UnitSystem units) {
        List<Double> contact = cell.sweep().contactSpeeds();
        if (!contact.isEmpty()) {
            return Quantity.SPEED.number(units, contact.get(0)) + " to "
                    + Quantity.SPEED.number(units, contact.get(contact.size() - 1));
        }
        return cell.sweep()
                .thinnestFilm()
                .map(state -> Quantity.SPEED.number(units, state.conditions().speed()))
                .orElse("-");
    }

    private static String permissibleFilm(Comparison.Cell cell, Quantity.UnitSystem units) {
        String hub = Roles.of(cell.unit()).hub().map(Placed::name).orElse("");
        return cell.outcome()
                .state()
                .map((State state) -> Quantity.FILM.number(units, state.measure(hub, "permissible_film_m")))
                .orElse("unsolved");
    }

    private static ObjectNode json(Comparison comparison) {
        ObjectNode root = StateJson.object();
        root.put("circuit", comparison.units().get(0).circuit());
        ArrayNode all = root.putArray("builds");
        for (Unit unit : comparison.units()) {
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
                                .put("least_film_m", least(cell).orElseThrow()));
                states.add(StateJson.state(unit, duty, cell.outcome()));
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
