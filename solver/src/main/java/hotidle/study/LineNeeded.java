package hotidle.study;

import hotidle.assess.LineVerdict;
import hotidle.network.Placed;
import hotidle.part.Clutch;
import hotidle.result.Solution;
import hotidle.transmission.Curve;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Range;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Line pressure that a range needs to hold an engine torque with the factor of each clutch, beside what is commanded for it and what
 * the unit then has. To the pressure that a clutch needs is added what is lost from the line to its piston in the state at the speed
 * asked for. Temperatures, converter and turning oil as in {@link TorqueConditions}; what converter, lubrication and lockup need of
 * the line is not counted.
 *
 * @param range     the range
 * @param torque    of the engine [N·m]
 * @param clutch    that needs most; empty where no state was found
 * @param needed    line pressure [Pa]; empty where no state was found
 * @param commanded set pressure for that torque, in reverse by its areas [Pa]; empty where none is known
 * @param line      that the unit has at the speed asked for [Pa]; empty where no state was found
 * @param slow      the same at {@link #SLOW}
 * @param idle      the same at the speed of the slowest duty point
 */
public record LineNeeded(
        String range,
        double torque,
        String clutch,
        OptionalDouble needed,
        OptionalDouble commanded,
        OptionalDouble line,
        OptionalDouble slow,
        OptionalDouble idle) {

    /** 1000 rpm [rev/s]. */
    public static final double SLOW = 1000 / 60.0;

    /** A line above what is needed by more than this is wasted (chosen) [-]. */
    public static final double AMPLE = 0.25;

    /** Torques between the rows of the command, up to its last one (chosen). */
    private static final int STEPS = 8;

    /** Whether the line that the unit has holds the torque, and whether with more than {@link #AMPLE} to spare. */
    public LineVerdict verdict() {
        if (needed.isEmpty() || line.isEmpty()) {
            return LineVerdict.NOT_KNOWN;
        }
        double more = line.getAsDouble() / needed.getAsDouble() - 1;
        if (more < 0) {
            return LineVerdict.SHORT;
        }
        return more > AMPLE ? LineVerdict.WASTES : LineVerdict.FITS;
    }

    /**
     * Every range in which something is applied and every torque: the rows of the command and steps up to its last, or up to the
     * highest engine torque of the duty points where no solenoid follows torque.
     *
     * @param speed of the engine [rev/s]
     * @throws IllegalArgumentException where no duty point under load gives the temperatures of all regions
     */
    public static List<LineNeeded> of(Transmission unit, double speed) {
        double idle = unit.duties().stream().mapToDouble(DutyPoint::speed).min().orElse(speed);
        List<Double> torques = torques(unit);
        return unit.ranges().stream().filter(range -> !range.applied().isEmpty()).toList().parallelStream()
                .flatMap(range -> rows(new TorqueSearch(unit, range, speed), torques, idle))
                .toList();
    }

    private static List<Double> torques(Transmission unit) {
        TreeSet<Double> torques = new TreeSet<>();
        unit.commanded().flatMap(command -> command.pilot()).stream()
                .flatMap(pilot -> pilot.lineByTorque().points().stream())
                .map(Curve.Knot::x)
                .filter(torque -> torque > 0)
                .forEach(torques::add);
        double most = torques.isEmpty()
                ? unit.duties().stream()
                        .mapToDouble(DutyPoint::engineTorque)
                        .max()
                        .orElse(0)
                : torques.last();
        IntStream.rangeClosed(1, STEPS).mapToObj(step -> step * most / STEPS).forEach(torques::add);
        return List.copyOf(torques);
    }

    private static Stream<LineNeeded> rows(TorqueSearch search, List<Double> torques, double idle) {
        return torques.stream().map(torque -> new Asked(search, torque).row(idle));
    }

    private record Asked(TorqueSearch search, double torque) {

        LineNeeded row(double idle) {
            double speed = search.at().speed();
            Optional<Solution> state = state(speed);
            Optional<Need> most = state.flatMap(this::most);
            return new LineNeeded(
                    search.range().name(),
                    torque,
                    most.map(Need::clutch).orElse(""),
                    most.stream().mapToDouble(Need::line).findFirst(),
                    state.map(found -> search.unit().setPressure(found.conditions()))
                            .orElse(OptionalDouble.empty()),
                    state.stream().mapToDouble(this::line).findFirst(),
                    state(SLOW).stream().mapToDouble(this::line).findFirst(),
                    state(idle).stream().mapToDouble(this::line).findFirst());
        }

        private Optional<Solution> state(double speed) {
            return search.tried(torque, speed).outcome().state();
        }

        private double line(Solution state) {
            return state.pressure(search.unit().command().line());
        }

        /** The clutch that asks most of the line. */
        private Optional<Need> most(Solution state) {
            return search.unit().network().parts().stream()
                    .filter(placed -> placed.part() instanceof Clutch
                            && search.range().applied().containsKey(placed.name()))
                    .map(placed -> need(state, placed))
                    .max(java.util.Comparator.comparingDouble(Need::line));
        }

        private Need need(Solution state, Placed placed) {
            Clutch clutch = (Clutch) placed.part();
            Range.Applied applied = search.range().applied().get(placed.name());
            double load = GripLoad.of(search.at().duty(torque, search.at().speed()), applied, clutch)
                    .torque();
            double lost = line(state) - state.pressure(placed.nodes().get(0));
            return new Need(
                    placed.name(),
                    clutch.pressureFor(load, search.head(state, placed, applied), false) + Math.max(lost, 0));
        }
    }

    private record Need(String clutch, double line) {}
}
