package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.transmission.SetPressure;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class MapPhraseTest {

    @Test
    void aMapIsHeadedByBuildAndSizeWithItsUnit() {
        assertEquals(
                "worn: least headroom in % and the limit that decides, over set pressure and plate.gap [thou]",
                MapPhrase.heading("worn", "plate.gap", "thou"));
    }

    @Test
    void aPictureIsTitledByWhereEveryLimitHolds() {
        assertEquals(
                "worn: every limit holds with plate.gap 0.2 to 1.4 thou, at the widest at 140 to 240 psi",
                MapPhrase.holds("worn", true, "140 to 240 psi", "plate.gap", "0.2 to 1.4 thou"));
        assertEquals(
                "worn: no set pressure from 60 to 300 psi keeps every limit that is known, whatever plate.gap; worst at"
                        + " hot-idle",
                MapPhrase.holdsNowhere("worn", false, "60 to 300 psi", "plate.gap", Optional.of("hot-idle")));
        assertTrue(MapPhrase.holdsNowhere("worn", true, "60 to 300 psi", "plate.gap", Optional.empty())
                .endsWith("whatever plate.gap; nothing is known"));
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
                MapPhrase.decides("FAILS", "-12 %", "lockup (converter) at cruise", false, false));
    }

    @Test
    void whereMetalTouchesNoFilmDecides() {
        assertEquals(
                "FAILS, -; hub film (hub) at stall (assumed): metal touches, the film is not known.",
                MapPhrase.decides("FAILS", "-", "hub film (hub) at stall", true, true));
    }

    @Test
    void aPointThatIsNotKnownIsGivenNoHeadroom() {
        assertEquals("NOT KNOWN, no steady state at stall.", MapPhrase.notKnown("no steady state at stall"));
        assertEquals("?  not known at 1 point: why", MapPhrase.notKnownAt(1, "why"));
        assertEquals("?  not known at 7 points: why", MapPhrase.notKnownAt(7, "why"));
    }

    @Test
    void pointsThatFailAreCountedByDrivingCondition() {
        Map<String, Integer> failing = new LinkedHashMap<>();
        failing.put("stall", 4);
        failing.put("hot-idle", 1);
        assertEquals(
                "worn: 7 of 12 points hold every limit, with most to spare at 0.05 mm and 12.00 bar (+31 %); 5 fail, worst at"
                        + " stall (4), hot-idle (1).",
                MapPhrase.counted("worn", 12, 7, true, failing, MapPhrase.best("0.05 mm", "12.00 bar", "+31 %")));
        assertEquals(
                "worn: NO POINT of 4 holds every limit that is known; 4 fail, worst at stall (4).",
                MapPhrase.counted("worn", 4, 0, false, Map.of("stall", 4), ""));
        assertEquals(
                "worn: 1 of 1 point holds every limit, with most to spare at x.",
                MapPhrase.counted("worn", 1, 1, true, Map.of(), "x"));
    }

    /** Between the last pressure that holds and this one nothing was tried. */
    @Test
    void whatFailsBeyondARangeIsToldWithThePressureAtWhichItWasFound() {
        assertEquals("lubrication (100)", MapPhrase.foundAt("lubrication", "100"));
    }

    @Test
    void everyColumnOfAMapSaysItsUnit() {
        assertEquals("fails below (psi)", MapPhrase.at(MapPhrase.BELOW, "psi"));
        assertEquals("most (bar)", MapPhrase.at(MapPhrase.MOST, "bar"));
        assertEquals("regulator.clearance, in", MapPhrase.sized("regulator.clearance", "in"));
    }
}
