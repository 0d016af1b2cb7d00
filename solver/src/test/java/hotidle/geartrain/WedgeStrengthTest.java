package hotidle.geartrain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class WedgeStrengthTest {

    private static WedgeStrength of(int count, double strut, double allowed) {
        return new WedgeStrength(count, 0.005, 0.012, 0.035, strut, allowed);
    }

    /** What is rated presses with just what is allowed. */
    @Test
    void atItsRatingItPressesWithWhatIsAllowed() {
        WedgeStrength rollers = of(12, 0.07, 3e9);
        double pressure = WedgeStrength.linePressure(rollers.force() / 0.012, 0.005, 0.035, 206e9, 0.3);
        assertEquals(3e9, pressure, 1);
        assertEquals(12 * rollers.force() * 0.035 * Math.tan(0.07), rollers.rating(), 1e-9);
    }

    @Test
    void twiceTheStressBearsFourTimesTheTorqueAndASteeperStrutMore() {
        assertEquals(4 * of(12, 0.07, 1.5e9).rating(), of(12, 0.07, 3e9).rating(), 1e-6);
        assertTrue(of(12, 0.08, 3e9).rating() > of(12, 0.07, 3e9).rating());
        assertEquals(2 * of(12, 0.07, 3e9).rating(), of(24, 0.07, 3e9).rating(), 1e-6);
    }

    @Test
    void onAPlaneARollerPressesWithItsOwnCurveAlone() {
        double plane = WedgeStrength.linePressure(1e6, 0.005, Double.POSITIVE_INFINITY, 206e9, 0.3);
        assertEquals(plane * Math.sqrt(2), WedgeStrength.linePressure(1e6, 0.005, 0.005, 206e9, 0.3), 1e-3 * plane);
    }

    @Test
    void sizesThatMakeNoWedgeAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> of(0, 0.07, 3e9));
        assertThrows(IllegalArgumentException.class, () -> of(12, 1, 3e9));
    }
}
