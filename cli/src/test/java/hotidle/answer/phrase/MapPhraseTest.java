package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.transmission.SetPressure;
import org.junit.jupiter.api.Test;

class MapPhraseTest {

    @Test
    void aMapIsHeadedByBuildAndSizeWithItsUnit() {
        assertEquals(
                "worn: least headroom in % and the limit that decides, over set pressure and plate.gap [thou]",
                MapPhrase.heading("worn", "plate.gap", "thou"));
        assertEquals("worn: least headroom over set pressure and plate.gap", MapPhrase.title("worn", "plate.gap"));
    }

    @Test
    void aPictureThatIsPassedOnAloneIsStillAnEstimate() {
        String said = MapPhrase.subtitle("vane-six", SetPressure.By.COMMAND_AND_SPRING);
        assertTrue(said.startsWith("vane-six: worst of all limits at all driving conditions."), said);
        assertTrue(
                said.contains("Command and spring are set together, idle with the rest; all other sizes stay"), said);
        assertTrue(said.endsWith("An estimate, not an approval."), said);
    }

    @Test
    void aSpringAloneIsNotSaidToBeSetWithTheCommand() {
        String said = MapPhrase.legend(SetPressure.By.SPRING);
        assertTrue(
                said.contains("The spring alone is set, idle with the rest; pilot and throttle pressure stay"), said);
        assertFalse(said.contains("Command and spring"), said);
    }

    @Test
    void theBuildsOwnPointHasItsNameAndAnotherOneIsTheBuildWithThatSize() {
        assertEquals(
                "restored, bore 35.05 mm at 12.00 bar: ",
                MapPhrase.point("restored", "restored", "bore", "35.05 mm", "12.00 bar"));
        assertEquals(
                "restored with that size as measured, bore 35.09 mm at 12.00 bar: ",
                MapPhrase.point("restored", "as measured", "bore", "35.09 mm", "12.00 bar"));
    }

    @Test
    void thePointSaysWhichLimitDecides() {
        assertEquals(
                "FAILS, -12 %; lockup (converter) at cruise decides.",
                MapPhrase.decides("FAILS", "-12 %", "lockup (converter) at cruise", false));
    }

    @Test
    void whereMetalTouchesNoFilmDecides() {
        assertEquals(
                "FAILS, -; hub film (hub) at stall: metal touches, the film is not known.",
                MapPhrase.decides("FAILS", "-", "hub film (hub) at stall", true));
    }

    @Test
    void aPointThatIsNotKnownIsGivenNoHeadroom() {
        assertEquals("NOT KNOWN, no steady state at stall.", MapPhrase.notKnown("no steady state at stall"));
        assertEquals("?  not known at 1 point: why", MapPhrase.notKnownAt(1, "why"));
        assertEquals("?  not known at 7 points: why", MapPhrase.notKnownAt(7, "why"));
    }
}
