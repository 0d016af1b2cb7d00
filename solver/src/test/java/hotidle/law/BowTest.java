package hotidle.law;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** What a gap that is not even leaks as. */
class BowTest {

    /** Mean over s from 0 to 1 by Simpson's rule. */
    private static double mean(DoubleUnaryOperator function) {
        int n = 2000;
        double sum = 0;
        for (int i = 0; i <= n; i++) {
            sum += (i == 0 || i == n ? 1 : i % 2 == 1 ? 4 : 2) * function.applyAsDouble((double) i / n);
        }
        return sum / (3 * n);
    }

    @Test
    void aBowLeaksByTheMeanOfItsCube() {
        double h = 4e-6;
        double rise = 31e-6;
        assertEquals(mean(s -> Math.pow(h + rise * (1 - s * s), 3)), Bow.ACROSS.cube(h, rise), 1e-24);
        assertEquals(mean(s -> Math.pow(h + rise * Math.pow(1 - s * s, 2), 3)), Bow.BETWEEN.cube(h, rise), 1e-24);
        assertEquals(mean(s -> h + rise * Math.pow(1 - s * s, 2)), Bow.BETWEEN.height(h, rise), 1e-15);
        assertEquals(h * h * h, Bow.BETWEEN.cube(h, 0));
    }

    /** A feeler's value is no even gap: 35 µm midway leaks as 25 µm all along, a third of what 35 µm would. */
    @Test
    void aFeelerBetweenBoltsStandsForLessThanItsThickness() {
        double cube = Bow.BETWEEN.cube(4e-6, 31e-6);
        assertEquals(25e-6, Math.cbrt(cube), 0.05e-6);
        assertEquals(0.366, cube / Math.pow(35e-6, 3), 1e-3);
    }

    /** A beam clamped at both ends under an even load has no slope at its ends and at its middle. */
    @Test
    void aFaceDoesNotTiltAtItsBolts() {
        DoubleUnaryOperator line = s -> Math.pow(1 - s * s, 2);
        assertEquals(0, (line.applyAsDouble(1) - line.applyAsDouble(1 - 1e-6)) / 1e-6, 1e-5);
        double fourth = 24; // of its fourth derivative, the load, which is the same all along
        double step = 1e-2;
        for (double s : new double[] {0, 0.5, 0.9}) {
            double difference = line.applyAsDouble(s + 2 * step)
                    - 4 * line.applyAsDouble(s + step)
                    + 6 * line.applyAsDouble(s)
                    - 4 * line.applyAsDouble(s - step)
                    + line.applyAsDouble(s - 2 * step);
            assertEquals(fourth, difference / Math.pow(step, 4), 1e-3);
        }
    }
}
