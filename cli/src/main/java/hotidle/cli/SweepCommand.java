package hotidle.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hotidle.answer.StateJson;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.Caution;
import hotidle.assess.Figures;
import hotidle.assess.Roles;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.text.Dimension;
import hotidle.oil.Oil;
import hotidle.result.Outcome;
import hotidle.study.SpeedSweep;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Pressures and flows over engine speed. */
@Command(
        name = "sweep",
        mixinStandardHelpOptions = true,
        description = "Solves a circuit over engine speed, rising and falling, and shows or draws what comes of it.")
final class SweepCommand implements Callable<Integer> {

    /** Sump temperatures between which a Walther line through 40 and 100 °C is taken as good (assumed) [°C]. */
    private static final double COLDEST = -40;

    private static final double HOTTEST = 160;

    /** Limits of the options, those of a circuit file: speed [rev/s], set pressure [Pa], sump temperature [K]. */
    private static final double MOST_SPEED = 20_000 / 60.0 + 1e-9;

    private static final double LEAST_SET = 6894.757;
    private static final double MOST_SET = 5000 * 6894.758;
    private static final double COLDEST_ALLOWED = Oil.ZERO_CELSIUS - 60.001;
    private static final double HOTTEST_ALLOWED = Oil.ZERO_CELSIUS + 250.001;

    /** Speeds beyond this multiple of the fastest duty point are remarked on (assumed). */
    private static final double FAR_BEYOND = 2.5;

    @Mixin
    Asked asked;

    @Option(names = "--build", description = "a build; give it again for each. Default: the circuit's first")
    List<String> builds = List.of();

    @Option(
            names = "--speed",
            defaultValue = "500..3500/100rpm",
            description = "engine speeds, first..last/step. Default: ${DEFAULT-VALUE}")
    String speed;

    @Option(
            names = "--temperature",
            description = "sump temperature, for example 95degC; other regions keep their distance from it."
                    + " Give it again for more. Default: the duty's own")
    List<String> temperatures = List.of();

    @Option(
            names = "--duty",
            description = "duty point whose temperatures, torque and lockup state are used. Default: the first")
    String duty;

    @Option(names = "--range", description = "range engaged. Default: the duty's own")
    String range;

    @Option(
            names = "--set",
            description = "highest set pressure in the forward ranges, for example 270psi: scales the command"
                    + " and solves the regulator's spring for it. Default: as the build has it")
    String set;

    @Option(
            names = "--from",
            defaultValue = "rising",
            description =
                    "where each state shown is started from: ${COMPLETION-CANDIDATES}. It matters only where the"
                            + " circuit has two steady states; both sweeps are always run and compared. Default: ${DEFAULT-VALUE}")
    SpeedSweep.From from = SpeedSweep.From.RISING;

    @Option(names = "--plot", description = "draws line pressure and where the oil goes into this file (.png or .svg)")
    Path plot;

    @Option(
            names = "--plot-film",
            description =
                    "draws the film of the hub bushing over the least one allowed, and the hub's load, into this file"
                            + " (.png or .svg)")
    Path plotFilm;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        DescribedCircuit described = asked.load();
        List<Double> speeds = Choice.series("--speed", speed, Dimension.SPEED);
        checkPicture("--plot", plot, speeds);
        checkPicture("--plot-film", plotFilm, speeds);
        Choice.within("--speed", speed, speeds.get(speeds.size() - 1), MOST_SPEED, "0 to 20000 rpm");
        refuseUncommanded(described.unit());
        List<SpeedSweep> sweeps = new ArrayList<>();
        for (Transmission unit : Circuits.units(described, builds)) {
            Transmission asked = set == null ? unit : SetPressure.of(unit, setPressure());
            for (DutyPoint point : duties(asked)) {
                sweeps.add(SpeedSweep.run(asked, point, speeds, from));
            }
        }
        warnings(sweeps).forEach(spec.commandLine().getErr()::println);
        if (plot != null) {
            String leftOut = SweepPicture.write(described, sweeps, asked.shared.units, plot);
            spec.commandLine().getErr().println("drawn: " + plot + leftOut);
        }
        if (plotFilm != null) {
            String leftOut = FilmPicture.write(described, sweeps, asked.shared.units, plotFilm);
            spec.commandLine().getErr().println("drawn: " + plotFilm + leftOut);
        }
        String text =
                switch (asked.shared.format) {
                    case TABLE -> tables(sweeps);
                    case CSV -> csv(sweeps);
                    case JSON -> StateJson.text(json(sweeps));
                };
        spec.commandLine().getOut().print(text);
        boolean all = sweeps.stream()
                .allMatch(sweep -> sweep.rising().stream()
                                .allMatch(o -> o.state().isPresent())
                        && sweep.falling().stream().allMatch(o -> o.state().isPresent())
                        && sweep.shown().stream().allMatch(o -> o.state().isPresent()));
        return all ? HotIdle.DONE : HotIdle.UNSOLVED;
    }

    private static void checkPicture(String option, Path file, List<Double> speeds) {
        if (file == null) {
            return;
        }
        PictureFile.check(option, file);
        if (speeds.size() < 2) {
            throw new WrongInputException(
                    "hotidle: " + option + " needs a series of speeds; write --speed 400..4000/50rpm");
        }
    }

    private void refuseUncommanded(Transmission unit) {
        String option = set != null ? "--set" : plot != null ? "--plot" : "";
        if (!option.isEmpty() && unit.commanded().isEmpty()) {
            throw new WrongInputException("hotidle: " + option + " asks for a set pressure, but " + unit.circuit()
                    + " is not commanded\nmend: leave out " + option + ", or give the circuit a command section");
        }
    }

    /** What was asked for beyond what the circuit or the oil's viscosity line is good for. */
    private static List<String> warnings(List<SpeedSweep> sweeps) {
        List<String> found = new ArrayList<>();
        for (SpeedSweep sweep : sweeps) {
            double sump = sweep.duty().temperatures().get("sump") - Oil.ZERO_CELSIUS;
            if (sump < COLDEST || sump > HOTTEST) {
                found.add(String.format(
                        Locale.ROOT,
                        "warning: %.0f degC lies outside %.0f to %.0f degC, where the oil's viscosity line can be trusted",
                        sump,
                        COLDEST,
                        HOTTEST));
            }
            boolean relief = sweep.states().stream()
                    .anyMatch(state -> Figures.of(sweep.unit(), state).reliefOpen());
            if (relief) {
                found.add("warning: " + sweep.unit().build()
                        + ": the relief valve opens at some of these speeds; the line"
                        + " is then held by it, not by the regulator");
            }
            double fastest = sweep.unit().duties().stream()
                    .mapToDouble(DutyPoint::speed)
                    .max()
                    .orElseThrow();
            double asked =
                    sweep.rising().get(sweep.rising().size() - 1).conditions().speed();
            if (fastest > 0 && asked > FAR_BEYOND * fastest) {
                found.add(String.format(
                        Locale.ROOT,
                        "warning: %.0f rpm is far beyond the circuit's fastest duty point, %.0f rpm",
                        asked * 60,
                        fastest * 60));
            }
        }
        return found.stream().distinct().toList();
    }

    private static double temperature(String text) {
        double asked = Choice.quantity("--temperature", text, Dimension.TEMPERATURE);
        if (asked < COLDEST_ALLOWED) {
            throw new WrongInputException(
                    "hotidle: --temperature " + text + ": a temperature must lie between -60 and 250 degC");
        }
        return Choice.within("--temperature", text, asked, HOTTEST_ALLOWED, "-60 to 250 degC");
    }

    private double setPressure() {
        double asked = Choice.quantity("--set", set, Dimension.PRESSURE);
        if (asked < LEAST_SET) {
            throw new WrongInputException("hotidle: --set " + set + ": a set pressure must lie between 1 and 5000 psi");
        }
        return Choice.within("--set", set, asked, MOST_SET, "1 to 5000 psi");
    }

    private List<DutyPoint> duties(Transmission unit) {
        DutyPoint named = duty == null ? unit.duties().get(0) : Choice.duty(unit, duty);
        DutyPoint base = range == null ? named : Choice.inRange(unit, named, range);
        return temperatures.isEmpty()
                ? List.of(base)
                : temperatures.stream()
                        .map(text -> Choice.at(base, temperature(text)))
                        .toList();
    }

    private String tables(List<SpeedSweep> sweeps) {
        StringBuilder text = new StringBuilder();
        for (SpeedSweep sweep : sweeps) {
            text.append(title(sweep)).append("\n").append(crossings(sweep)).append("\n");
            TextTable table = new TextTable(head(sweep.unit(), false));
            sweep.shown().forEach(outcome -> table.add(row(sweep, outcome, false)));
            text.append(table.aligned());
            sweep.shown()
                    .forEach(outcome -> outcome.unsolved()
                            .ifPresent(unsolved -> text.append(Quantity.SPEED.with(
                                            asked.shared.units,
                                            outcome.conditions().speed()))
                                    .append(": ")
                                    .append(CompareCommand.why(unsolved))
                                    .append("\n")));
            boolean someBack = CompareRows.someGiveBack(sweep.shown().stream()
                    .flatMap(outcome -> outcome.state().stream())
                    .map(state -> Figures.of(sweep.unit(), state)));
            text.append(someBack ? Wrap.lines(CompareRows.ABOUT_SHUT_LANDS, "", "") : "");
            text.append(differences(sweep)).append("\n");
        }
        return text.append(Caution.WHOLE).append("\n").toString();
    }

    private String title(SpeedSweep sweep) {
        return sweep.unit().circuit() + ", " + sweep.unit().build() + ", "
                + sweep.duty().name() + " in "
                + sweep.duty().range() + ", sump "
                + Quantity.TEMPERATURE.with(
                        asked.shared.units, sweep.duty().temperatures().get("sump"));
    }

    private String crossings(SpeedSweep sweep) {
        if (sweep.unit().commanded().isEmpty()) {
            return "not commanded: no set pressure, no onset of regulation";
        }
        Roles roles = Roles.of(sweep.unit());
        return "onset of regulation: " + speed(sweep, sweep.onset())
                + (roles.secondary().isPresent() ? "; secondary unloads from: " + speed(sweep, sweep.unloading()) : "")
                + (roles.bypass().isPresent() ? "; primary bypasses from: " + speed(sweep, sweep.bypassing()) : "");
    }

    private String speed(SpeedSweep sweep, OptionalDouble speed) {
        double lowest = sweep.rising().get(0).conditions().speed();
        return speed.isPresent()
                ? Quantity.SPEED.with(asked.shared.units, speed.getAsDouble())
                        + (speed.getAsDouble() <= lowest ? " or below" : "")
                : "none in the speeds asked";
    }

    private String differences(SpeedSweep sweep) {
        List<SpeedSweep.Difference> differences = sweep.differences();
        if (differences.isEmpty()) {
            return "rising and falling sweeps agree\n";
        }
        StringBuilder text = new StringBuilder("rising and falling sweeps differ (two steady states):\n");
        differences.forEach(d -> text.append(String.format(
                Locale.ROOT,
                "  %s: %s stands at %.4g rising and at %.4g falling (SI)%n",
                Quantity.SPEED.with(asked.shared.units, d.speed()),
                d.part(),
                d.rising(),
                d.falling())));
        return text.toString();
    }

    private List<String> head(Transmission unit, boolean named) {
        List<String> head = new ArrayList<>();
        if (named) {
            head.addAll(List.of(
                    "build",
                    "duty",
                    "sump " + Quantity.TEMPERATURE.in(asked.shared.units).unit()));
        }
        head.add("rpm");
        SweepColumns.of(unit, asked.shared.units).forEach(column -> head.add(column.head()));
        return head;
    }

    private List<String> row(SpeedSweep sweep, Outcome outcome, boolean named) {
        List<String> row = new ArrayList<>();
        Quantity.UnitSystem units = asked.shared.units;
        if (named) {
            row.add(sweep.unit().build());
            row.add(sweep.duty().name());
            row.add(Quantity.TEMPERATURE.number(
                    units, sweep.duty().temperatures().get("sump")));
        }
        row.add(Quantity.SPEED.number(units, outcome.conditions().speed()));
        for (SweepColumns.Column column : SweepColumns.of(sweep.unit(), units)) {
            row.add(outcome.state()
                    .map(state -> column.text().apply(Figures.of(sweep.unit(), state), state))
                    .orElse("unsolved"));
        }
        return row;
    }

    private String csv(List<SpeedSweep> sweeps) {
        TextTable table = new TextTable(head(sweeps.get(0).unit(), true));
        sweeps.forEach(sweep -> sweep.shown().forEach(outcome -> table.add(row(sweep, outcome, true))));
        return table.csv();
    }

    private ObjectNode json(List<SpeedSweep> sweeps) {
        ObjectNode root = StateJson.object();
        root.put("circuit", sweeps.get(0).unit().circuit());
        ArrayNode all = root.putArray("builds");
        List<String> names =
                sweeps.stream().map(sweep -> sweep.unit().build()).distinct().toList();
        for (String name : names) {
            ObjectNode build = all.addObject();
            build.put("build", name);
            ObjectNode onsets = build.putObject("onset_rpm");
            ObjectNode unloading = build.putObject("secondary_unloads_from_rpm");
            ObjectNode bypassing = build.putObject("primary_bypasses_from_rpm");
            ArrayNode states = build.putArray("states");
            ArrayNode differences = build.putArray("rising_falling_differences");
            for (SpeedSweep sweep : sweeps) {
                if (sweep.unit().build().equals(name)) {
                    String key = key(sweep);
                    StateJson.putSpeed(onsets, key, sweep.onset());
                    StateJson.putSpeed(unloading, key, sweep.unloading());
                    StateJson.putSpeed(bypassing, key, sweep.bypassing());
                    sweep.shown().forEach(o -> states.add(StateJson.state(sweep.unit(), sweep.duty(), o)));
                    sweep.differences()
                            .forEach(d -> differences
                                    .addObject()
                                    .put("engine_speed_rpm", d.speed() * 60)
                                    .put("part", d.part())
                                    .put("rising", d.rising())
                                    .put("falling", d.falling()));
                }
            }
        }
        return root;
    }

    /** The duty's name, and its temperature where several were asked for. */
    private String key(SpeedSweep sweep) {
        return temperatures.size() < 2
                ? sweep.duty().name()
                : String.format(
                        Locale.ROOT,
                        "%s at %.4g degC",
                        sweep.duty().name(),
                        sweep.duty().temperatures().get("sump") - Oil.ZERO_CELSIUS);
    }
}
