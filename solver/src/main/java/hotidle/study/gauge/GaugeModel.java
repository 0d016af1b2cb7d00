package hotidle.study.gauge;

import hotidle.fault.UnitFault;
import hotidle.newton.Series;
import hotidle.newton.SolvedState;
import hotidle.newton.SteadySolver;
import hotidle.part.Clutch;
import hotidle.part.Cooler;
import hotidle.part.PumpChamber;
import hotidle.result.Solution;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Supplier;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * What meters would read on units of one build, and how sure that is: units with faults are solved in chains, each from the one before
 * it, at each test point.
 *
 * <pre>
 * Mean       of the steady state of the unit at each test point
 * Deviation  to first order about that state, {@link MetersAtPoint}; so where the regulator is shut, the same tolerances count for more
 *            than where it holds the line. What is set at a test point moves all readings of that point together, tolerances of the
 *            unit, thermometer and oil all readings
 * Beyond it  what less oil or more moves a reading by beyond first order counts beside, {@link DeliverySpread}
 * </pre>
 */
final class GaugeModel {

    private final List<GaugeReading.Row> rows;
    private final Map<TestPoint, List<Integer>> points = new LinkedHashMap<>();
    private final Map<TestPoint, SolvedFaults.SoundState> base = new HashMap<>();
    private final Map<TestPoint, DeliverySpread> spreads = new HashMap<>();
    private final List<TestPoint> unsolved = new ArrayList<>();
    private final Tolerances tolerances;
    private final Transmission sound;
    private final List<Tolerances.Shift> shifts;

    private final Optional<SolvedFaults> kept;

    /** A model of the rows; each test point is solved for the sound unit once, from a cold start. */
    GaugeModel(Tolerances tolerances, List<Tolerances.Shift> shifts, List<GaugeReading.Row> rows) {
        this(tolerances, shifts, rows, Optional.empty());
    }

    /** The same that solves nothing which was kept. */
    GaugeModel(SolvedFaults kept, List<GaugeReading.Row> rows) {
        this(kept.tolerances(), kept.shifts(), rows, Optional.of(kept));
    }

    private GaugeModel(
            Tolerances tolerances,
            List<Tolerances.Shift> shifts,
            List<GaugeReading.Row> rows,
            Optional<SolvedFaults> kept) {
        this.kept = kept;
        this.rows = List.copyOf(rows);
        this.tolerances = tolerances;
        this.shifts = shifts;
        sound = tolerances.build().unit();
        for (int i = 0; i < rows.size(); i++) {
            points.computeIfAbsent(rows.get(i).at(), at -> new ArrayList<>()).add(i);
        }
        List<TestPoint> asked = List.copyOf(points.keySet());
        List<SoundPoint> solved = OneByOne.of(asked, this::solved);
        for (int i = 0; i < asked.size(); i++) {
            TestPoint point = asked.get(i);
            solved.get(i).spread().ifPresent(spread -> spreads.put(point, spread));
            solved.get(i).state().ifPresentOrElse(state -> base.put(point, state), () -> unsolved.add(point));
        }
    }

    /** The sound unit at a test point, which knows of no other point. */
    private record SoundPoint(Optional<SolvedFaults.SoundState> state, Optional<DeliverySpread> spread) {}

    private SoundPoint solved(TestPoint point) {
        Series series = series();
        Optional<SolvedFaults.SoundState> state = kept.map(known -> known.sound(point))
                .orElseGet(() ->
                        SolvedFaults.SoundState.of(new SteadySolver(sound.network()), series, point.conditions(sound)));
        return new SoundPoint(state, state.flatMap(one -> {
            Supplier<Optional<DeliverySpread>> solve = () -> {
                series.restart(one.start());
                return DeliverySpread.of(series, sound, shifts, point);
            };
            return kept.map(known -> known.spread(point, solve)).orElseGet(solve);
        }));
    }

    /** Test points at which the sound unit has no steady state that was found; nothing can be expected while there is one. */
    List<TestPoint> unsolved() {
        return List.copyOf(unsolved);
    }

    List<GaugeReading.Row> rows() {
        return rows;
    }

    /** The state of the sound unit at each test point. */
    Map<TestPoint, Solution> states() {
        Map<TestPoint, Solution> whole = new HashMap<>();
        base.forEach((point, state) -> whole.put(point, state.whole()));
        return whole;
    }

    /** The same for a series to start from. */
    Map<TestPoint, SolvedState> starts() {
        Map<TestPoint, SolvedState> starts = new HashMap<>();
        base.forEach((point, state) -> starts.put(point, state.start()));
        return starts;
    }

    Transmission sound() {
        return sound;
    }

    /** Whether a meter reads the pressure at the piston of a clutch. */
    boolean applies(Meter meter) {
        return sound.network().parts().stream()
                .anyMatch(placed ->
                        placed.part() instanceof Clutch && placed.nodes().get(0).equals(meter.node()));
    }

    /** Whether a meter reads the flow of the cooler's line. */
    boolean cools(Meter meter) {
        return sound.network()
                .part(meter.name())
                .map(placed -> placed.part() instanceof Cooler)
                .orElse(false);
    }

    /** What is expected of the sound unit. */
    Expectation sound(Series series) {
        return along(series, List.of(List.of())).get(0).orElseThrow();
    }

    /** The same with what each number that is not known moves each row by: of many rows far quicker than their covariance. */
    Expectation.Slopes soundSlopes(Series series) {
        return swept(series, List.of(List.of()), StartStates.of(starts()))
                .get(0)
                .orElseThrow()
                .slopes();
    }

    /** A work space for units of this build; one for each thread. */
    Series series() {
        return new Series(sound.network());
    }

    /** What is read on a unit, nothing else; empty where a state of it is not found. */
    Optional<double[]> read(Series series, Transmission unit) {
        double[] mean = new double[rows.size()];
        series.use(unit.network());
        for (Map.Entry<TestPoint, List<Integer>> point : points.entrySet()) {
            series.restart(base.get(point.getKey()).start());
            if (!series.solve(point.getKey().conditions(unit))) {
                return Optional.empty();
            }
            point.getValue().forEach(i -> mean[i] = rows.get(i).meter().read(series));
        }
        return Optional.of(mean);
    }

    /** What a unit reads, and what each of the shifts moves that by; empty where a state of it is not found. */
    Optional<Expectation.Slopes> slopes(Series series, Transmission unit, List<Tolerances.Shift> own) {
        double[] mean = new double[rows.size()];
        double[][] moves = new double[rows.size()][MetersAtPoint.columns(own.size(), points.size())];
        int number = 0;
        series.use(unit.network());
        for (Map.Entry<TestPoint, List<Integer>> point : points.entrySet()) {
            series.restart(base.get(point.getKey()).start());
            if (!series.solve(point.getKey().conditions(unit))) {
                return Optional.empty();
            }
            at(series, new Case(unit, own, false), point.getKey(), meters(point.getValue()))
                    .place(placed(point.getValue()), number++, mean, moves);
        }
        return Optional.of(
                new Expectation.Slopes(new ArrayRealVector(mean, false), new Array2DRowRealMatrix(moves, false)));
    }

    /**
     * A unit with what is not known of it.
     *
     * @param pump whether a pump of it has a fault, so that what is not known of the pump counts for more oil than in the sound unit
     */
    private record Case(Transmission unit, List<Tolerances.Shift> shifts, boolean pump) {}

    /**
     * A unit as solved.
     *
     * @param expected of it
     * @param states   of it, at each test point
     */
    record SolvedPoints(Expectation expected, Map<TestPoint, SolvedState> states) {}

    /**
     * What is expected of units of this build with faults, each near the one before it; empty where a size is impossible or a state
     * is not found.
     */
    List<Optional<Expectation>> along(Series series, List<List<UnitFault.Sized>> units) {
        return along(series, units, StartStates.of(starts())).stream()
                .map(one -> one.map(SolvedPoints::expected))
                .toList();
    }

    /**
     * The same with the states.
     *
     * @param from states near those of the first
     */
    List<Optional<SolvedPoints>> along(Series series, List<List<UnitFault.Sized>> units, StartStates from) {
        return swept(series, units, from).stream()
                .map(one -> one.map(found -> new SolvedPoints(
                        new Expectation(
                                found.slopes().mean(),
                                covariance(
                                        found.slopes().mean().toArray(),
                                        found.slopes().slopes().getData())),
                        found.states())))
                .toList();
    }

    /**
     * A unit as solved, with what moves its readings.
     *
     * @param slopes of the readings by each number that is not known
     * @param states of it, at each test point
     */
    record SweptPoints(Expectation.Slopes slopes, Map<TestPoint, SolvedState> states) {}

    /** The same with what each number that is not known moves each reading by, in place of their covariance. */
    List<Optional<SweptPoints>> swept(Series series, List<List<UnitFault.Sized>> units, StartStates from) {
        int n = rows.size();
        Cases cases = new Cases(units);
        List<double[]> means = new ArrayList<>();
        List<double[][]> moves = new ArrayList<>();
        List<Map<TestPoint, SolvedState>> states = new ArrayList<>();
        for (int k = 0; k < units.size(); k++) {
            means.add(new double[n]);
            moves.add(new double[n][MetersAtPoint.columns(shifts.size(), points.size())]);
            states.add(new HashMap<>());
        }
        int number = 0;
        for (Map.Entry<TestPoint, List<Integer>> point : points.entrySet()) {
            // a unit of which one state is not found is not asked for the others
            Set<Integer> asked = new TreeSet<>();
            for (int k = 0; k < units.size(); k++) {
                if (states.get(k).size() == number) {
                    asked.add(k);
                }
            }
            StartStates.Start start = from.at(point.getKey());
            List<Optional<MetersAtPoint>> found = kept.map(known -> known.of(
                            units,
                            asked,
                            point.getKey(),
                            start,
                            () -> chain(series, cases, asked, point.getKey(), start, known.meters())))
                    .orElseGet(() -> chain(series, cases, asked, point.getKey(), start, meters(point.getValue())));
            for (int k : asked) {
                if (found.get(k).isPresent()) {
                    MetersAtPoint one = found.get(k).get();
                    one.place(placed(point.getValue()), number, means.get(k), moves.get(k));
                    states.get(k).put(point.getKey(), one.state());
                }
            }
            number++;
        }
        List<Optional<SweptPoints>> solved = new ArrayList<>();
        for (int k = 0; k < units.size(); k++) {
            solved.add(
                    states.get(k).size() == number
                            ? Optional.of(new SweptPoints(
                                    new Expectation.Slopes(
                                            new ArrayRealVector(means.get(k), false),
                                            new Array2DRowRealMatrix(moves.get(k), false)),
                                    states.get(k)))
                            : Optional.empty());
        }
        return solved;
    }

    /** Units with faults, each made once it is asked for. */
    private final class Cases {
        private final List<List<UnitFault.Sized>> units;
        private final Map<Integer, Optional<Case>> made = new HashMap<>();

        Cases(List<List<UnitFault.Sized>> units) {
            this.units = units;
        }

        int size() {
            return units.size();
        }

        /** Empty where a size is impossible. */
        Optional<Case> get(int k) {
            return made.computeIfAbsent(
                    k,
                    any -> UnitFault.in(tolerances.build(), units.get(k))
                            .map(unit ->
                                    new Case(unit, tolerances.shifts(shifts, units.get(k)), pump(unit, units.get(k)))));
        }
    }

    private static boolean pump(Transmission unit, List<UnitFault.Sized> faults) {
        return faults.stream()
                .flatMap(one -> unit.network().part(one.fault().part()).stream())
                .anyMatch(placed -> placed.part() instanceof PumpChamber);
    }

    /** Those of the units that are asked for, at a test point, each started from the one before it. */
    private List<Optional<MetersAtPoint>> chain(
            Series series,
            Cases cases,
            Set<Integer> asked,
            TestPoint point,
            StartStates.Start from,
            List<Meter> meters) {
        List<Optional<MetersAtPoint>> found = new ArrayList<>();
        series.restart(from.state());
        for (int k = 0; k < cases.size(); k++) {
            Optional<Case> one = asked.contains(k) ? cases.get(k) : Optional.empty();
            boolean solved = false;
            if (one.isPresent()) {
                series.use(one.get().unit().network());
                from.otherwise().ifPresent(series::otherwise);
                solved = series.solve(point.conditions(one.get().unit()));
            }
            found.add(solved ? Optional.of(at(series, one.orElseThrow(), point, meters)) : Optional.empty());
        }
        return found;
    }

    private List<Meter> meters(List<Integer> here) {
        return here.stream().map(i -> rows.get(i).meter()).distinct().toList();
    }

    private Map<Integer, Meter> placed(List<Integer> here) {
        Map<Integer, Meter> placed = new TreeMap<>();
        here.forEach(i -> placed.put(i, rows.get(i).meter()));
        return placed;
    }

    /** Variance of what one row reads on a unit. */
    double variance(Expectation.Slopes unit, int row) {
        RealVector moves = unit.slopes().getRowVector(row);
        return moves.dotProduct(moves)
                + (rows.get(row).meter().reads() == Meter.Reads.FLOW
                        ? Math.pow(Tolerances.FLOW_LAW * unit.mean().getEntry(row), 2)
                        : 0);
    }

    private RealMatrix covariance(double[] mean, double[][] moves) {
        double[][] covariance = new double[mean.length][mean.length];
        for (int i = 0; i < mean.length; i++) {
            for (int j = 0; j <= i; j++) {
                covariance[i][j] = covariance[j][i] = MetersAtPoint.dot(moves[i], moves[j]);
            }
            if (rows.get(i).meter().reads() == Meter.Reads.FLOW) {
                covariance[i][i] += Math.pow(Tolerances.FLOW_LAW * mean[i], 2);
            }
        }
        return new Array2DRowRealMatrix(covariance, false);
    }

    /** What meters read at a test point, and what one standard deviation of each number that is not known moves them by. */
    private MetersAtPoint at(Series series, Case one, TestPoint point, List<Meter> meters) {
        MetersAtPoint first = MetersAtPoint.of(series, one.unit(), one.shifts(), point, meters);
        return spread(series, one, point)
                .map(spread -> first.with(spread.beyond(series, one.unit(), point, first.bySpeed())))
                .orElse(first);
    }

    private Optional<DeliverySpread> spread(Series series, Case one, TestPoint point) {
        if (!one.pump()) {
            return Optional.ofNullable(spreads.get(point));
        }
        SolvedState kept = series.kept();
        Optional<DeliverySpread> own = DeliverySpread.of(series, one.unit(), one.shifts(), point);
        series.restart(kept);
        series.solve(kept.conditions());
        return own;
    }
}
