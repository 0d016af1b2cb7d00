package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.fault.FaultKind;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What is said of gauge readings and of the faults behind them. */
class GaugePhraseTest {

    private static final double PSI = 6894.757293168;
    private static final GaugePhrase SHOP = new GaugePhrase(UnitSystem.SHOP);
    private static final GaugePhrase METRIC = new GaugePhrase(UnitSystem.METRIC);

    @Test
    void theChanceOfAMisfitIsToldAsFinelyAsItMatters() {
        assertTrue(GaugePhrase.verdict("worn", 6, "day.csv", true, 0.53, true)
                .contains("(53 % of sound units read as far off)"));
        assertTrue(
                GaugePhrase.verdict("worn", 6, "day.csv", false, 0.0196, true).contains("(2.0 % of"));
        assertTrue(GaugePhrase.verdict("worn", 6, "day.csv", false, 4e-7, true).contains("(below 0.1 % of"));
    }

    @Test
    void aVerdictSaysWhetherTheReadingsAgree() {
        assertTrue(GaugePhrase.verdict("worn", 1, "day.csv", true, 0.8, true)
                .startsWith("worn, 1 reading of day.csv: THEY AGREE with a sound build ("));
        assertTrue(GaugePhrase.verdict("worn", 2, "day.csv", false, 0.0, true)
                .startsWith("worn, 2 readings of day.csv: THEY DO NOT AGREE with a sound build"));
    }

    @Test
    void whereOneReadingBelowAValueDecidesNoChanceOfAllIsTold() {
        assertTrue(GaugePhrase.verdict("worn", 2, "day.csv", false, 0.5, false)
                .endsWith("sound build (for one that is below or above what a sound build reads)."));
    }

    @Test
    void whereNothingFitsTheSharesAreSaidToBeAmongPoorCauses() {
        assertTrue(GaugePhrase.causes(true, 4).startsWith("NOTHING TRIED FITS THEM WELL."));
        assertEquals(
                "What explains them, how sure that is, and the misfit left (chance leaves about 4):",
                GaugePhrase.causes(false, 4));
        assertEquals("misfit 18.0, FITS POORLY", GaugePhrase.left(18, true));
        assertEquals("misfit 5.1", GaugePhrase.left(5.1, false));
        assertTrue(GaugePhrase.misfit(44.4, 3).startsWith("Misfit of all readings with a sound build: 44.4;"));
    }

    @Test
    void theEndsOfWhatASoundBuildReadsNeverLookTheSame() {
        assertEquals("2.8 to 3.3", SHOP.sound(true, 2.8 * PSI, 3.3 * PSI));
        assertEquals(
                "lube at idle: reads 4.1 psi, a sound build 2.8 to 3.3 psi",
                SHOP.beside("lube at idle", "", true, 4.1 * PSI, 2.8 * PSI, 3.3 * PSI));
        assertEquals("149 to 159", SHOP.sound(true, 149 * PSI, 159 * PSI));
    }

    @Test
    void aSmallShareIsNotToldAsNone() {
        assertEquals("  <1 %", GaugePhrase.share(0.004));
        assertEquals("   1 %", GaugePhrase.share(0.01));
        assertEquals(" 100 %", GaugePhrase.share(1));
    }

    @Test
    void noSoundBuildReadsBelowNothing() {
        String line = SHOP.beside("tap at idle", "", true, 2 * PSI, -3 * PSI, 5 * PSI);
        assertEquals("tap at idle: reads 2 psi, a sound build 0 to 5 psi", line);
        assertEquals(
                "tap at idle: reads above 4.00 bar, a sound build 1.00 to 2.00 bar",
                METRIC.beside("tap at idle", "above", true, 4e5, 1e5, 2e5));
    }

    @Test
    void aFlowIsNamedAsOne() {
        assertEquals("cooler flow at 600 rpm in drive, 80 degC", METRIC.place("cooler", false, 10, "drive", 353.15));
        assertEquals("line at 600 rpm in drive, 176 degF", SHOP.place("line", true, 10, "drive", 353.15));
    }

    @Test
    void causesThatLookAlikeAreNamedUpToAsManyAsFit() {
        assertEquals(
                "one of these 2, which these readings cannot tell apart: a 60 %, b 35 %; misfit 5.1",
                GaugePhrase.oneOf(List.of("a", "b"), List.of(0.6, 0.35), 4, "misfit 5.1"));
        assertEquals(
                "one of these 3, which these readings cannot tell apart: a 60 %, b <1 % and 1 more; misfit 5.1",
                GaugePhrase.oneOf(List.of("a", "b", "c"), List.of(0.6, 0.002, 0.001), 2, "misfit 5.1"));
    }

    @Test
    void theMisfitThatIsLeftIsToldOnlyWhereNoneOfTheseLeads() {
        assertEquals(NONE, GaugePhrase.none(OptionalDouble.of(3.24), false));
        assertEquals(
                NONE + ": the best single fault leaves a misfit of 3.2",
                GaugePhrase.none(OptionalDouble.of(3.24), true));
        assertEquals(NONE, GaugePhrase.none(OptionalDouble.empty(), true));
    }

    private static final String NONE = "none of these, each reading off in a way of its own";

    @Test
    void oneReadingOnTheRegulatorIsNotToldAsSeveral() {
        assertTrue(SHOP.onRegulator(1, "so").startsWith("The reading stands on the regulator:"));
        assertTrue(SHOP.onRegulator(1, "so").contains("so it tells nothing of leaks"));
        assertTrue(SHOP.onRegulator(4, "so").startsWith("All 4 readings stand on the regulator:"));
        assertTrue(SHOP.onRegulator(4, "so").endsWith("read the line so."));
        assertTrue(SHOP.onRegulator(4, "").endsWith("so no gauge here tells more of them."), "it was read so");
    }

    @Test
    void whatTakesThePumpToItsLimitIsToldAsFarAsTheFileTellsIt() {
        assertEquals(
                "at the lowest idle (540 rpm or less), with the oil as hot as it gets (110 degC or more) and the highest command"
                        + " (12.00 bar)",
                METRIC.hardest(9, OptionalDouble.of(383.15), OptionalDouble.of(12e5)));
        assertEquals(
                "at the lowest idle (540 rpm or less), with the oil as hot as it gets and the highest command",
                METRIC.hardest(9, OptionalDouble.empty(), OptionalDouble.empty()));
    }

    @Test
    void aBoreThatIsWornIsToldAgainstItsLimit() {
        UnitFaultPhrase phrase = new UnitFaultPhrase(UnitSystem.METRIC);
        OptionalDouble limit = OptionalDouble.of(14.04e-3);
        assertEquals("bore 14.030 mm, wear limit 14.040 mm; within wear", phrase.worn("bore", 14.03e-3, limit, 0.75));
        assertTrue(phrase.worn("bore", 14.05e-3, limit, 1.25).endsWith("; past its limit"));
        assertTrue(phrase.worn("bore", 14.2e-3, limit, 5).endsWith("; far past its limit, as torn or blown"));
        assertFalse(phrase.worn("bore", 14.03e-3, OptionalDouble.empty(), 0.75).contains("wear limit"));
        assertEquals("all its sizes at 120 % of their wear allowance; past its limit", UnitFaultPhrase.worn(1.2));
    }

    @Test
    void everyOtherFaultHasItsSizeInTheWordsOfItsKind() {
        UnitFaultPhrase phrase = new UnitFaultPhrase(UnitSystem.METRIC);
        assertEquals("2.00 mm off its rest", phrase.other(FaultKind.VALVE_STUCK, 2e-3, 0));
        assertEquals("20 % weaker", phrase.other(FaultKind.SPRING_WEAK, 0.2, 0));
        assertEquals("97.5 % blocked", phrase.other(FaultKind.COOLER_BLOCKED, 0.975, 0));
        assertEquals("8 % air", phrase.other(FaultKind.OIL_AERATED, 0.08, 0));
        assertEquals("1.200 mm in place of 0.900 mm", phrase.other(FaultKind.ORIFICE_WRONG, 1.2e-3, 0.9e-3));
        assertEquals("30 % open", phrase.other(FaultKind.SOLENOID_STUCK, 0.3, 0));
        assertEquals("", phrase.other(FaultKind.CHECK_BALL_MISSING, 1, 0), "it is there or not");
    }

    @Test
    void everyKindThatCountsASizeSaysOne() {
        UnitFaultPhrase phrase = new UnitFaultPhrase(UnitSystem.SHOP);
        Arrays.stream(FaultKind.values())
                .filter(kind -> kind.sizeOf() != FaultKind.SizeOf.WEAR && kind.sizeOf() != FaultKind.SizeOf.NOTHING)
                .forEach(kind -> assertFalse(phrase.other(kind, 0.1, 0.2).isEmpty(), kind.word()));
    }

    @Test
    void aFaultOfTheWholeUnitHasNoPartInFront() {
        assertEquals("air in the oil", UnitFaultPhrase.named(FaultKind.OIL_AERATED, ""));
        assertEquals("air in the oil", UnitFaultPhrase.brief(FaultKind.OIL_AERATED, ""));
        assertEquals("shift: spool stuck", UnitFaultPhrase.named(FaultKind.VALVE_STUCK, "shift"));
        assertEquals("shift (spool stuck)", UnitFaultPhrase.brief(FaultKind.VALVE_STUCK, "shift"));
    }

    @Test
    void tapsThatReadSoundAreNamedWithHowOftenTheyWereRead() {
        assertEquals(
                "Read sound: line (3 readings), converter.",
                GaugePhrase.sound(List.of(GaugePhrase.tap("line", 3), GaugePhrase.tap("converter", 1))));
        assertEquals("No tap reads as a sound build does.", GaugePhrase.sound(List.of()));
    }
}
