package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.assess.Margin;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What the first screen of judged builds says where not everything has room. */
class MarginsScreenPhraseTest {

    private static final MarginsScreenPhrase METRIC = new MarginsScreenPhrase(UnitSystem.METRIC);
    private static final Margin SHORT = Margin.of(Margin.Kind.REGULATION, "pump", 0.9, 1, Margin.Scale.PRESSURE);

    private static Map<Margin.Verdict, Map<String, Long>> counts(Margin.Verdict verdict, int places) {
        Map<String, Long> at = new LinkedHashMap<>();
        for (int i = 0; i < places; i++) {
            at.put("condition-" + i, 2L);
        }
        return Map.of(verdict, at);
    }

    @Test
    void whatFailsIsCountedAtEachPlaceHoweverMany() {
        String said = MarginsScreenPhrase.more(counts(Margin.Verdict.FAILS, 5));
        assertTrue(said.contains("2 at condition-0, 2 at condition-1"), said);
        assertTrue(said.contains("2 at condition-4"), said);
    }

    @Test
    void whatDoesNotFailIsSummedUpWhereThePlacesAreMany() {
        assertTrue(MarginsScreenPhrase.more(counts(Margin.Verdict.CLOSE, 5)).contains("10 at 5 driving conditions"));
        assertTrue(MarginsScreenPhrase.more(counts(Margin.Verdict.CLOSE, 3)).contains("2 at condition-2"));
    }

    @Test
    void aBuildThatFailsSaysSoInFrontOfAllElse() {
        assertEquals("worn FAILS. so", MarginsScreenPhrase.headed("worn", true, "so"));
        assertEquals("worn: so", MarginsScreenPhrase.headed("worn", false, "so"));
    }

    @Test
    void theWorstLimitOfABuildIsNamedWithItsPlaceAndHeadroom() {
        String said = METRIC.worst("hot-idle", SHORT, Map.of());
        assertTrue(said.startsWith("First limit ") && said.contains("(pump) at hot-idle, -10 % "), said);
        assertTrue(
                METRIC.worst("hot-idle", SHORT, counts(Margin.Verdict.FAILS, 1)).endsWith(" 2 at condition-0."));
    }

    @Test
    void buildsThatFoundNoRoomAreCountedAndThoseThatFailNamed() {
        assertEquals("1 more build without a failing limit (--full).", MarginsScreenPhrase.moreBuilds(1, List.of()));
        assertEquals(
                "3 more builds; FAILS: worn, worn-raised (--full).",
                MarginsScreenPhrase.moreBuilds(3, List.of("worn", "worn-raised")));
    }

    @Test
    void theUnitOfBothFiguresIsToldOnce() {
        Margin film = Margin.of(Margin.Kind.FILM, "hub", 6e-6, 5e-6, Margin.Scale.LENGTH);
        String said = METRIC.isOfNeeded(film);
        assertEquals(1, said.split("um", -1).length - 1, said);
        assertTrue(said.startsWith("6.0 of "), said);
    }

    /** Where metal touches there is no film of a size. */
    @Test
    void aFilmThatIsNoneIsNotToldAsSoMuchOfAnother() {
        Margin none = Margin.notKnown(Margin.Kind.FILM, "hub", 5e-6, Margin.Scale.LENGTH);
        assertEquals("not known, needs 5.0 um", METRIC.isOfNeeded(none));
    }

    @Test
    void oneOfAThingIsNotToldAsSeveral() {
        assertEquals(
                "Of 1 limit at 1 driving condition: 1 fails, 0 not known, 0 narrow, 0 hold.",
                LimitCountPhrase.of(1, 1, 0, 0, 0));
        assertEquals(
                "Of 5 limits at 2 driving conditions: 2 fail, 1 not known, 1 narrow, 1 holds.",
                LimitCountPhrase.of(2, 2, 1, 1, 1));
        assertEquals("1 value left to the program (--full).", MorePhrase.defaults(1));
        assertEquals("2 more limits (--full).", MorePhrase.lines(2, "limit"));
        assertEquals("1 more limit (--full).", MorePhrase.lines(1, "limit"));
        assertEquals("past the wear limit: pump.gap by 3 um", MorePhrase.past("pump.gap by 3 um", 0));
        assertEquals(
                "past the wear limit: pump.gap by 3 um; and 4 more (--full)", MorePhrase.past("pump.gap by 3 um", 4));
    }

    @Test
    void whatIsNotKnownNamesItsDrivingConditions() {
        assertEquals(
                "NOT KNOWN in part or whole at stall, climb: no steady state was found (--full says of what).",
                MarginsScreenPhrase.notKnown(List.of("stall", "climb")));
        assertTrue(MarginsScreenPhrase.drags("reverse", "park").startsWith("FAILS: reverse drags at park"));
    }

    @Test
    void fitsWithinTheirWrittenLimitsPointToTheirWear() {
        assertEquals(
                "hub.bore is within its written limit, but with it new this would not fail: hub film (hub) at stall."
                        + " 'hotidle wear' with this build and --fit hub.bore says how far it may wear.",
                MarginsScreenPhrase.loose(List.of("hub.bore"), "hub film (hub) at stall"));
        assertEquals(
                "a.x, b.x are within their written limits, but with them new this would not fail: l. 'hotidle wear' with"
                        + " this build and --fit a.x --fit b.x says how far each may wear.",
                MarginsScreenPhrase.loose(List.of("a.x", "b.x"), "l"));
        assertEquals(
                "4 worn fits are within their written limits, but with them new this would not fail: l. 'hotidle wear'"
                        + " with this build says how far each may wear.",
                MarginsScreenPhrase.loose(List.of("a.x", "b.x", "c.x", "d.x"), "l"));
    }
}
