package hotidle.circuits.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.text.Dimension;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A key of the language as it is declared. */
class KeyTest {

    private static final Key PRESSURE = Key.quantity("cracking-pressure", Dimension.PRESSURE, "where it opens");

    private static void bounds(double from, double to, Key key) {
        assertEquals(from, key.allowed().orElseThrow().from(), 1e-12 * from, key.name());
        assertEquals(to, key.allowed().orElseThrow().to(), 1e-12 * to, key.name());
    }

    @Test
    void limitsAreReadInWhatTheKeyIsAQuantityOf() {
        bounds(1e5, 3e6, PRESSURE.allowed("1 bar", "30 bar"));
        bounds(1e-3, 0.3, Key.size("bore", "its diameter").allowed("1 mm", "300 mm"));
        bounds(1e-3, 0.3, Key.shaft("valve", "its diameter").allowed("1 mm", "300 mm"));
        bounds(2, 9, Key.count("count", "how many").allowed("2", "9"));
        bounds(
                1e-3,
                4e-3,
                Key.of("stops", new Type.RisingPair(Dimension.LENGTH), "its stops")
                        .allowed("1 mm", "4 mm"));
        bounds(
                1e5,
                2e5,
                Key.of("commands", new Type.PerName(Names.SOLENOID, Dimension.PRESSURE), "what is asked")
                        .allowed("1 bar", "2 bar"));
        Bounds usual = PRESSURE.usual("5 bar", "20 bar").usual().orElseThrow();
        assertEquals("5 bar to 20 bar", usual.words());
        assertTrue(usual.holds(5e5) && usual.holds(2e6) && !usual.holds(4.99e5) && !usual.holds(2.01e6));
    }

    @Test
    void aKeyMustBeWrittenUnlessItMayBeLeftOut() {
        assertTrue(PRESSURE.needed() && Key.node("from", "where oil enters").needed());
        assertTrue(Key.choice("acts", "which way", "open", "close").needed());
        assertFalse(Key.text("note", "anything").needed());
        assertFalse(PRESSURE.optional().needed());
        Key where = PRESSURE.neededWhere("a relief valve is meant");
        assertFalse(where.needed());
        assertEquals("a relief valve is meant", where.where());
        Key assumed = PRESSURE.byDefault("20 bar", "assumed");
        assertFalse(assumed.needed());
        assertEquals(Optional.of(new Key.Default("20 bar", "assumed")), assumed.fallback());
        assertTrue(assumed.demanded().needed());
        assertEquals(Optional.empty(), assumed.demanded().fallback());
    }

    @Test
    void whatNoGaugeReadsSaysSo() {
        assertTrue(PRESSURE.measured("with a gauge").gauged());
        assertEquals("with a gauge", PRESSURE.measured("with a gauge").measure());
        Key found = Key.size("gap", "what a seal leaks").foundBy("by its leak");
        assertFalse(found.gauged());
        assertTrue(found.measure().endsWith("by its leak"), found.measure());
    }

    @Test
    void sortsOfKeysAreWhatTheySay() {
        assertEquals(new Type.Wearing(false), Key.size("bore", "").type());
        assertEquals(new Type.Wearing(true), Key.shaft("valve", "").type());
        assertEquals(new Type.Name(Names.NODE), Key.node("from", "").type());
        assertEquals(
                new Type.Choice(List.of("open", "close")),
                Key.choice("acts", "", "open", "close").type());
        assertEquals(new Type.FreeText(), Key.text("note", "").type());
        assertTrue(Names.BUSHING.isPart());
        assertFalse(Names.NODE.isPart());
    }
}
