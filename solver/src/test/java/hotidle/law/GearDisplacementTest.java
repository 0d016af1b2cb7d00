package hotidle.law;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** The closed formulas against the oil that the moving contact of two teeth displaces, worked out point by point. */
final class GearDisplacementTest {

    private static final double MODULE = 0.003;
    private static final double WIDTH = 0.012;

    /**
     * For a small turn of the driving gear each gear sweeps b·(ra² − ρ²)/2 between its tip circle and the point of contact, which runs
     * along the line of action over one base pitch.
     *
     * @param driven teeth of the driven gear, negative for a ring gear
     */
    private static double byContact(int driving, int driven, double tip1, double tip2) {
        double r1 = MODULE * driving / 2;
        double r2 = MODULE * driven / 2;
        double angle = GearDisplacement.PRESSURE_ANGLE;
        double pitch = Math.PI * MODULE * Math.cos(angle);
        int steps = 2000;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            double along = pitch * ((i + 0.5) / steps - 0.5);
            // the pitch point is the origin, the first gear's centre at −r1, the second's at r2 on the line of centres
            double x = along * Math.sin(angle);
            double y = along * Math.cos(angle);
            double rho1 = Math.hypot(x + r1, y);
            double rho2 = Math.hypot(x - r2, y);
            sum += WIDTH / 2 * (tip1 * tip1 / 4 - rho1 * rho1 + r1 / r2 * (tip2 * tip2 / 4 - rho2 * rho2));
        }
        return 2 * Math.PI * sum / steps;
    }

    @Test
    void anExternalPairDisplacesWhatItsContactSweeps() {
        double swept = byContact(26, 13, 0.084, 0.045);
        assertEquals(swept, GearDisplacement.involute(MODULE, 26, 13, 0.084, 0.045, WIDTH), 1e-6 * swept);
    }

    @Test
    void aRingGearDisplacesWhatItsContactSweeps() {
        double swept = byContact(23, -31, 0.075, 0.087);
        assertEquals(swept, GearDisplacement.internal(MODULE, 23, 31, 0.075, 0.087, WIDTH), 1e-6 * swept);
    }

    /** Two teeth of height 2·m pass the pitch point in each pitch: V = 2·π·m²·z·b within some per cent (common practice). */
    @Test
    void bothPairsDisplaceAboutTheirToothSpaces() {
        double external = 2 * Math.PI * MODULE * MODULE * 26 * WIDTH;
        assertEquals(external, GearDisplacement.involute(MODULE, 26, 13, 0.084, 0.045, WIDTH), 0.06 * external);
        double internal = 2 * Math.PI * MODULE * MODULE * 23 * WIDTH;
        assertEquals(internal, GearDisplacement.internal(MODULE, 23, 31, 0.075, 0.087, WIDTH), 0.06 * internal);
    }
}
