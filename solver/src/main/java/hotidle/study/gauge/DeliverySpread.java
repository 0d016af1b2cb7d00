package hotidle.study.gauge;

import hotidle.network.Conditions;
import hotidle.newton.Series;
import hotidle.newton.SolvedState;
import hotidle.transmission.Command;
import hotidle.transmission.Transmission;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * By how much units of one build differ in the oil that their pumps have to spare, told as engine speed. Where a regulator or a limit
 * valve just holds, the first order tells nothing of what less oil would do: a little less, and what it holds falls.
 *
 * <pre>
 * Deviation  all that is not known, as the speed that moves the line as far where the regulator is shut: √Σ(∂p/∂k)²/(∂p/∂n); there at
 *            the test point's own speed, or at the first of the {@link #SLOWER} at which it is
 * Far        readings are solved at √3 deviations to both sides of the speed, the points of the rule of Gauss and Hermite with three
 *            points, each of weight 1/6; M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions, 1964, §25.4.46 (from memory)
 * Counts     what a reading moves there by more than to first order, times √(1/6), as one more number that is not known
 * </pre>
 *
 * @param deviation of the speed, as a share of it [-]
 * @param common    share of its variance that is the same at all test points [-]
 */
record DeliverySpread(double deviation, double common) {

    /** Speeds at which the regulator is looked for shut, as shares of the test point's (ours). */
    private static final double[] SLOWER = {1, 0.9, 0.8, 0.7, 0.6, 0.5, 0.4, 0.3};

    /** The regulator is shut where the line falls by this share of the speed's change at least (ours) [-]. */
    private static final double SHUT = 0.3;

    /** How far to both sides is looked [standard deviations]. */
    private static final double FAR = Math.sqrt(3);

    /** √ of the weight of what is there [-]. */
    private static final double WEIGHT = Math.sqrt(1 / 6.0);

    /** Numbers that {@link #beyond} has of each meter. */
    static final int COLUMNS = 4;

    /** No speed is changed by more than this (ours) [-]. */
    private static final double MOST = 0.25;

    /**
     * Of a unit at a test point; empty where nothing commands a line, or it is held at every speed.
     *
     * @param shifts of the unit
     */
    static Optional<DeliverySpread> of(
            Series series, Transmission unit, List<Tolerances.Shift> shifts, TestPoint point) {
        Optional<Meter> line = unit.commanded()
                .map(Command::line)
                .map(node -> new Meter("line", node, Meter.Reads.PRESSURE))
                .filter(meter -> series.knows(meter.node()));
        if (line.isEmpty()) {
            return Optional.empty();
        }
        for (double slower : SLOWER) {
            TestPoint there = point.atSpeed(point.speed() * slower);
            if (!series.solve(there.conditions(unit))) {
                return Optional.empty();
            }
            double moved = MetersAtPoint.bySpeed(series, unit, there, line.get());
            double bySpeed = Math.abs(moved) / Tolerances.SPEED;
            if (bySpeed > SHUT * line.get().read(series)) {
                double[] read = MetersAtPoint.of(series, unit, shifts, there, List.of(line.get()))
                        .first()
                        .get(line.get());
                double common = 0;
                for (int k = 1; k < read.length - 2; k++) {
                    common += Math.pow(read[k] / bySpeed * slower, 2);
                }
                double set = Math.pow(read[read.length - 2] / bySpeed * slower, 2) + Math.pow(Tolerances.SPEED, 2);
                return Optional.of(
                        new DeliverySpread(Math.min(Math.sqrt(common + set), MOST / FAR), common / (common + set)));
            }
        }
        return Optional.empty();
    }

    /**
     * What each meter moves by beyond first order with less oil and with more, weighted: what all test points have in common, then
     * what is of this one; nil where a state is not found. The series stands afterwards as it did.
     *
     * @param series  that solved the unit at the test point last
     * @param bySpeed what {@link Tolerances#SPEED} moves each meter by
     */
    Map<Meter, double[]> beyond(Series series, Transmission unit, TestPoint point, Map<Meter, Double> bySpeed) {
        SolvedState kept = series.kept();
        Map<Meter, Double> here = read(series, bySpeed.keySet());
        Map<Meter, double[]> beyond = new HashMap<>();
        bySpeed.keySet().forEach(meter -> beyond.put(meter, new double[COLUMNS]));
        for (int side = 0; side < 2; side++) {
            Conditions far = point.atSpeed(point.speed() * (1 + (side == 0 ? -FAR : FAR) * deviation))
                    .conditions(unit);
            series.restart(kept);
            if (series.solve(far)) {
                for (Map.Entry<Meter, Double> there :
                        read(series, bySpeed.keySet()).entrySet()) {
                    double moved = there.getValue() - here.get(there.getKey());
                    double first = Math.abs(FAR * deviation / Tolerances.SPEED * bySpeed.get(there.getKey()));
                    double counts = WEIGHT * Math.copySign(Math.max(Math.abs(moved) - first, 0), moved);
                    beyond.get(there.getKey())[side] = Math.sqrt(common) * counts;
                    beyond.get(there.getKey())[2 + side] = Math.sqrt(1 - common) * counts;
                }
            }
        }
        series.restart(kept);
        return beyond;
    }

    private static Map<Meter, Double> read(Series series, Iterable<Meter> meters) {
        Map<Meter, Double> read = new HashMap<>();
        meters.forEach(meter -> read.put(meter, meter.read(series)));
        return read;
    }
}
