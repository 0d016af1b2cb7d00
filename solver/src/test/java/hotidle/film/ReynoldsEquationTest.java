package hotidle.film;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class ReynoldsEquationTest {

    /** Measured over the whole table: 0.030 % at ε = 0.995, L/D = 2, below 0.017 % elsewhere. */
    private static final double MESH = 4e-4;

    /** Measured: 0.0012 %. */
    private static final double MESH_FLOW = 2e-5;

    /** Measured: 0.045 %; the highest node is not the peak. */
    private static final double MESH_PEAK = 6e-4;

    @ParameterizedTest
    @CsvSource({"0.1, 0.6", "0.25, 0.97", "1, 0", "1, 0.9", "2, 0.995"})
    void aMeshTwiceAsFineLeavesTheOilFilmAsItIs(double ratio, double e) {
        FilmSolution film = ReynoldsEquation.solve(e, ratio);
        FilmSolution fine = ReynoldsEquation.solve(e, ratio, 480, 64);
        assertEquals(1, film.stiffness() / fine.stiffness(), MESH, "1/S");
        assertEquals(1, film.attitude() / fine.attitude(), MESH, "φ");
        assertEquals(1, film.flow() / fine.flow(), MESH_FLOW, "Q");
        assertEquals(1, film.sideFlowByEccentricity() / fine.sideFlowByEccentricity(), MESH_FLOW, "Qs");
        assertEquals(1, film.peakByEccentricity() / fine.peakByEccentricity(), MESH_PEAK, "pmax");
    }

    /**
     * With ε → 0 and L/D → ∞ the equation is Π″ = −sinθ, so Π = sinθ − θ·cosθ2, and Π = 0 at the film's end makes tanθ2 = θ2. The
     * integrals of Π·cosθ and Π·sinθ are elementary.
     */
    @Test
    void anEndlessOilFilmWithoutEccentricityIsTheOneWorkedOutByHand() {
        double end = 4.493409457909064;
        assertEquals(end, Math.tan(end), 1e-12);
        double sin = Math.sin(end);
        double cos = Math.cos(end);
        double radial = -(sin * sin / 2 - cos * (end * sin + cos - 1));
        double tangential = end / 2 - sin * cos / 2;
        FilmSolution film = ReynoldsEquation.infinitelyLong(0);
        assertEquals(1, film.stiffness() / (6 * Math.PI * Math.hypot(radial, tangential)), 3e-5);
        assertEquals(Math.atan2(tangential, radial), film.attitude(), 3e-5);
        assertEquals(Math.PI, film.flow(), 1e-12);
    }

    /**
     * F. Ocvirk, NACA TN 2808, 1952 (from memory): the short bearing's load, its attitude tanφ = ¼·π·√(1 − ε²)/ε and its side flow
     * 2·π·ε. At L/D = 0.03 the ends still matter by some thousandths.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.2, 0.5, 0.8})
    void aVeryShortOilFilmIsOcvirks(double e) {
        FilmSolution film = ReynoldsEquation.solve(e, 0.03);
        double free = 1 - e * e;
        double load = 0.03 * 0.03 * Math.PI * e * Math.sqrt(Math.PI * Math.PI * free + 16 * e * e) / (free * free);
        assertEquals(1, film.load() / load, 0.01);
        assertEquals(Math.atan2(Math.PI * Math.sqrt(free), 4 * e), film.attitude(), 0.01);
        assertEquals(1, film.sideFlow() / (2 * Math.PI * e), 0.001);
    }
}
