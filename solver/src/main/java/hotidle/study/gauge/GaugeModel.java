package hotidle.study.gauge;

import hotidle.fault.UnitFault;
import hotidle.network.Conditions;
import hotidle.newton.Linearised;
import hotidle.newton.Series;
import hotidle.newton.SteadySolver;
import hotidle.part.Clutch;
import hotidle.part.Cooler;
import hotidle.result.Solution;
import hotidle.transmission.Command;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * What meters would read on units of one build, and how sure that is.
 *
 * <pre>
 * Mean       of the steady state of the unit at each test point
 * Deviation  to first order about that state: each number that is not known moves each reading by −λ·Δr, λ the adjoint of the
 *            reading and Δr what the equations change by, {@link Linearised}; so where the regulator is shut, the same tolerances
 *            count for more than where it holds the line. What is set at a test point moves all readings of that point together,
 *            tolerances of the unit, thermometer and oil all readings
 * Numerics   Δr is taken between half a standard deviation to both sides; speed, temperature and pilot pressure to one side
 * </pre>
 */
final class GaugeModel {

    private final List<GaugeReading.Row> rows;
    private final Map<TestPoint, List<Integer>> points = new LinkedHashMap<>();
    private final Map<TestPoint, Solution> base = new HashMap<>();
    private final List<TestPoint> unsolved = new ArrayList<>();
    private final Tolerances tolerances;
    private final Transmission sound;
    private final List<Tolerances.Shift> shifts;

    /** A model of the rows; each test point is solved for the sound unit once, from a cold start. */
    GaugeModel(Tolerances tolerances, List<Tolerances.Shift> shifts, List<GaugeReading.Row> rows) {
        this.rows = List.copyOf(rows);
        this.tolerances = tolerances;
        this.shifts = shifts;
        sound = tolerances.build().unit();
        for (int i = 0; i < rows.size(); i++) {
            points.computeIfAbsent(rows.get(i).at(), at -> new ArrayList<>()).add(i);
        }
        SteadySolver solver = new SteadySolver(sound.network());
        points.keySet()
                .forEach(point -> solver.solve(point.conditions(sound))
                        .state()
                        .ifPresentOrElse(state -> base.put(point, state), () -> unsolved.add(point)));
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
        return Collections.unmodifiableMap(base);
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

    /** A work space for units of this build; one for each thread. */
    Series series() {
        return new Series(sound.network());
    }

    /** What is read on a unit, nothing else; empty where a state of it is not found. */
    Optional<double[]> read(Series series, Transmission unit) {
        double[] mean = new double[rows.size()];
        series.use(unit.network());
        for (Map.Entry<TestPoint, List<Integer>> point : points.entrySet()) {
            series.restart(base.get(point.getKey()));
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
        RealMatrix moves = new Array2DRowRealMatrix(rows.size(), columns(own));
        int number = 0;
        series.use(unit.network());
        for (Map.Entry<TestPoint, List<Integer>> point : points.entrySet()) {
            series.restart(base.get(point.getKey()));
            if (!series.solve(point.getKey().conditions(unit))) {
                return Optional.empty();
            }
            at(series, new Case(unit, own), point.getKey(), point.getValue(), number++, mean, moves);
        }
        return Optional.of(new Expectation.Slopes(new ArrayRealVector(mean), moves));
    }

    private int columns(List<Tolerances.Shift> own) {
        return own.size() + 2 + 2 * points.size();
    }

    /** A unit with what is not known of it. */
    private record Case(Transmission unit, List<Tolerances.Shift> shifts) {}

    /**
     * A unit as solved.
     *
     * @param expected of it
     * @param states   of it, at each test point
     */
    record SolvedPoints(Expectation expected, Map<TestPoint, Solution> states) {}

    /**
     * What is expected of units of this build with faults, each near the one before it; empty where a size is impossible or a state
     * is not found.
     */
    List<Optional<Expectation>> along(Series series, List<List<UnitFault.Sized>> units) {
        return along(series, units, base).stream()
                .map(one -> one.map(SolvedPoints::expected))
                .toList();
    }

    /**
     * The same with the states.
     *
     * @param from states near those of the first
     */
    List<Optional<SolvedPoints>> along(
            Series series, List<List<UnitFault.Sized>> units, Map<TestPoint, Solution> from) {
        return swept(series, units, from).stream()
                .map(one -> one.map(found -> new SolvedPoints(
                        new Expectation(
                                found.slopes().mean(),
                                covariance(
                                        found.slopes().mean().toArray(),
                                        found.slopes().slopes())),
                        found.states())))
                .toList();
    }

    /**
     * A unit as solved, with what moves its readings.
     *
     * @param slopes of the readings by each number that is not known
     * @param states of it, at each test point
     */
    record SweptPoints(Expectation.Slopes slopes, Map<TestPoint, Solution> states) {}

    /** The same with what each number that is not known moves each reading by, in place of their covariance. */
    List<Optional<SweptPoints>> swept(Series series, List<List<UnitFault.Sized>> units, Map<TestPoint, Solution> from) {
        int n = rows.size();
        List<Optional<Case>> cases = units.stream()
                .map(faults -> UnitFault.in(tolerances.build(), faults)
                        .map(unit -> new Case(unit, tolerances.shifts(shifts, faults))))
                .toList();
        List<double[]> means = new ArrayList<>();
        List<RealMatrix> moves = new ArrayList<>();
        List<Map<TestPoint, Solution>> states = new ArrayList<>();
        for (int k = 0; k < units.size(); k++) {
            means.add(new double[n]);
            moves.add(new Array2DRowRealMatrix(n, columns(shifts)));
            states.add(new HashMap<>());
        }
        int number = 0;
        for (Map.Entry<TestPoint, List<Integer>> point : points.entrySet()) {
            series.restart(from.get(point.getKey()));
            for (int k = 0; k < units.size(); k++) {
                // a unit of which one state is not found is not asked for the others
                if (cases.get(k).isPresent() && states.get(k).size() == number) {
                    Case one = cases.get(k).orElseThrow();
                    series.use(one.unit().network());
                    if (series.solve(point.getKey().conditions(one.unit()))) {
                        at(series, one, point.getKey(), point.getValue(), number, means.get(k), moves.get(k));
                        states.get(k).put(point.getKey(), series.state());
                    }
                }
            }
            number++;
        }
        List<Optional<SweptPoints>> solved = new ArrayList<>();
        for (int k = 0; k < units.size(); k++) {
            solved.add(
                    cases.get(k).isPresent() && states.get(k).size() == number
                            ? Optional.of(new SweptPoints(
                                    new Expectation.Slopes(new ArrayRealVector(means.get(k)), moves.get(k)),
                                    states.get(k)))
                            : Optional.empty());
        }
        return solved;
    }

    private RealMatrix covariance(double[] mean, RealMatrix moves) {
        RealMatrix covariance = moves.multiply(moves.transpose());
        for (int i = 0; i < mean.length; i++) {
            if (rows.get(i).meter().reads() == Meter.Reads.FLOW) {
                covariance.addToEntry(i, i, Math.pow(Tolerances.FLOW_LAW * mean[i], 2));
            }
        }
        return covariance;
    }

    /** Readings at a test point, and what one standard deviation of each number that is not known moves them by. */
    private void at(
            Series series, Case one, TestPoint point, List<Integer> here, int number, double[] mean, RealMatrix moves) {
        Linearised linearised = series.linearised();
        List<double[]> changes = new ArrayList<>();
        one.shifts().forEach(shift -> changes.add(linearised.difference(shift.up(), shift.down())));
        Transmission unit = one.unit();
        Conditions own = point.conditions(unit);
        double[] warmer = linearised.under(point.atTemperature(point.temperature() + Tolerances.TEMPERATURE)
                .conditions(unit));
        changes.add(times(warmer, Tolerances.COMMON_TEMPERATURE / Tolerances.TEMPERATURE));
        changes.add(linearised.under(piloted(unit, own)));
        double[] faster = linearised.under(own.atSpeed(point.speed() * (1 + Tolerances.SPEED)));
        for (int i : here) {
            Meter meter = rows.get(i).meter();
            mean[i] = meter.read(series);
            double[] weights = linearised.weights(meter.slopes(linearised, series));
            for (int k = 0; k < changes.size(); k++) {
                moves.setEntry(i, k, -dot(weights, changes.get(k)));
            }
            moves.setEntry(i, changes.size() + 2 * number, -dot(weights, warmer));
            moves.setEntry(i, changes.size() + 2 * number + 1, -dot(weights, faster));
        }
    }

    /** The conditions with the pilot pressure of the line command larger by its standard deviation. */
    private static Conditions piloted(Transmission unit, Conditions own) {
        Map<String, Double> commands = new HashMap<>(own.commands());
        unit.commanded()
                .flatMap(Command::pilot)
                .ifPresent(pilot -> commands.computeIfPresent(
                        pilot.solenoid(), (name, asked) -> asked * (1 + Tolerances.SOLENOID)));
        return own.commanding(commands);
    }

    private static double[] times(double[] values, double factor) {
        return java.util.Arrays.stream(values).map(value -> value * factor).toArray();
    }

    private static double dot(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }
}
