package hotidle.law;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Air through the gap that oil leaks through. */
class AirLeakTest {

    private static final double AMBIENT = 101_325;
    private static final double LOW = 0.4 * AMBIENT;
    private static final double ROOM = 293.15;

    private static double ring(double diameter, double clearance, double length, double eccentricity) {
        return Math.PI * diameter * Math.pow(clearance, 3) * (1 + 1.5 * eccentricity * eccentricity) / (12 * length);
    }

    /** The oil leak that a reading gives, of a ring whose clearance and eccentricity nobody knows. */
    private static double oilByAir(double clearance, double eccentricity) {
        double air = AirLeak.freeAir(ring(0.0127, clearance, 0.005, eccentricity), AMBIENT, LOW, AMBIENT, ROOM);
        return AirLeak.oil(AirLeak.shape(air, AMBIENT, LOW, AMBIENT, ROOM), 7e5, 6e-3);
    }

    @Test
    void clearanceAndEccentricityCancel() {
        for (double eccentricity : new double[] {0, 0.3, 1}) {
            for (double clearance = 5e-6; clearance < 60e-6; clearance *= 1.3) {
                double oil = ring(0.0127, clearance, 0.005, eccentricity) * 7e5 / 6e-3;
                assertEquals(1, oilByAir(clearance, eccentricity) / oil, 1e-12);
            }
        }
        // a wide concentric ring and a narrower one that touches pass the same air, and the same oil
        double narrow = 20e-6 / Math.cbrt(2.5);
        assertEquals(1, oilByAir(20e-6, 0) / oilByAir(narrow, 1), 1e-12);
    }

    /** A tapered land: each slice passes the same air; pressure is marched through it, and oil likewise. */
    @Test
    void aTaperCancelsToo() {
        int slices = 20_000;
        double resistance = 0;
        for (int i = 0; i < slices; i++) {
            double clearance = 15e-6 + 20e-6 * (i + 0.5) / slices;
            resistance += 1 / ring(0.0127, clearance, 0.005 / slices, 0);
        }
        double air = 2e-5;
        double square = AMBIENT * AMBIENT;
        for (int i = 0; i < slices; i++) {
            double clearance = 15e-6 + 20e-6 * (i + 0.5) / slices;
            square -= 2 * air * AMBIENT * AirLeak.viscosity(ROOM) / ring(0.0127, clearance, 0.005 / slices, 0);
        }
        double shape = AirLeak.shape(air, AMBIENT, Math.sqrt(square), AMBIENT, ROOM);
        assertEquals(1 / resistance, shape, 1e-10 / resistance);
    }

    @Test
    void oneHasTheClearanceBackThatItBeganWith() {
        assertEquals(23e-6, AirLeak.clearance(ring(0.014, 23e-6, 0.008, 0.5), 0.014, 0.008, 0.5), 1e-15);
    }

    @Test
    void slipCountsInNarrowGapsAndGrowsWithVacuum() {
        assertEquals(0.04, AirLeak.slip(10e-6, AMBIENT, AMBIENT, ROOM), 0.002);
        assertTrue(AirLeak.slip(10e-6, AMBIENT, LOW, ROOM) > 0.05);
        assertTrue(AirLeak.slip(5e-6, AMBIENT, LOW, ROOM) > AirLeak.slip(10e-6, AMBIENT, LOW, ROOM));
    }

    @Test
    void wideGapsRunFast() {
        double air = AirLeak.freeAir(ring(0.0127, 60e-6, 0.005, 0), AMBIENT, 0.3 * AMBIENT, AMBIENT, ROOM);
        assertTrue(AirLeak.mach(air, AMBIENT, 0.3 * AMBIENT, 0.0127, 60e-6, ROOM) > AirLeak.SLOW);
        assertTrue(AirLeak.reynolds(air, AMBIENT, 0.0127, ROOM) > 100);
        double little = AirLeak.freeAir(ring(0.0127, 15e-6, 0.005, 0), AMBIENT, LOW, AMBIENT, ROOM);
        assertTrue(AirLeak.mach(little, AMBIENT, LOW, 0.0127, 15e-6, ROOM) < AirLeak.SLOW);
        assertTrue(AirLeak.reynolds(little, AMBIENT, 0.0127, ROOM) < 100);
    }

    @Test
    void aHoleChokesAtAboutHalfOfItsPressure() {
        double half = AirOrifice.freeAir(1e-3, 1, AMBIENT, 0.5 * AMBIENT, AMBIENT, ROOM);
        assertEquals(half, AirOrifice.freeAir(1e-3, 1, AMBIENT, 0.1 * AMBIENT, AMBIENT, ROOM), 1e-18);
        assertTrue(AirOrifice.freeAir(1e-3, 1, AMBIENT, 0.7 * AMBIENT, AMBIENT, ROOM) < half);
        assertEquals(0, AirOrifice.freeAir(1e-3, 1, AMBIENT, AMBIENT, AMBIENT, ROOM), 1e-18);
    }
}
