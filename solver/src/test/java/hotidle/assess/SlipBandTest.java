package hotidle.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** An error of the volumetric efficiency is a larger one of the little that slips. */
class SlipBandTest {

    @Test
    void threePerCentOfAnEfficiencyOfNineTenthsAreThirtyOfTheSlip() {
        SlipBand band = SlipBand.of(1e-3, 1e-4);
        assertEquals(0.0335 * 0.9 / 0.1, band.measured() / 1e-4, 1e-12);
        assertEquals(0.0943 * 0.9 / 0.1, band.nominal() / 1e-4, 1e-12);
    }

    @Test
    void aPumpThatDeliversNothingSlipsAllThatItSweeps() {
        assertEquals(0, SlipBand.of(1e-3, 1.1e-3).nominal());
    }
}
