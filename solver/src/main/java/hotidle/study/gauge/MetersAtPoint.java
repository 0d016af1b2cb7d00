package hotidle.study.gauge;

import hotidle.network.Conditions;
import hotidle.newton.Linearised;
import hotidle.newton.Series;
import hotidle.newton.SolvedState;
import hotidle.result.Solution;
import hotidle.transmission.Command;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What meters read of a unit in its state at one test point, and what each number that is not known moves them by.
 *
 * <pre>
 * First order  each number moves each reading by −λ·Δr, λ the adjoint of the reading and Δr what the equations change by,
 *              {@link Linearised}
 * Numerics     Δr is taken between half a standard deviation to both sides; speed, temperature and pilot pressure to one side
 * </pre>
 *
 * @param state  of the unit
 * @param first  by meter, what it reads, then what one standard deviation of each number moves it by to first order: of the shifts, of
 *               thermometer and oil, of the pilot pressure, of the temperature at this point and of the speed
 * @param beyond by meter, what less and more oil moves it by beyond that, {@link DeliverySpread#beyond}; without those of which nothing
 *               is counted
 */
record MetersAtPoint(SolvedState state, Map<Meter, double[]> first, Map<Meter, double[]> beyond) {

    /** Temperature and speed, the last of the first order, are of one test point. */
    private static final int SET = 2;

    /** Of what is beyond first order, half is common to all test points and half is of one. */
    private static final int SIDES = DeliverySpread.COLUMNS / 2;

    /** To first order, in the state that was solved last. */
    static MetersAtPoint of(
            Series series, Transmission unit, List<Tolerances.Shift> shifts, TestPoint point, List<Meter> meters) {
        Linearised linearised = series.linearised();
        List<double[]> changes = new ArrayList<>();
        shifts.forEach(shift -> changes.add(linearised.difference(shift.up(), shift.down())));
        Conditions own = point.conditions(unit);
        List<double[]> set = linearised.under(List.of(
                piloted(unit, own),
                own.atSpeed(point.speed() * (1 + Tolerances.SPEED)),
                point.atTemperature(point.temperature() + Tolerances.TEMPERATURE)
                        .conditions(unit)));
        double[] warmer = set.get(2);
        changes.add(times(warmer, Tolerances.COMMON_TEMPERATURE / Tolerances.TEMPERATURE));
        changes.add(set.get(0));
        changes.add(warmer);
        changes.add(set.get(1));
        Optional<Solution> whole = meters.stream().allMatch(meter -> meter.solved(series))
                ? Optional.empty()
                : Optional.of(series.state());
        Map<Meter, double[]> read = new HashMap<>();
        for (Meter meter : meters) {
            double[] values = new double[1 + changes.size()];
            values[0] = meter.read(series, whole);
            double[] weights = linearised.weights(meter.slopes(linearised, series, whole));
            for (int k = 0; k < changes.size(); k++) {
                values[k + 1] = -dot(weights, changes.get(k));
            }
            read.put(meter, values);
        }
        return new MetersAtPoint(series.kept(), read, Map.of());
    }

    /** What one standard deviation of the engine speed moves a solved pressure by, to first order in the state that was solved last. */
    static double bySpeed(Series series, Transmission unit, TestPoint point, Meter pressure) {
        Linearised linearised = series.linearised();
        double[] faster = linearised.under(point.conditions(unit).atSpeed(point.speed() * (1 + Tolerances.SPEED)));
        return -dot(linearised.weights(pressure.slopes(linearised, series, Optional.empty())), faster);
    }

    /** With what is beyond first order. */
    MetersAtPoint with(Map<Meter, double[]> further) {
        return new MetersAtPoint(state, first, further);
    }

    /** What one standard deviation of the engine speed moves each meter by. */
    Map<Meter, Double> bySpeed() {
        Map<Meter, Double> bySpeed = new HashMap<>();
        first.forEach((meter, values) -> bySpeed.put(meter, values[values.length - 1]));
        return bySpeed;
    }

    /** How many numbers are not known of a unit, over all of its test points. */
    static int columns(int shifts, int points) {
        return shifts + SET + SIDES + (SET + SIDES) * points;
    }

    /**
     * Puts what is read here into rows of this test point.
     *
     * @param rows   meter of each of them, by its number
     * @param number of the test point, from nil on
     * @param mean   of all rows
     * @param moves  of all rows, by {@link #columns}: numbers that all points share, then those of each point
     */
    void place(Map<Integer, Meter> rows, int number, double[] mean, double[][] moves) {
        rows.forEach((row, meter) -> {
            double[] read = first.get(meter);
            double[] further = beyond.getOrDefault(meter, new double[DeliverySpread.COLUMNS]);
            int all = read.length - 1 - SET;
            int own = all + SIDES + (SET + SIDES) * number;
            mean[row] = read[0];
            for (int k = 0; k < all; k++) {
                moves[row][k] = read[k + 1];
            }
            for (int k = 0; k < SET; k++) {
                moves[row][own + k] = read[all + 1 + k];
            }
            for (int k = 0; k < SIDES; k++) {
                moves[row][all + k] = further[k];
                moves[row][own + SET + k] = further[SIDES + k];
            }
        });
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
        return Arrays.stream(values).map(value -> value * factor).toArray();
    }

    static double dot(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }
}
