package hotidle.law;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A sharp-edged hole from creeping to turbulent flow, and behind a channel. */
class SharpEdgeTest {

    private static final double DENSITY = 850;
    private static final double VISCOSITY = 8e-3;
    private static final double BORE = 2e-3;
    private static final double AREA = Math.PI * BORE * BORE / 4;

    /** Cd = q/(A·√(2·Δp/ρ)) at a Reynolds number of the hole. */
    private static double coefficient(double ratio, double reynolds) {
        double q = reynolds * Math.PI * BORE * VISCOSITY / (4 * DENSITY);
        double[] at = new double[4];
        new SharpEdge(BORE, 0, ratio).dropAt(q, DENSITY, VISCOSITY, at);
        return q / (AREA * Math.sqrt(2 * at[0] / DENSITY));
    }

    /** ISO 5167-2:2003, eq. 4, corner tappings, as printed. */
    private static double standard(double beta, double reynolds) {
        double pipe = beta * reynolds;
        double a = Math.pow(19_000 * beta / pipe, 0.8);
        return 0.5961
                + 0.0261 * Math.pow(beta, 2)
                - 0.216 * Math.pow(beta, 8)
                + 0.000521 * Math.pow(1e6 * beta / pipe, 0.7)
                + (0.0188 + 0.0063 * a) * Math.pow(beta, 3.5) * Math.pow(1e6 / pipe, 0.3);
    }

    @ParameterizedTest
    @CsvSource({"0.1", "0.3", "0.5", "0.6", "0.75"})
    void itsCoefficientIsTheStandardsInItsRange(double beta) {
        double least = 5000 / beta;
        for (double reynolds = least; reynolds < 1e7; reynolds *= 3) {
            double ours = coefficient(beta, reynolds) * Math.sqrt(1 - Math.pow(beta, 4));
            double published = standard(beta, reynolds);
            assertEquals(published, ours, uncertainty(beta, reynolds) * published, beta + " at Re " + reynolds);
        }
    }

    /** What the standard claims for its coefficient, §5.3.3.1 (from memory). */
    private static double uncertainty(double beta, double reynolds) {
        double percent = beta < 0.2 ? 0.7 - beta : beta <= 0.6 ? 0.5 : 1.667 * beta - 0.5;
        return (percent + (beta > 0.5 && beta * reynolds < 1e4 ? 0.5 : 0)) / 100;
    }

    /** The coefficient rises from creeping flow to a hump and drifts down to its turbulent value. */
    @Test
    void itsCoefficientHasAHumpAboveTheSettledValueAndDriftsDown() {
        double settled = coefficient(0, 1e7);
        assertEquals(0.5961, settled, 2e-4);
        double hump = 0;
        double at = 0;
        for (double reynolds = 1; reynolds < 1e6; reynolds *= 1.05) {
            double now = coefficient(0, reynolds);
            if (now > hump) {
                hump = now;
                at = reynolds;
            }
        }
        assertTrue(hump > 0.67 && hump < 0.70 && at > 100 && at < 300, hump + " at Re " + at);
        assertEquals(0.648, coefficient(0, 1000), 2e-3);
        assertEquals(0.609, coefficient(0, 10_000), 1e-3);
        assertEquals(Math.sqrt(1e-6 / (12 * Math.PI)), coefficient(0, 1e-6), 1e-6);
    }

    @Test
    void aHoleIsTakenUpToTheWidestRatioAndNotWithoutADiameter() {
        assertEquals(SharpEdge.WIDEST, new SharpEdge(BORE, 0, SharpEdge.WIDEST).ratio());
        assertThrows(IllegalArgumentException.class, () -> new SharpEdge(BORE, 0, 0.801));
        assertThrows(IllegalArgumentException.class, () -> new SharpEdge(0, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new SharpEdge(BORE, -1e-9, 0));
        assertThrows(IllegalArgumentException.class, () -> new SharpEdge(BORE, 0, -0.1));
    }

    @Test
    void oilThatComesWithASpeedOfItsOwnNeedsLessDrop() {
        double chamber = coefficient(0, 2e4);
        double channel = coefficient(0.7, 2e4);
        assertTrue(channel > 1.15 * chamber && channel < 1.3 * chamber, chamber + " " + channel);
    }

    /** Settled turbulent flow of a short tube: 1.5 heads from a chamber, less what comes with the oil and is not contracted. */
    @Test
    void aTubeBehindAChannelSavesItsApproachHeadAndPartOfItsContraction() {
        double q = 1e-3;
        double[] chamber = new double[4];
        double[] channel = new double[4];
        new ShortTube(BORE, BORE).dropAt(q, DENSITY, 1e-9, chamber);
        new ShortTube(BORE, BORE, 0.5).dropAt(q, DENSITY, 1e-9, channel);
        assertEquals((1.5 - 0.0625 - 0.125) / 1.5, channel[0] / chamber[0], 1e-3);
    }
}
