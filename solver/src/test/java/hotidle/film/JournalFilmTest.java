package hotidle.film;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class JournalFilmTest {

    /** N. Petroff, 1883: shear of a concentric film. */
    private static final double PETROFF = 2 * Math.PI * Math.PI;

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.37, 1, 2})
    void aConcentricOilFilmCarriesNothingAndDragsAsPetroffSays(double ratio) {
        JournalFilm film = JournalFilm.of(ratio);
        assertEquals(0, film.load(0));
        assertEquals(0, film.sideFlow(0));
        assertEquals(PETROFF, film.drag(0), 1e-12);
        assertEquals(PETROFF, film.drag(1e-3), 1e-3);
        assertEquals(Math.PI, film.flow(0), 1e-4);
    }

    /** F. Ocvirk, NACA TN 2808, 1952 (from memory): load and attitude of the short bearing. */
    @ParameterizedTest
    @ValueSource(doubles = {0.02, 0.1, 0.3})
    void aShortOilFilmCarriesWhatOcvirkSays(double e) {
        JournalFilm film = JournalFilm.of(0.1);
        double free = 1 - e * e;
        double load = 0.01 * Math.PI * e * Math.sqrt(Math.PI * Math.PI * free + 16 * e * e) / (free * free);
        assertEquals(1, film.load(e) / load, 0.01);
        assertEquals(Math.atan2(Math.PI * Math.sqrt(free), 4 * e), film.attitude(e), 0.01);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.23, 0.5, 1, 1.4, 2})
    void theLoadOfAnOilFilmBendsWithoutAJumpAtTheKnots(double ratio) {
        JournalFilm film = JournalFilm.of(ratio);
        for (int row = 1; row < FilmGrid.ROWS; row++) {
            double e = FilmGrid.eccentricity(row);
            double h = 1e-4 * (1 - e);
            double before = oneSided(film::loadSlope, e, -h);
            double after = oneSided(film::loadSlope, e, h);
            assertEquals(1, after / before, 1e-5, "d²load/dε² from both sides of eccentricity " + e);
        }
    }

    /** Heat and balance of a bushing stand on these slopes. */
    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.23, 0.5, 1, 1.4, 2})
    void slopesOfLoadDragAndSideFlowAreTheDifferencesOfTheirValues(double ratio) {
        JournalFilm film = JournalFilm.of(ratio);
        for (double e : new double[] {0.03, 0.3, 0.62, 0.9, 0.985}) {
            double h = 1e-5 * (1 - e);
            assertEquals(difference(film::load, e, h), film.loadSlope(e), 1e-6 * film.loadSlope(e), "load " + e);
            assertEquals(difference(film::drag, e, h), film.dragSlope(e), 1e-6 * film.drag(e) / (1 - e), "drag " + e);
            assertEquals(
                    difference(film::sideFlow, e, h), film.sideFlowSlope(e), 1e-6 * film.sideFlow(e) / e, "side " + e);
        }
    }

    private static double difference(DoubleUnaryOperator f, double x, double h) {
        return (f.applyAsDouble(x + h) - f.applyAsDouble(x - h)) / (2 * h);
    }

    /** Slope of f at x from x, x + h and x + 2·h; error h²·f‴/3. */
    private static double oneSided(DoubleUnaryOperator f, double x, double h) {
        return (-3 * f.applyAsDouble(x) + 4 * f.applyAsDouble(x + h) - f.applyAsDouble(x + 2 * h)) / (2 * h);
    }

    @Test
    void anOilFilmIsKnownUpToItsLastEccentricityAndNotBeyond() {
        JournalFilm film = JournalFilm.of(0.5);
        assertTrue(film.load(0.995) > film.load(0.99));
        assertRefused("eccentricity", 0.9951, 0, 0.995, () -> film.load(0.9951));
        assertRefused("eccentricity", -1e-9, 0, 0.995, () -> film.loadSlope(-1e-9));
        assertRefused("eccentricity", Double.NaN, 0, 0.995, () -> film.attitude(Double.NaN));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.0999, 2.0001, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void anOilFilmOfUnknownLengthIsRefused(double ratio) {
        assertRefused("length over diameter", ratio, 0.1, 2, () -> JournalFilm.of(ratio));
    }

    private static void assertRefused(String what, double value, double low, double high, Runnable asked) {
        String message =
                assertThrows(IllegalArgumentException.class, asked::run).getMessage();
        for (Object part : new Object[] {what, value, low, high}) {
            assertTrue(message.contains(part.toString()), message);
        }
    }
}
