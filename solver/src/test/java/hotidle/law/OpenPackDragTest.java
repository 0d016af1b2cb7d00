package hotidle.law;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class OpenPackDragTest {

    private static final double VISCOSITY = 0.008;
    private static final double DENSITY = 820;
    private static final double INNER = 0.065;
    private static final double OUTER = 0.0825;
    private static final double GAP = 0.0002;

    /** By hand: 12 gaps, 0.008 Pa·s, 10 rev/s, 65 to 82.5 mm, 0.2 mm: 12·π·0.008·62.83·(46.32e-6 − 17.85e-6)/0.0004. */
    @Test
    void aFullPackDragsByTheShearOfItsOil() {
        assertEquals(
                12 * Math.PI * VISCOSITY * 20 * Math.PI * (Math.pow(OUTER, 4) - Math.pow(INNER, 4)) / (2 * GAP),
                OpenPackDrag.torque(VISCOSITY, 10, 12, INNER, OUTER, GAP),
                1e-12);
        assertEquals(1.349, OpenPackDrag.torque(VISCOSITY, 10, 12, INNER, OUTER, GAP), 0.001);
    }

    @Test
    void aFasterPackThrowsItsOilOutSoThatItsDragFallsAgain() {
        double fed = 2e-6;
        double before = 0;
        double highest = 0;
        double last = 0;
        for (double slip = 1; slip <= 100; slip++) {
            double film = OpenPackDrag.filmRadius(VISCOSITY, DENSITY, slip, INNER, OUTER, GAP, fed);
            last = OpenPackDrag.torque(VISCOSITY, slip, 12, INNER, film, GAP);
            highest = Math.max(highest, last);
            before = Math.max(before, film);
        }
        assertEquals(OUTER, before, 1e-12);
        assertTrue(last < 0.1 * highest, last + " of " + highest);
    }

    /** q = π·ρ·ω²·h³·r²/(20·μ) at the edge of the film. */
    @Test
    void theFilmEndsWhereThePlatePumpsWhatIsFed() {
        double fed = 1.1e-5;
        double film = OpenPackDrag.filmRadius(VISCOSITY, DENSITY, 20, INNER, OUTER, GAP, fed);
        double omega = 40 * Math.PI;
        assertTrue(film > INNER && film < OUTER, film + " m");
        assertEquals(fed, Math.PI * DENSITY * omega * omega * Math.pow(GAP, 3) * film * film / (20 * VISCOSITY), 1e-12);
    }

    @Test
    void aPackThatDoesNotSlipDoesNotDrag() {
        assertEquals(0, OpenPackDrag.torque(VISCOSITY, 0, 12, INNER, OUTER, GAP));
        assertEquals(OUTER, OpenPackDrag.filmRadius(VISCOSITY, DENSITY, 0, INNER, OUTER, GAP, 0));
    }
}
