package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Margin;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class WearLimitPhraseTest {

    @Test
    void eachKindOfLimitHasANameOfItsOwn() {
        long names = Arrays.stream(Margin.Kind.values())
                .map(LimitPhrase::label)
                .distinct()
                .count();
        assertEquals(Margin.Kind.values().length, names);
    }

    @Test
    void aLimitIsSaidWithItsPartAndItsDuty() {
        assertEquals(
                "lubrication (lube-rear) at hot-idle",
                LimitPhrase.at(Margin.Kind.LUBRICATION, "lube-rear", "hot-idle"));
        assertEquals("hub film (hub-bushing), stall", LimitPhrase.listed(Margin.Kind.FILM, "hub-bushing", "stall"));
    }

    @Test
    void wornFitsAreSaidWithTheirShareOfTheWayToTheirLimits() {
        assertEquals(
                "3 of its 9 fits are worn already, 50 to 120 % of the way from new to their written limits (1 past"
                        + " theirs). Counted from new, not from there, ",
                WearLimitPhrase.wornAlready(3, 9, List.of(0.5, 0.8, 1.2), 1));
    }

    @Test
    void aBuildPastWhatAllMayWearFromNewIsCountedFromToday() {
        assertEquals(
                "worn unevenly, its most worn fit at 131 % of its written limit, so each is counted alone from today. All worn alike"
                        + " from new could reach 27 % of theirs; then cooler fails.",
                WearLimitPhrase.wornUnevenly(0.27, "cooler", 1.31));
    }

    @Test
    void aLimitThatIsTooLooseIsToldWithTheShareOfTheWayAtWhichItFails() {
        assertEquals(
                "2 of 9 written limits are too loose for this pressure; alone each fails at so much of the way from new to it:"
                        + " pump.gap 12 %, hub.bore 38 %.",
                WearLimitPhrase.tooLoose(
                        "",
                        2,
                        9,
                        List.of(
                                WearLimitPhrase.looseFit("pump.gap", 0.12),
                                WearLimitPhrase.looseFit("hub.bore", 0.38))));
    }

    @Test
    void wornFitsWithoutAWrittenLimitGiveNoShare() {
        assertFalse(WearLimitPhrase.wornAlready(2, 2, List.of(), 0).contains("%"));
    }

    @Test
    void allFitsTogetherGoToTheLimitThatIsGoneFirst() {
        assertEquals(
                "all fits together may wear to 75 % of the way from new to their written limits; then cooler (cooler),"
                        + " cruise is gone.",
                WearLimitPhrase.togetherTo(0.75, "cooler (cooler), cruise"));
        assertTrue(WearLimitPhrase.togetherNone(8).endsWith("up to 800 % of their written limits."));
    }

    @Test
    void severalLimitsOrFitsAreListed() {
        assertTrue(WearLimitPhrase.failAlready(List.of("a", "b")).endsWith(": a; b."));
        assertTrue(WearLimitPhrase.failWhenNew(List.of("a", "b")).endsWith(": a; b."));
        assertTrue(WearLimitPhrase.noneOfThese(List.of("pump.gap", "hub.bore")).endsWith(": pump.gap, hub.bore."));
        assertTrue(WearLimitPhrase.noneHolds("worn", 4).startsWith("worn: no limit holds"));
    }

    @Test
    void whatFailsAsItIsIsMendedAndWhatHasWearLeftIsMeasured() {
        assertEquals(
                "Next: 'hotidle leaks' with --build worn --by job says which jobs keep every limit.",
                WearLimitPhrase.nextJobs("--build worn"));
        assertTrue(WearLimitPhrase.nextMeasure("--build restored").startsWith("Next: measure the tightest fits first"));
    }
}
