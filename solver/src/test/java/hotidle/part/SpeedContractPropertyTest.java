package hotidle.part;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.oil.Oil;
import hotidle.oil.ShearThinning;
import hotidle.oil.ThermalData;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** A law taken to another speed is the law that is settled there. */
class SpeedContractPropertyTest {

    @Property(tries = 200, seed = "1")
    void aLawTakenToAnotherSpeedIsTheLawSettledThere(@ForAll long seed) {
        for (Class<? extends Part> kind : Samples.KINDS.keySet()) {
            Samples samples = new Samples(new Random(seed));
            Part part = Samples.KINDS.get(kind).apply(samples);
            Reading reading = new Reading(part.form());
            for (int c = 0; c < reading.size(); c++) {
                reading.set(c, samples.decades(1e3, 3e6));
            }
            for (int s = 0; s < part.form().states().size(); s++) {
                Form.Unknown state = part.form().states().get(s);
                reading.set(reading.own(s), samples.between(state.low(), state.high()));
            }
            double speed = samples.decades(3, 110);
            Part.Law taken = part.law(setting(samples.decades(3, 110))).atSpeed(speed);
            Part.Law settled = part.law(setting(speed));
            assertSame(kind, part.form(), taken, settled, reading);
        }
    }

    private static void assertSame(Class<?> kind, Form form, Part.Law one, Part.Law other, Reading reading) {
        Stamp first = new Stamp(form);
        Stamp second = new Stamp(form);
        one.evaluate(reading, first);
        other.evaluate(reading, second);
        assertEquals(one.delivery(), other.delivery(), kind + " delivery");
        for (int row = 0; row < first.rows(); row++) {
            assertEquals(second.value(row), first.value(row), kind + " row " + row);
            for (int column = 0; column < reading.size(); column++) {
                assertEquals(second.slope(row, column), first.slope(row, column), kind + " slope " + row);
            }
        }
        assertEquals(other.measures(reading), one.measures(reading), kind + " measures");
    }

    private static Setting setting(double speed) {
        Oil.Walther line =
                Oil.Walther.through(new Oil.ViscosityPoint(313.15, 34e-6), new Oil.ViscosityPoint(373.15, 7.4e-6));
        Oil oil = new Oil(
                "invented", line, 850, 0.65, 1.5e-8, 0.02, 7e4, ThermalData.BY_DENSITY, new ShearThinning(0.3, 3e3));
        return new Setting(speed, "first", Setting.Lockup.OFF, oil.at(370, 101_325), 3e5);
    }
}
