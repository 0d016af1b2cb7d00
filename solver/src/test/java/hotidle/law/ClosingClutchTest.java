package hotidle.law;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class ClosingClutchTest {

    private static final double INFINITE = Double.POSITIVE_INFINITY;

    /** Half of the kinetic energy of slip, whatever the torque: I1·I2/(I1 + I2)·Δω²/2. */
    @Test
    void withoutOtherTorqueTheHeatIsTheEnergyOfTheSlip() {
        for (double torque : new double[] {10, 100, 1000}) {
            assertEquals(2.0 * 3 / 5 * 100 * 100 / 2, new ClosingClutch(torque, 100, 2, 0, 3, 0).heat(), 1e-9);
        }
    }

    @Test
    void anEngineThatDrivesOnMakesMoreHeatAndLonger() {
        ClosingClutch alone = new ClosingClutch(100, 100, 2, 0, INFINITE, 0);
        ClosingClutch driven = new ClosingClutch(100, 100, 2, 50, INFINITE, 0);
        assertEquals(2 * alone.time(), driven.time(), 1e-12);
        assertEquals(2 * alone.heat(), driven.heat(), 1e-9);
        assertEquals(alone.power(), driven.power());
    }

    @Test
    void aClutchThatCarriesLessThanTheEngineDrivesNeverCloses() {
        ClosingClutch weak = new ClosingClutch(40, 100, 2, 50, INFINITE, 0);
        assertFalse(weak.closes());
        assertEquals(INFINITE, weak.time());
        assertEquals(INFINITE, weak.heat());
        ClosingClutch still = new ClosingClutch(40, 0, 2, 50, INFINITE, 0);
        assertTrue(still.closes());
        assertEquals(0, still.time());
        assertEquals(0, still.heat());
    }

    @Test
    void aThinnerPlateGetsWarmer() {
        double thick = ClosingClutch.rise(0.5e6, 0.002, 7850, 470);
        assertEquals(2 * 0.5e6 / (0.002 * 7850 * 470), thick, 1e-9);
        assertEquals(2 * thick, ClosingClutch.rise(0.5e6, 0.001, 7850, 470), 1e-9);
    }

    @Test
    void aClutchWithoutTorqueIsNone() {
        assertThrows(IllegalArgumentException.class, () -> new ClosingClutch(0, 1, 1, 0, 1, 0));
        assertThrows(IllegalArgumentException.class, () -> new ClosingClutch(1, -1, 1, 0, 1, 0));
    }
}
