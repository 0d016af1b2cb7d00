package hotidle.law;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** What a chamber pushes its drive gear aside with. */
class GearSideLoadTest {

    private static final GearSideLoad GEARS = new GearSideLoad(0.003, 26, 13, 0.084, 0.045);

    private static GearSideLoad.Factor degrees(double sealed, double opened) {
        return GEARS.factor(Math.toRadians(sealed), Math.toRadians(opened));
    }

    @Test
    void pressureAndTeethTurnTheDriveGearWithTheDisplacementsTorque() {
        int steps = 4000;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            sum += GEARS.torque(((i + 0.5) / steps - 0.5) * GEARS.basePitch());
        }
        double displacement = GearDisplacement.involute(0.003, 26, 13, 0.084, 0.045, 1);
        assertEquals(displacement / (2 * Math.PI), sum / steps, 1e-7 * displacement);
    }

    /** Without teeth the half circle alone: a step in its middle pushes with the chord of a quarter circle, da/√2. */
    @Test
    void aPressureThatEndsInTheMiddleOfAHalfCirclePushesWithTheChordOfAQuarter() {
        GearSideLoad smooth = new GearSideLoad(1e-7, 840_000, 840_000, 0.084, 0.084);
        assertEquals(Math.sqrt(0.5), smooth.factor(Math.PI / 2, Math.PI / 2).mean(), 1e-5);
        // falling over the whole half circle: half of |i + 2/π|
        assertEquals(Math.hypot(1, 2 / Math.PI) / 2, smooth.factor(0, Math.PI).mean(), 1e-5);
    }

    @Test
    void twoOppositePinionsLoadTheDriveGearLessThanOneMeshDoes() {
        GearSideLoad.Factor half = degrees(40, 140);
        assertEquals(0.62, half.mean(), 0.01);
        assertEquals(0.54, degrees(0, 180).mean(), 0.01);
        assertEquals(0.71, degrees(60, 150).mean(), 0.01);
        assertEquals(0.50, degrees(30, 120).least(), 0.01);
        assertEquals(0.75, degrees(60, 150).greatest(), 0.01);
        assertTrue(half.least() < half.mean() && half.mean() < half.greatest());
        assertEquals(
                0.78,
                new GearSideLoad(0.003, 17, 17, 0.057, 0.057)
                        .factor(Math.PI / 2, Math.PI)
                        .mean(),
                0.02);
    }
}
