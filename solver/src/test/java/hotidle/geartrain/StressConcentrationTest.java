package hotidle.geartrain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Notches of a shaft of 32 mm with a bore of 8 mm. */
class StressConcentrationTest {

    private static final double OUTER = 0.032;
    private static final double BORE = 0.008;

    private static double spline(double fillet) {
        return StressConcentration.spline(0.036, OUTER, BORE, fillet);
    }

    @Test
    void aSharperRootOfASplineConcentratesMore() {
        assertTrue(spline(0.2e-3) > spline(0.4e-3));
        assertTrue(spline(0.4e-3) > spline(0.8e-3));
        assertTrue(spline(0.8e-3) > 1);
    }

    /** Both carry the same torque at the same largest stress, whatever section is named. */
    @Test
    void theBoreOfASplinedShaftTakesNothingFromItsConcentrationButTheSection() {
        double solid = StressConcentration.spline(0.036, OUTER, 0, 0.4e-3);
        double loaded = OUTER * (1 + 0.15 * 4 / 36);
        double modulus = ShaftStrength.modulus(OUTER, BORE) / ShaftStrength.modulus(loaded, BORE);
        assertEquals(solid * Math.pow(loaded / OUTER, 3) * modulus, spline(0.4e-3), 1e-12);
    }

    @Test
    void anOilHoleIsWorthAboutTwoAndASmallOneExactlyTwo() {
        assertEquals(2, StressConcentration.hole(0, OUTER, BORE), 1e-12);
        assertEquals(1.85, StressConcentration.hole(0.0032, OUTER, BORE), 0.02);
    }

    @Test
    void outsideWhatTheFormulasWereMadeForNothingIsSaid() {
        assertThrows(IllegalArgumentException.class, () -> StressConcentration.hole(0.0129, OUTER, BORE));
        assertThrows(IllegalArgumentException.class, () -> StressConcentration.hole(0.003, OUTER, 0.029));
        assertThrows(IllegalArgumentException.class, () -> StressConcentration.shoulder(0.040, OUTER, 0.5e-3));
        IllegalArgumentException blunt = assertThrows(IllegalArgumentException.class, () -> spline(2.1e-3));
        assertEquals(
                "the height of the spline's teeth over the radius at their roots is 0.95 and must lie between 1 and 10",
                blunt.getMessage());
        assertThrows(IllegalArgumentException.class, () -> spline(0.19e-3));
    }
}
