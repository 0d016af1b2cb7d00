package hotidle.oil;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Oil where no published value stands for it; those are in the validation sheet. */
class OilTest {

    private static final double CELSIUS = Oil.ZERO_CELSIUS;

    /** Boyle's law: at 2 bar absolute, air that is 2 % of the mixture at 1 bar takes half its room. */
    @Test
    void entrainedAirIsHalvedWhereTheAbsolutePressureIsDoubled() {
        OilAt at = new OilAt(300, 850, 0.02, 0, 0.02, 1e5, 0, Optional.empty());
        assertEquals(850 * 0.98 / (0.98 + 0.01), at.density(1e5), 1e-3);
        assertEquals(850 * 0.98, at.density(0), 1e-2);
    }

    /** Range of common practice: new automatic transmission fluid of 34.0 and 7.4 mm²/s has 5.0 mPa·s at 110 °C (Walther, density 850 at 15 °C). */
    @Test
    void conventionalFluidAtHotIdleIsThinnerThanAtHundredDegrees() {
        Oil.Walther line = Oil.Walther.through(
                new Oil.ViscosityPoint(40 + CELSIUS, 34e-6), new Oil.ViscosityPoint(100 + CELSIUS, 7.4e-6));
        Oil oil = new Oil("A", line, 865, 0.65, 0, 0, 0);
        assertEquals(28.7e-3, oil.at(40 + CELSIUS, 101_325).viscosity(), 0.05e-3 * 5);
        assertEquals(5.0e-3, oil.at(110 + CELSIUS, 101_325).viscosity(), 0.05e-3);
    }
}
