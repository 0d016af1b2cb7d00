package hotidle.law;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The gap round a valve, from a film to a wide ring. */
class AnnulusTest {

    private static final double INNER = 0.014;

    /** Conductance μ·q·L/Δp [m⁴]. */
    private static double conductance(double clearance, double eccentricity) {
        return 1 / Slot.annular(INNER, clearance, 1, eccentricity).viscous();
    }

    /** The exact solution, written with its logarithm. */
    private static double byLogarithm(double inner, double outer) {
        double squares = outer * outer - inner * inner;
        return Math.PI / 8 * (Math.pow(outer, 4) - Math.pow(inner, 4) - squares * squares / Math.log(outer / inner));
    }

    @ParameterizedTest
    @CsvSource({"0.02", "0.1", "0.3", "0.6", "1", "3", "30"})
    void aConcentricRingPassesWhatItsLogarithmSays(double clearanceOverRadius) {
        double c = clearanceOverRadius * INNER / 2;
        double exact = byLogarithm(INNER / 2, INNER / 2 + c);
        assertEquals(exact, conductance(c, 0), 1e-9 * exact);
    }

    @Test
    void aFilmPassesWhatAFlatGapOfItsMeanCircumferencePasses() {
        for (double c = 1e-9; c < 20e-6; c *= 3) {
            double flat = Math.PI * (INNER + c) * c * c * c / 12;
            // s²/15 of the next term of the series
            assertEquals(flat, conductance(c, 0), 1e-6 * flat, c + " m");
        }
    }

    /** Where series and logarithm meet, and everywhere else: it grows as a power of the clearance that rises from 3. */
    @Test
    void neitherFlowNorSlopeJumpsWhileTheGapGrowsFromAFilmToAWideRing() {
        double before = 0;
        double growth = 0;
        for (double c = 1e-8; c < 0.1; c *= 1.01) {
            double now = conductance(c, 0.5);
            if (before > 0) {
                double grown = Math.log(now / before) / Math.log(1.01);
                assertTrue(grown > 2.999 && grown < 4, c + " m: " + grown);
                assertTrue(growth == 0 || Math.abs(grown - growth) < 5e-3, c + " m: " + growth + " to " + grown);
                growth = grown;
            }
            before = now;
        }
        double seam = INNER / 2 * (2 * 0.25 / 0.75);
        double hair = 1e-13 * seam;
        assertEquals(conductance(seam - hair, 0), conductance(seam + hair, 0), 2e-12 * conductance(seam, 0));
    }

    /** Piercy, Hooper, Winny 1933, as in R. K. Shah, A. L. London, Laminar Flow Forced Convection in Ducts, 1978, eq. 532 (from memory). */
    private static double eccentric(double inner, double outer, double offset) {
        double f = (outer * outer - inner * inner + offset * offset) / (2 * offset);
        double m = Math.sqrt(f * f - outer * outer);
        double alpha = Math.log((f + m) / (f - m)) / 2;
        double beta = Math.log((f - offset + m) / (f - offset - m)) / 2;
        double sum = 0;
        for (int n = 1; n * (beta - alpha) < 300 && n < 20_000; n++) {
            sum += n * Math.exp(-n * (alpha + beta)) / Math.sinh(n * (beta - alpha));
        }
        return Math.PI
                / 8
                * (Math.pow(outer, 4)
                        - Math.pow(inner, 4)
                        - 4 * offset * offset * m * m / (beta - alpha)
                        - 8 * offset * offset * m * m * sum);
    }

    /** How far the film's factor of eccentricity is off in a wider ring, as the law's range says. */
    @ParameterizedTest
    @CsvSource({"0.02, 0.3, 0.001", "0.02, 0.9, 0.007", "0.1, 0.9, 0.15", "0.5, 0.5, 0.8", "0.5, 0.9, 2.4"})
    void eccentricityIsThatOfAFilmAndItsErrorInAWideRingIsKnown(double clearance, double eccentricity, double percent) {
        double inner = INNER / 2;
        double c = clearance * inner;
        double exact = eccentric(inner, inner + c, eccentricity * c);
        double off = 100 * (conductance(c, eccentricity) / exact - 1);
        assertTrue(off > 0 && off < percent, off + " %");
    }
}
