package hotidle.study;

import hotidle.law.AirOrifice;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A stand that tests bores with air, as known holes have calibrated it: what it reads for so much air. Its pump or regulator, hoses
 * and leaks of its own need not be known.
 *
 * <pre>
 * Curve   straight between calibration points. No pump's curve is: three holes or more are worth their time, and points close to the
 *         reading most
 * Range   from the least to the most air that was calibrated; a blocked port is a hole of none. Beyond, nothing is known
 * </pre>
 *
 * @param ambient     absolute pressure of the room [Pa]
 * @param temperature of the room, the stand and the part [K]
 * @param points      two or more, in rising pressure
 */
public record AirStand(double ambient, double temperature, List<StandPoint> points) {

    /**
     * A calibration point.
     *
     * @param pressure absolute, that the stand reads [Pa]
     * @param freeAir  that passes then, counted at ambient pressure [m³/s]
     */
    public record StandPoint(double pressure, double freeAir) {}

    /**
     * A hole in the place of a part.
     *
     * @param diameter [m], 0 for a blocked port
     * @param pressure absolute, that the stand reads with it [Pa]
     */
    public record Calibration(double diameter, double pressure) {}

    public AirStand {
        points = points.stream()
                .sorted(Comparator.comparingDouble(StandPoint::pressure))
                .toList();
        if (points.size() < 2) {
            throw new IllegalArgumentException(
                    "a stand is calibrated by two holes or more; a blocked port counts as one");
        }
        boolean draws = points.get(points.size() - 1).pressure() <= ambient;
        boolean presses = points.get(0).pressure() >= ambient;
        double side = draws
                ? 1
                : presses
                        ? -1
                        : 0; // one that draws passes more air the nearer it reads to the room's pressure from below
        for (int i = 0; i + 1 < points.size(); i++) {
            double step = points.get(i + 1).freeAir() - points.get(i).freeAir();
            if (!(step * side > 0)
                    || !(points.get(i + 1).pressure() > points.get(i).pressure())) {
                throw new IllegalArgumentException(
                        "a larger hole must read nearer to the room's pressure than a smaller one");
            }
        }
    }

    /**
     * A stand by the holes that calibrated it.
     *
     * @param coefficient of the holes, {@link AirOrifice}
     * @throws IllegalArgumentException where their readings do not go with their sizes
     */
    public static AirStand of(double ambient, double temperature, double coefficient, List<Calibration> holes) {
        List<StandPoint> points = new ArrayList<>();
        for (Calibration hole : holes) {
            double high = Math.max(hole.pressure(), ambient);
            double low = Math.min(hole.pressure(), ambient);
            points.add(new StandPoint(
                    hole.pressure(),
                    AirOrifice.freeAir(hole.diameter(), coefficient, high, low, ambient, temperature)));
        }
        return new AirStand(ambient, temperature, points);
    }

    /** The air that passes at a reading [Pa, absolute], counted at ambient pressure [m³/s]; empty beyond the calibration. */
    public OptionalDouble freeAir(double pressure) {
        for (int i = 0; i + 1 < points.size(); i++) {
            StandPoint before = points.get(i);
            StandPoint after = points.get(i + 1);
            if (pressure >= before.pressure() && pressure <= after.pressure()) {
                double share = (pressure - before.pressure()) / (after.pressure() - before.pressure());
                return OptionalDouble.of(before.freeAir() + share * (after.freeAir() - before.freeAir()));
            }
        }
        return OptionalDouble.empty();
    }
}
