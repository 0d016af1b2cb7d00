package hotidle.study;

import hotidle.assess.Assessment;
import hotidle.assess.Figures;
import hotidle.assess.Margin;
import hotidle.assess.Roles;
import hotidle.assess.StateFault;
import hotidle.newton.Series;
import hotidle.result.Outcome;
import hotidle.result.Solution;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * Builds of one circuit side by side at its duty points.
 *
 * @param cells one for each duty and build, builds running first
 */
public record Comparison(List<BuildAtDuty> cells) {

    public Comparison {
        cells = List.copyOf(cells);
    }

    /**
     * One build at one duty.
     *
     * @param unit    the build
     * @param duty    the duty
     * @param outcome at the duty's own speed
     * @param assessed what that state means; empty where it was not found
     * @param sweep   over engine speed, everything else as at the duty
     */
    public record BuildAtDuty(
            Transmission unit, DutyPoint duty, Outcome outcome, Optional<Assessment> assessed, SpeedSweep sweep) {

        private static BuildAtDuty of(Outcome outcome, SpeedSweep sweep) {
            return new BuildAtDuty(
                    sweep.unit(),
                    sweep.duty(),
                    outcome,
                    outcome.state().map(state -> Assessment.of(sweep.unit(), sweep.duty(), sweep.roles(), state)),
                    sweep);
        }

        /** Of the unit's parts. */
        public Roles roles() {
            return sweep.roles();
        }

        /** What gets less oil than it needs; empty where nothing was solved. */
        public List<Margin> starved() {
            return assessed.map(Assessment::starved).orElse(List.of());
        }

        /** Figures at the duty's own speed, where it was solved. */
        public Optional<Figures> figures() {
            return assessed.map(Assessment::figures);
        }

        /** The thinnest film in the hub over the speeds of the sweep; empty without a hub, or where no film is known. */
        public Optional<ThinnestFilm> thinnestFilm() {
            return ThinnestFilm.of(sweep);
        }

        /** What became of the onset of regulation since another build, at the same duty and speeds. */
        public OnsetShift onsetSince(BuildAtDuty before) {
            return OnsetShift.between(before.sweep.onset(), sweep.onset());
        }

        /** The film in the hub over the speeds at which the unit runs; empty without a hub, or where none is known. */
        public Optional<RunningFilm> hubFilm() {
            return RunningFilm.of(sweep);
        }

        /** All that fails here, the gravest first. */
        public List<StateFault> faults() {
            return StateFaults.of(this);
        }

        /** What has a rating: of what carries in the gear train, of the pump's drive, of housings and pistons; empty where nothing was solved. */
        public List<Margin> rated() {
            return assessed.map(one -> new RatedLimits(one).all()).orElse(List.of());
        }

        /** The applied clutch, the lockup or what has a rating with the least headroom; empty without one, or where nothing was solved. */
        public Optional<Margin> weakestLink() {
            return Stream.concat(assessed.map(Judgement::grips).orElse(List.of()).stream(), rated().stream())
                    .min(Comparator.comparingDouble(Margin::headroom));
        }

        /**
         * The limit that holds with the least to spare of those that do not hold with ease, as far as the state and its sweep tell:
         * not regulation, which is asked with the line held. Empty where all of them do, or where nothing was solved.
         */
        public Optional<Margin> narrow() {
            return assessed.flatMap(one -> new Limits(one)
                    .all(Optional.empty(), RunningFilm.over(sweep)).stream()
                            .filter(margin -> margin.verdict() == Margin.Verdict.CLOSE)
                            .min(Comparator.comparingDouble(Margin::headroom)));
        }

        /** Clutches and lockup that may slip; empty where nothing was solved. */
        public List<Margin> slipping() {
            return assessed.map(Judgement::slipping).orElse(List.of());
        }

        /** Pressure [Pa] by clutch that presses although the range does not apply it; empty where nothing was solved. */
        public Map<String, Double> dragging() {
            return assessed.map(Judgement::dragging).orElse(Map.of());
        }
    }

    /**
     * Solves all builds at all duties.
     *
     * @param units  builds of one circuit
     * @param speeds engine speeds of the sweeps [rev/s], rising
     */
    public static Comparison of(List<Transmission> units, List<Double> speeds) {
        List<Supplier<BuildAtDuty>> open = new ArrayList<>();
        for (DutyPoint duty : judged(units)) {
            for (Transmission unit : units) {
                DutyPoint own = unit.duty(duty.name()).orElseThrow();
                open.add(() -> solve(unit, own, speeds));
            }
        }
        return new Comparison(open.parallelStream().map(Supplier::get).toList());
    }

    /** Duty points at which every build is judged. */
    public static List<DutyPoint> judged(List<Transmission> units) {
        return units.get(0).duties().stream()
                .filter(duty -> units.stream()
                        .allMatch(unit -> unit.duty(duty.name()).orElseThrow().judged()))
                .toList();
    }

    /** The duty's own state starts from the rising sweep's state below it, as the engine would come to it. */
    private static BuildAtDuty solve(Transmission unit, DutyPoint duty, List<Double> speeds) {
        SpeedSweep sweep =
                SpeedSweep.rising(unit, duty, speeds, Optional.empty()).withCrossings();
        Optional<Solution> below = sweep.states().stream()
                .filter(state -> state.conditions().speed() <= duty.speed())
                .reduce((one, later) -> later);
        if (below.filter(state -> state.conditions().speed() == duty.speed()).isPresent()) {
            return BuildAtDuty.of(Outcome.of(below.get()), sweep);
        }
        Series series = new Series(unit.network());
        below.ifPresent(series::restart);
        series.solve(unit.conditions(duty));
        return BuildAtDuty.of(series.outcome(), sweep);
    }

    /** The cells at some duties alone. */
    public Comparison only(Collection<String> duties) {
        return new Comparison(
                cells.stream().filter(cell -> duties.contains(cell.duty.name())).toList());
    }

    /** The cell whose oil leaves the hub of a build its thinnest film over all speeds; one in metal contact before any other. */
    public BuildAtDuty worstFilm(String build) {
        return cells.stream()
                .filter(cell -> cell.unit.build().equals(build))
                .min(Comparator.comparingDouble(Comparison::film))
                .orElseThrow();
    }

    private static double film(BuildAtDuty cell) {
        return cell.sweep.contactSpeeds().isEmpty()
                ? cell.thinnestFilm().map(ThinnestFilm::film).orElse(Double.POSITIVE_INFINITY)
                : -1;
    }

    /** The solved cell whose pump takes most power; empty where none takes any. */
    public Optional<BuildAtDuty> mostPower() {
        ToDoubleFunction<BuildAtDuty> power =
                cell -> cell.figures().orElseThrow().pumpPower();
        return cells.stream()
                .filter(cell -> cell.figures().isPresent())
                .max(Comparator.comparingDouble(power))
                .filter(cell -> power.applyAsDouble(cell) > 0);
    }

    /** The cell of a build whose weakest link has the least headroom; empty where none carries anything. */
    public Optional<BuildAtDuty> weakestLink(String build) {
        return of(build)
                .filter(cell -> cell.weakestLink().isPresent())
                .min(Comparator.comparingDouble(
                        cell -> cell.weakestLink().orElseThrow().headroom()));
    }

    /** The cell of a build at which a limit holds with the least to spare; empty where all hold with ease. */
    public Optional<BuildAtDuty> narrowest(String build) {
        return of(build)
                .filter(cell -> cell.narrow().isPresent())
                .min(Comparator.comparingDouble(
                        cell -> cell.narrow().orElseThrow().headroom()));
    }

    /** The solved cell of a build whose pump takes most power; empty where none was solved. */
    public Optional<BuildAtDuty> mostPower(String build) {
        return of(build)
                .filter(cell -> cell.figures().isPresent())
                .max(Comparator.comparingDouble(
                        cell -> cell.figures().orElseThrow().pumpPower()));
    }

    /** The cells of a build at which something fails, in the order of the duties. */
    public List<BuildAtDuty> failing(String build) {
        return of(build).filter(cell -> !cell.faults().isEmpty()).toList();
    }

    /** The cells of a build, in the order of the duties. */
    public Stream<BuildAtDuty> of(String build) {
        return cells.stream().filter(cell -> cell.unit.build().equals(build));
    }

    /**
     * The duties that change a verdict: at which what fails first in some build is not what fails first in it at a given one.
     *
     * @param given by name; it is none of them
     */
    public List<DutyPoint> changing(String given) {
        return duties().stream()
                .filter(duty -> !duty.name().equals(given))
                .filter(duty -> units().stream()
                        .anyMatch(unit -> changes(cell(unit.build(), given), cell(unit.build(), duty.name()))))
                .toList();
    }

    private static boolean changes(BuildAtDuty given, BuildAtDuty cell) {
        Optional<StateFault.Kind> first = first(cell);
        return first.isPresent() && !first.equals(first(given));
    }

    private static Optional<StateFault.Kind> first(BuildAtDuty cell) {
        return cell.faults().stream().map(StateFault::kind).findFirst();
    }

    /** Builds with low pressure at idle, which are not to be stall-tested. */
    public List<String> lowAtIdle() {
        return cells.stream()
                .filter(cell -> LowAtIdle.at(
                        cell.unit,
                        cell.duty,
                        cell.figures().map(Figures::regulated).orElse(false)))
                .map(cell -> cell.unit.build())
                .toList();
    }

    /** The builds, in the order asked for. */
    public List<Transmission> units() {
        // by name: one record of a unit against another compares every size in it
        return cells.stream()
                .map(BuildAtDuty::unit)
                .filter(distinctBy(Transmission::build))
                .toList();
    }

    /** The duties, in the circuit's order. */
    public List<DutyPoint> duties() {
        return cells.stream()
                .map(BuildAtDuty::duty)
                .filter(distinctBy(DutyPoint::name))
                .toList();
    }

    private static <T> Predicate<T> distinctBy(Function<T, String> name) {
        Set<String> seen = new HashSet<>();
        return one -> seen.add(name.apply(one));
    }

    /** The cell of a build at a duty. */
    public BuildAtDuty cell(String build, String duty) {
        return cells.stream()
                .filter(cell ->
                        cell.unit.build().equals(build) && cell.duty.name().equals(duty))
                .findFirst()
                .orElseThrow();
    }
}
