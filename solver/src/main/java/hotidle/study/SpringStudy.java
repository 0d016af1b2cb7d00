package hotidle.study;

import hotidle.assess.Figures;
import hotidle.newton.Series;
import hotidle.part.OwnState;
import hotidle.part.SpoolValve;
import hotidle.result.Outcome;
import hotidle.result.Solution;
import hotidle.transmission.Command;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.QuotedSet;
import hotidle.transmission.Range;
import hotidle.transmission.SetPressure;
import hotidle.transmission.SpringChange;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * How a regulator comes to another set pressure by one change alone, and what else each change moves.
 *
 * @param unit     as it is
 * @param pressure set pressure wanted [Pa], the highest of the forward ranges
 * @param now      set pressure as it is [Pa]
 * @param least    the lowest set pressure that a spring gives [Pa]
 * @param asIs     what the unit does as it is
 * @param ways     each change with what it does
 */
public record SpringStudy(
        Transmission unit, double pressure, double now, double least, ChangeEffect asIs, List<Way> ways) {

    public SpringStudy {
        ways = List.copyOf(ways);
    }

    /** A change that can be made, judged at every limit. */
    public record JudgedChange(SpringChange change, JudgedBuild build) {}

    /** A change and what it does; empty where it cannot be made. */
    public record Way(SpringChange change, Optional<ChangeEffect> effect) {}

    /**
     * What a unit asks for and does.
     *
     * @param noTorque set pressure in the first forward range without engine torque [Pa]; where no solenoid follows that, the lowest
     *     of the forward duty points
     * @param reverse  highest set pressure of a range that is no forward one and applies clutches [Pa]; empty without one
     * @param duties   in the order of the circuit
     */
    public record ChangeEffect(double noTorque, OptionalDouble reverse, List<DutyEffect> duties) {
        public ChangeEffect {
            duties = List.copyOf(duties);
        }

        /** At the slowest duty point, the first of them. */
        public DutyEffect idle() {
            return duties.stream()
                    .min(java.util.Comparator.comparingDouble(at -> at.duty().speed()))
                    .orElseThrow();
        }

        /** Whether the line stays below what is commanded at the slowest duty point; not where its state was not found. */
        public boolean lowAtIdle() {
            return idle().figures()
                    .map(at -> at.set().isPresent() && at.line() < at.set().getAsDouble() - Command.AGREE)
                    .orElse(false);
        }

        /** The state at a duty, where it was found. */
        private Optional<Solution> state(DutyPoint duty) {
            return duties.stream()
                    .filter(at -> at.duty().name().equals(duty.name()))
                    .findFirst()
                    .flatMap(at -> at.outcome().state());
        }

        /** Whether every state was found. */
        public boolean known() {
            return duties.stream().allMatch(at -> at.figures().isPresent());
        }
    }

    /**
     * A duty point.
     *
     * @param figures empty where no state was found
     * @param atStop  whether the regulator stands at the end of its travel: its stop, or its coils touching
     */
    public record DutyEffect(DutyPoint duty, Outcome outcome, Optional<Figures> figures, boolean atStop) {}

    /** A spool this close to its end stands at it: a thousandth of a millimetre (ours) [m]. */
    private static final double AT_END = 1e-6;

    /**
     * Finds the changes and solves each at all duty points.
     *
     * @param pressure set pressure wanted [Pa], above zero
     * @throws hotidle.transmission.NotCommandedException where nothing commands the line
     */
    public static SpringStudy of(Transmission unit, double pressure) {
        ChangeEffect asIs = effect(unit, duty -> Optional.empty());
        List<Way> ways = SpringChange.of(unit, pressure).parallelStream()
                .map(change -> new Way(change, change.unit().map(made -> effect(made, asIs::state))))
                .toList();
        return new SpringStudy(
                unit, pressure, QuotedSet.now(unit), SetPressure.lowest(unit, SetPressure.By.SPRING), asIs, ways);
    }

    /** @param start state of the unit as it is at a duty, from which that with the change is solved */
    private static ChangeEffect effect(Transmission unit, Function<DutyPoint, Optional<Solution>> start) {
        Series series = new Series(unit.network());
        return new ChangeEffect(
                QuotedSet.noTorque(unit),
                QuotedSet.reverse(unit),
                unit.duties().stream()
                        .map(duty -> at(unit, duty, start.apply(duty), series))
                        .toList());
    }

    private static DutyEffect at(Transmission unit, DutyPoint duty, Optional<Solution> start, Series series) {
        start.ifPresentOrElse(series::restart, series::restart);
        series.solve(unit.conditions(duty));
        Outcome outcome = series.outcome();
        Command command = unit.command();
        double end = ((SpoolValve)
                        unit.network().part(command.regulator()).orElseThrow().part())
                .spring()
                .end();
        return new DutyEffect(
                duty,
                outcome,
                outcome.state().map(state -> Figures.of(unit, state)),
                outcome.state()
                        .filter(state -> state.own(command.regulator(), OwnState.POSITION) > end - AT_END)
                        .isPresent());
    }

    /** Those that can be made. */
    public List<Way> made() {
        return ways.stream().filter(way -> way.effect().isPresent()).toList();
    }

    /** Whether the pump cannot hold what is asked at the slowest duty point, whichever change is made. */
    public boolean pumpCannot() {
        return !made().isEmpty()
                && made().stream().allMatch(way -> way.effect().orElseThrow().lowAtIdle());
    }

    /**
     * The first change that can be made, judged; empty where none can, and where the pump cannot hold the pressure, which is verdict
     * enough.
     *
     * @param speeds engine speeds over which the hub's film and load are searched [rev/s], rising
     */
    public Optional<JudgedChange> judged(List<Double> speeds) {
        return pumpCannot()
                ? Optional.empty()
                : made().stream()
                        .map(Way::change)
                        .findFirst()
                        .map(change -> new JudgedChange(
                                change,
                                JudgedBuild.study(List.of(change.unit().orElseThrow()), speeds, () -> {})
                                        .get(0)));
    }

    /**
     * What would be commanded at the slowest duty point if the command were scaled to the pressure together with the spring [Pa]; empty
     * where no solenoid commands it, or no range is a forward one.
     */
    public OptionalDouble idleByCommand() {
        boolean scaled =
                unit.command().pilot().isPresent() && unit.ranges().stream().anyMatch(Range::forward);
        if (!scaled) {
            return OptionalDouble.empty();
        }
        Transmission other = SetPressure.of(unit, pressure, SetPressure.By.COMMAND_AND_SPRING);
        return other.setPressure(other.conditions(asIs.idle().duty()));
    }

    /** Whether every state was found. */
    public boolean known() {
        return asIs.known()
                && ways.stream()
                        .allMatch(way -> way.effect().map(ChangeEffect::known).orElse(true));
    }
}
