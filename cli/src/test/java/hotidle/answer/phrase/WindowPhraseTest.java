package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.transmission.SetPressure;
import java.util.List;
import org.junit.jupiter.api.Test;

class WindowPhraseTest {

    private static final WindowPhrase BAR = new WindowPhrase(UnitSystem.METRIC);

    @Test
    void oneLimitFailsAndTwoFailAtEveryPressureTried() {
        assertEquals(
                "cooler (c) at idle fails at every one tried", WindowPhrase.never(List.of("cooler (c) at idle"), 9));
        assertEquals("a, b fail at every one tried", WindowPhrase.never(List.of("a", "b"), 9));
    }

    @Test
    void aClutchThatNeedsMoreThanThePumpAllowsLeavesNoSetPressure() {
        String because = BAR.apart("apply (low) at stall", 9e5, "regulation (pump) at idle", 6e5);
        assertEquals(
                "apply (low) at stall needs at least 9.00 bar and regulation (pump) at idle allows at most 6.00 bar",
                because);
        assertEquals(
                "worn: NO SET PRESSURE from 4.00 bar to 20.00 bar holds every limit, because " + because + ".",
                BAR.none("worn", 4e5, 20e5, because));
    }

    @Test
    void noSpringPulls() {
        assertEquals(
                "worn: cannot be set below 6.00 bar: throttle pressure alone holds that without a spring.",
                BAR.lowest("worn", 6e5));
    }

    @Test
    void aRangeEndsAtALimitOrWhereNothingWasTried() {
        String range = BAR.range(9e5, 20e5, WindowPhrase.failsBelow("apply"), WindowPhrase.NO_HIGHER);
        assertEquals("9.00 bar to 20.00 bar; below, apply fails first; higher ones were not tried", range);
        assertEquals(
                "4.00 bar to 8.00 bar; lower ones were not tried; above, unit load fails first",
                BAR.range(4e5, 8e5, WindowPhrase.NO_LOWER, WindowPhrase.failsAbove("unit load")));
        assertEquals(
                "restored: every limit holds from 1; and from 2. The build is set to 10.00 bar.",
                WindowPhrase.holds("restored", List.of("1", "2"), BAR.commands(10e5), ""));
        assertEquals(
                "restored: every limit that is known holds from 1. The build is set to 10.00 bar. Not known: film.",
                WindowPhrase.holds("restored", List.of("1"), BAR.commands(10e5), "Not known: film."));
        assertEquals("The build's spring sets 10.00 bar.", BAR.springSets(10e5));
    }

    @Test
    void whatAUnitMayBeSetToNamesWhatFailsThere() {
        assertEquals(
                "May be set from 9.00 bar to 12.00 bar; below, apply fails first; above, film fails first. There the line and every"
                        + " limit hold at all 11 driving conditions judged.",
                WindowPhrase.setTo(
                        List.of(BAR.range(
                                9e5, 12e5, WindowPhrase.failsBelow("apply"), WindowPhrase.failsAbove("film"))),
                        11,
                        ""));
        assertTrue(
                WindowPhrase.setTo(List.of("1"), 1, "Not known: film.")
                        .endsWith(
                                "There the line and every limit that is known hold at the driving condition judged. Not known: film."));
        assertEquals(
                "May be set to NO PRESSURE from 4.00 bar to 20.00 bar: none holds the line and every limit at all 2 driving"
                        + " conditions judged, because a fails at every one tried.",
                BAR.setToNone(4e5, 20e5, 2, "a fails at every one tried"));
    }

    @Test
    void whatWasNotFoundIsToldWithDutyAndPressure() {
        String said = BAR.notKnown("worn", List.of("hot-idle", "stall"), 2, 8, 4e5);
        assertTrue(
                said.startsWith(
                        "worn: NOT KNOWN in full at hot-idle, stall with 2 of the 8 set pressures tried, the first 4.00 bar:"),
                said);
        assertTrue(said.contains("counts as failing"), said);
        assertTrue(WearLimitPhrase.notKnown(List.of("stall")).startsWith("NOT KNOWN in full at stall:"));
    }

    @Test
    void theLegendSaysHowFarWasLookedAndWhatIsNotJudged() {
        String said = BAR.legend(4e5, 20e5, SetPressure.By.SPRING, false);
        assertTrue(said.startsWith("Tried from 4.00 bar to 20.00 bar;"), said);
        assertTrue(said.contains("The spring alone is set"), said);
        assertTrue(said.endsWith("Not judged: strength of case, pump, rings, shafts and converter."), said);
        assertEquals(
                "Not judged: strength of pump, rings, converter and all to which the file gives no rating.",
                WindowPhrase.notJudged(true));
        assertEquals("worn: set pressure that each limit allows", WindowPhrase.heading("worn"));
    }
}
