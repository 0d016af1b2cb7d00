package hotidle.law;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class ChannelTest {

    @Test
    void reynoldsNumberIsThatOfTheHydraulicDiameter() {
        double rho = 830;
        double mu = 7e-3;
        double q = 1e-5;
        double pipe = rho * (q / (Math.PI * 4e-6)) * 4e-3 / mu;
        assertEquals(pipe, Channel.pipe(4e-3, 1).reynolds(rho * q, mu), 1e-9 * pipe);
        double height = 50e-6;
        double slot = rho * (q / (0.044 * height)) * 2 * height / mu;
        assertEquals(slot, Channel.slot(0.044).reynolds(-rho * q, mu), 1e-9 * slot);
    }

    @Test
    void regimesChangeAtThePublishedLimits() {
        assertEquals(Channel.Regime.LAMINAR, Channel.slot(1).regime(2300));
        assertEquals(Channel.Regime.TRANSITIONAL, Channel.slot(1).regime(2301));
        assertEquals(Channel.Regime.TURBULENT, Channel.pipe(1, 1).regime(4000));
        assertEquals(Channel.Regime.TRANSITIONAL, Channel.hole(1, 2).regime(100));
        assertEquals(2300, Channel.Geometry.SLOT.laminar());
    }

    @Test
    void vorticesAppearAtTheRootOfRadiusOverClearance() {
        assertEquals(41.3 * Math.sqrt(500), Channel.vortices(0.025, 50e-6), 1e-9);
    }

    @Test
    void aWayThatWetsNothingIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> Channel.pipe(0, 1));
    }
}
