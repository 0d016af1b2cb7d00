package hotidle.circuits.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** One size that leaks as much as several readings, against the flow through the bore that they describe, added up piece by piece. */
class ReadingsTest {

    private static final double VALVE = 14e-3;
    private static final int PIECES = 20_000;

    private static double mean(DoubleUnaryOperator figure) {
        double sum = 0;
        for (int i = 0; i < PIECES; i++) {
            sum += figure.applyAsDouble((i + 0.5) / PIECES);
        }
        return sum / PIECES;
    }

    private static double clearance(double... depths) {
        return new Readings(java.util.Arrays.stream(depths).mapToObj(List::of).toList()).clearanceOver(VALVE);
    }

    @Test
    void aTaperedBoreLeaksByTheThirdPowersOfItsClearancesOneBehindTheOther() {
        double straight = Math.cbrt(1 / mean(z -> Math.pow(20e-6 + z * 60e-6, -3)));
        assertEquals(straight, clearance(VALVE + 20e-6, VALVE + 80e-6), 1e-6 * straight);
        double bent = Math.cbrt(1 / mean(z -> Math.pow(z < 0.5 ? 20e-6 + z * 20e-6 : 30e-6 + (z - 0.5) * 100e-6, -3)));
        assertEquals(bent, clearance(VALVE + 20e-6, VALVE + 30e-6, VALVE + 80e-6), 1e-6 * bent);
    }

    @Test
    void anOvalBoreLeaksMoreThanARoundOneOfItsMeanDiameter() {
        double oval = new Readings(List.of(List.of(VALVE + 20e-6, VALVE + 60e-6))).clearanceOver(VALVE);
        double summed = Math.cbrt(mean(turn -> Math.pow(40e-6 + 20e-6 * Math.cos(4 * Math.PI * turn), 3)));
        assertEquals(summed, oval, 1e-9 * oval);
        assertTrue(oval > 40e-6);
    }

    @Test
    void threeDepthsInTwoDirectionsAreBothAtOnce() {
        Readings even = new Readings(List.of(
                List.of(VALVE + 50e-6, VALVE + 50e-6),
                List.of(VALVE + 50e-6, VALVE + 50e-6),
                List.of(VALVE + 50e-6, VALVE + 50e-6)));
        assertEquals(50e-6, even.clearanceOver(VALVE), 1e-12);
        assertEquals("3 depths in 2 directions", even.counted());
    }

    /** The narrow end throttles: a bell mouth leaks little more than the straight part behind it. */
    @Test
    void aBellMouthLeaksLessThanItsMeanWouldSay() {
        double mouth = clearance(VALVE + 100e-6, VALVE + 30e-6, VALVE + 30e-6);
        assertTrue(mouth < 40e-6, "the mean is 53 um, not " + 1e6 * mouth);
        assertTrue(mouth > 30e-6);
    }

    @Test
    void gapsSideBySidePassTheMeanOfTheirCubes() {
        assertEquals(
                Math.cbrt((8 + 64) / 2.0) * 1e-5, new Readings(List.of(List.of(2e-5), List.of(4e-5))).gap(), 1e-12);
    }
}
