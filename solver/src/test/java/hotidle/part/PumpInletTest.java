package hotidle.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.oil.Oil;
import org.junit.jupiter.api.Test;

/** How far the spaces between the teeth fill against their own speed. */
class PumpInletTest {

    private static final Oil OIL = new Oil("bench", Oil.Walther.constant(8e-6), 800, 0, 0, 0, 60_000);

    private static Stamp stamp(PumpInlet inlet, double rpm, double pressure, double filling) {
        Setting setting = new Setting(rpm / 60, "any", Setting.Lockup.OFF, OIL.at(373.15, 101_325), 0);
        Stamp stamp = new Stamp(inlet.form());
        inlet.law(setting).evaluate(Reading.of(inlet.form(), pressure, filling), stamp);
        return stamp;
    }

    private static boolean fills(PumpInlet inlet, double rpm) {
        return stamp(inlet, rpm, -3000, 1).value(1) <= 0;
    }

    @Test
    void anInletThatFillsAtIdleDoesNotAtEverySpeed() {
        PumpInlet teeth = new PumpInlet(3.8e-4, 0.0125);
        assertTrue(fills(teeth, 650));
        assertTrue(!fills(teeth, 6000));
        double rpm = 3600;
        double pressure = OIL.at(373.15, 101_325).release() + 800 * 60 * 60 * (3.8e-4 * 0.25 + 0.0125 * 0.5);
        assertEquals(0, stamp(teeth, rpm, pressure, 0.5).value(1), 1e-6);
        assertTrue(fills(PumpInlet.WIDE, 6000));
    }

    @Test
    void theSpeedUpToWhichItFillsIsThere() {
        PumpInlet teeth = new PumpInlet(3.8e-4, 0.0125);
        Setting setting = new Setting(50, "any", Setting.Lockup.OFF, OIL.at(373.15, 101_325), 0);
        double ratio = teeth.law(setting).measures(Reading.of(teeth.form(), -3000, 1)).stream()
                .filter(one -> one.measure().equals(PumpInlet.FULL_SPEED))
                .findFirst()
                .orElseThrow()
                .value();
        assertTrue(fills(teeth, 3000 * ratio * 0.999) && !fills(teeth, 3000 * ratio * 1.001), ratio + "");
    }
}
