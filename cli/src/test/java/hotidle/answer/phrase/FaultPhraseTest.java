package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.assess.Figures;
import hotidle.assess.OilBudget;
import hotidle.assess.StateFault;
import hotidle.fault.FaultKind;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What fails in a state, in a cell and in a sentence. */
class FaultPhraseTest {

    private static final double PSI = 6894.757293168;
    private static final FaultPhrase SHOP = new FaultPhrase(UnitSystem.SHOP);
    private static final FaultPhrase METRIC = new FaultPhrase(UnitSystem.METRIC);

    @Test
    void everyFaultHasACellAndASentenceOfItsOwn() {
        Set<String> cells = new HashSet<>();
        Set<String> said = new HashSet<>();
        for (StateFault.Kind kind : StateFault.Kind.values()) {
            StateFault fault = new StateFault(kind, "part", 2e5, 4e5);
            cells.add(METRIC.cell(fault));
            said.add(METRIC.said(fault));
        }
        assertEquals(StateFault.Kind.values().length, cells.size());
        assertEquals(StateFault.Kind.values().length, said.size());
    }

    @Test
    void alarmsAreShoutedAndWhatIsNotKnownIsNot() {
        for (StateFault.Kind kind : StateFault.Kind.values()) {
            String cell = METRIC.cell(new StateFault(kind, "part", 2e5, 4e5));
            boolean loud = cell.replaceAll("[^A-Za-z]", "").chars().allMatch(Character::isUpperCase);
            assertEquals(kind != StateFault.Kind.NOT_KNOWN, loud, cell);
        }
    }

    @Test
    void aLowLineIsToldWithWhatItShouldBe() {
        StateFault low = new StateFault(StateFault.Kind.LINE_LOW, "", 60 * PSI, 100 * PSI);
        assertEquals("LINE LOW 60", SHOP.cell(low));
        assertTrue(SHOP.said(low).startsWith("line 60") && SHOP.said(low).endsWith(" of 100 psi"), SHOP.said(low));
        StateFault high = new StateFault(StateFault.Kind.LINE_HIGH, "", 20e5, 10e5);
        assertEquals("line 20.00 bar, far above its 10.00 bar", METRIC.said(high));
    }

    @Test
    void aClutchIsNamedByItsPart() {
        assertEquals(
                "direct slips, 2.00 of 4.00 bar",
                METRIC.said(new StateFault(StateFault.Kind.CLUTCH_SLIPS, "direct", 2e5, 4e5)));
        assertEquals(
                "reverse drags, though the range does not apply it",
                METRIC.said(new StateFault(StateFault.Kind.CLUTCH_DRAGS, "reverse", 2e5, 4e5)));
        assertEquals(
                "At stall input-shaft carries 700, bears 600 N.m: over its rating.",
                METRIC.at("stall", new StateFault(StateFault.Kind.OVER_TORQUE, "input-shaft", 700, 600)));
    }

    @Test
    void aFilmIsToldInMicrometres() {
        assertEquals(
                "hub film 3.0, least allowed 5.0 um",
                METRIC.said(new StateFault(StateFault.Kind.FILM_THIN, "hub", 3e-6, 5e-6)));
        assertEquals(
                "hub in metal contact", METRIC.said(new StateFault(StateFault.Kind.METAL_CONTACT, "hub", 0, 5e-6)));
    }

    @Test
    void aClutchThatMaySlipSaysWhatItNeeds() {
        ClutchPhrase phrase = new ClutchPhrase(UnitSystem.METRIC);
        assertEquals(
                "At stall too little pressure on direct: 3.00 bar where it needs 4.00 bar with its capacity factor; it may slip.",
                phrase.slips("stall", "direct", OptionalDouble.of(3e5), 4e5));
        assertTrue(phrase.slips("stall", "direct", OptionalDouble.empty(), 4e5).contains("direct: not known where"));
        String drags = phrase.drags("reverse", 0.5e5, "park", "park", 0.3e5);
        assertTrue(drags.contains("though park does not apply it: its return spring yields at 0.30 bar"), drags);
        assertEquals("FAILS " + drags, ClutchPhrase.fails(drags));
        assertTrue(phrase.leaks("direct", 1.5e5).startsWith("direct is 1.50 bar below the line: more than 15 psi"));
    }

    @Test
    void whereTheOilGoesHasOneWordEach() {
        Set<String> words = new HashSet<>();
        for (OilBudget.Fate fate : OilBudget.Fate.values()) {
            words.add(FatePhrase.of(fate));
            assertFalse(FatePhrase.brief(fate).isEmpty());
        }
        assertEquals(OilBudget.Fate.values().length, words.size());
        assertEquals(FatePhrase.of(OilBudget.Fate.LEAK), FatePhrase.brief(OilBudget.Fate.LEAK));
        Set<String> chambers = new HashSet<>();
        Arrays.stream(Figures.Secondary.values()).forEach(one -> chambers.add(SecondaryPhrase.of(one)));
        assertEquals(Figures.Secondary.values().length, chambers.size());
    }

    @Test
    void theListOfFaultsSaysWhatEachSizeCounts() {
        for (FaultKind.SizeOf sizeOf : FaultKind.SizeOf.values()) {
            String said = ListPhrase.fault("spring weak", sizeOf);
            assertTrue(said.startsWith("spring weak; "), said);
            assertEquals(sizeOf == FaultKind.SizeOf.NOTHING, said.endsWith("no SIZE"), said);
        }
    }

    @Test
    void whatIsLeftForTheWholeTextIsCountedBySort() {
        assertEquals("", BenchPhrase.more(0, 0, 0));
        assertEquals("1 more line with --full.", BenchPhrase.more(1, 0, 0));
        assertEquals("2 more lines, 1 more driving condition, 3 more builds with --full.", BenchPhrase.more(2, 1, 3));
        assertEquals("NOT KNOWN: no steady state was found of rig.", BenchPhrase.notKnown(1, "rig"));
        assertEquals(
                "NOT KNOWN: no steady state was found of rig and at 1 place more.", BenchPhrase.notKnown(2, "rig"));
    }

    @Test
    void assumedNumbersAreCountedAndTheFirstNamed() {
        List<String> paths = List.of("a.b", "c.d", "e.f", "g.h", "i.j", "k.l", "m.n");
        assertTrue(AssumedPhrase.counted(paths, false).startsWith("assumed (~): 7 numbers in use"));
        assertTrue(AssumedPhrase.counted(paths, false).endsWith("k.l and 1 more"));
        assertTrue(AssumedPhrase.counted(paths, true).endsWith("k.l, m.n"));
        assertTrue(AssumedPhrase.counted(List.of("a.b"), false).contains("1 number in use"));
        assertEquals("assumed: rests on 1 assumed number", AssumedPhrase.verdict(1));
    }
}
