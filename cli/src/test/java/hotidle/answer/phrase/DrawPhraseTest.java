package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

class DrawPhraseTest {

    private static final double GPM = 6.30902e-5;

    @Test
    void oneLeakIsNamedWhereThereIsRoom() {
        assertEquals("bore-07 0.50 gpm", DrawPhrase.leaks(UnitSystem.SHOP, List.of("bore-07"), 0.5 * GPM, true));
        assertEquals("leak 0.50 gpm", DrawPhrase.leaks(UnitSystem.SHOP, List.of("bore-07"), 0.5 * GPM, false));
        assertEquals("2 leaks 0.50 gpm", DrawPhrase.leaks(UnitSystem.SHOP, List.of("a", "b"), 0.5 * GPM, true));
    }

    @Test
    void aFlowThatReadsAsNothingIsLeftOut() {
        assertEquals("2 leaks", DrawPhrase.leaks(UnitSystem.SHOP, List.of("a", "b"), 0.004 * GPM, true));
        assertEquals("2 leaks", DrawPhrase.leaks(UnitSystem.SHOP, List.of("a", "b"), Double.NaN, true));
        assertTrue(DrawPhrase.visible(UnitSystem.SHOP, -0.006 * GPM));
        assertFalse(DrawPhrase.visible(UnitSystem.SHOP, Double.NaN));
    }

    @Test
    void titlesSayAllThatIsKnown() {
        assertEquals("pump, pump-chamber", DrawPhrase.part("pump", "pump-chamber", "", List.of(), false));
        assertEquals(
                "relief, relief-valve: at the pump; 0.10 gpm; changed",
                DrawPhrase.part("relief", "relief-valve", "at the pump", List.of("0.10 gpm"), true));
        assertEquals("line", DrawPhrase.net("line", "", "", List.of()));
        assertEquals(
                "line, 105 psi, was 150 psi; leaks to the sump: a, b",
                DrawPhrase.net("line", "105 psi", "was 150 psi", List.of("a", "b")));
    }

    @Test
    void theSheetSaysWhichStateItShows() {
        assertEquals(
                "worn at hot-idle: 650 rpm, range first", DrawPhrase.state("worn", "hot-idle", 650 / 60.0, "first"));
        assertEquals("worn, no pressures: --duty shows them", DrawPhrase.still("worn"));
        assertTrue(DrawPhrase.unsolved("worn", "stall").contains("not solved"));
        assertEquals(
                "marked against fresh: 1 part with other sizes, 2 pressures changed by 2 % or more",
                DrawPhrase.against("fresh", 1, 2));
        assertEquals(
                "marked against fresh: 2 parts with other sizes, 1 pressure changed by 2 % or more",
                DrawPhrase.against("fresh", 2, 1));
        assertEquals("at 46 % of travel", DrawPhrase.stands(0.456));
        assertEquals("a: b", DrawPhrase.heading("a", "b"));
    }
}
