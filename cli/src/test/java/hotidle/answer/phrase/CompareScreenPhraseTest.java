package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.assess.Margin;
import hotidle.assess.StateFault;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What the first screen of builds side by side says, and what a customer and a class read of them. */
class CompareScreenPhraseTest {

    private static final CompareScreenPhrase METRIC = new CompareScreenPhrase(UnitSystem.METRIC);

    @Test
    void whatFailsFirstIsNamedAndTheOtherPlacesBehindIt() {
        StateFault low = new StateFault(StateFault.Kind.LINE_LOW, "", 5e5, 8e5);
        String one = METRIC.fails("worn", low, "hot-idle", List.of());
        assertTrue(one.startsWith("worn at hot-idle (line 5.00"), one);
        assertTrue(
                METRIC.fails("worn", low, "hot-idle", List.of("stall", "climb")).endsWith("), stall, climb"));
        assertEquals("FAILS: a; b.", CompareScreenPhrase.fail(List.of("a", "b")));
    }

    @Test
    void howManyConditionsFailIsCountedOfAll() {
        assertEquals("none", CompareScreenPhrase.failsAt(0, 11, false));
        assertEquals("none, narrow", CompareScreenPhrase.failsAt(0, 11, true));
        assertEquals("3 of 11", CompareScreenPhrase.failsAt(3, 11, true));
    }

    /** +35 % above HUB OVERLOAD is no sign of strength. */
    @Test
    void theWeakestLinkOfABuildThatFailsIsNotTakenForItsVerdict() {
        assertEquals("+35 % but FAILS", CompareScreenPhrase.link(0.35, 2));
        assertEquals("+35 %", CompareScreenPhrase.link(0.35, 0));
        assertEquals("-5 %", CompareScreenPhrase.link(-0.05, 1), "it is what fails");
    }

    @Test
    void aLimitThatHoldsOnlyJustIsNamedWithWhatIsLeft() {
        assertEquals(
                "NARROW: a +1 %, hub film oil (hub-bushing) at climb; b.",
                CompareScreenPhrase.narrow(List.of(
                        CompareScreenPhrase.narrow(
                                "a",
                                Margin.of(Margin.Kind.FILM_OIL, "hub-bushing", 1.01, 1, Margin.Scale.FLOW),
                                "climb"),
                        "b")));
    }

    @Test
    void afterJobsTheNextCommandIsNamed() {
        assertEquals(
                "Next: 'hotidle margins' with the same --build, --job and --set judges every limit of worn-after.",
                CompareScreenPhrase.nextHolds("worn-after"));
        assertEquals(
                "Next: 'hotidle leaks' with --build worn --by job --set 16.00bar says which jobs together keep every limit.",
                CompareScreenPhrase.nextJobs("worn", "", METRIC.setTo(16e5)));
    }

    @Test
    void oneBuildHoldsAndSeveralHold() {
        assertTrue(
                METRIC.holds(List.of("fresh"), 1, 500)
                        .startsWith(
                                "fresh holds at all 1 driving condition, which ask up to 500 N.m of engine torque (more: --for), as far"));
        assertTrue(METRIC.holds(List.of("fresh", "restored"), 3, 500)
                .startsWith("fresh, restored hold at all 3 driving conditions"));
    }

    @Test
    void afterJobsItIsSaidInShortWhatHolds() {
        assertEquals(
                "worn-after holds at all 3 driving conditions, which ask up to 500 N.m of engine torque.",
                METRIC.holdsHere(List.of("worn-after"), 3, 500));
    }

    @Test
    void buildsThatFoundNoRoomAreCountedWithTheWorstOfThem() {
        assertEquals("2 more builds, none of which fails (--full)", CompareScreenPhrase.moreBuilds(2, 0, ""));
        assertEquals(
                "3 more builds, 2 of which fail; first worn at stall (--full)",
                CompareScreenPhrase.moreBuilds(3, 2, "worn at stall"));
    }

    @Test
    void whereOnePlaceIsThatOfAllBuildsTheBuildsAreNotNamed() {
        assertEquals(
                "Weakest torque link: shaft at stall.",
                CompareScreenPhrase.where("Weakest torque link", Map.of("shaft at stall", List.of("a", "b"))));
        Map<String, List<String>> two = new LinkedHashMap<>();
        two.put("shaft at stall", List.of("a"));
        two.put("direct at climb", List.of("b", "c"));
        assertEquals(
                "Weakest torque link: shaft at stall (a); direct at climb (b, c).",
                CompareScreenPhrase.where("Weakest torque link", two));
    }

    @Test
    void pumpPowerIsComparedAtOneConditionAndMoreElsewhereIsTold() {
        assertEquals(
                "More pump power elsewhere: 2.50 kW at cold-start (fresh).",
                CompareScreenPhrase.morePower(
                        Map.of(CompareScreenPhrase.power("2.50 kW", "cold-start"), List.of("fresh"))));
    }

    @Test
    void whatAUnitIsSetToIsNotWhatIsCommandedAtIdle() {
        assertEquals(
                "Set pressure, at full engine torque: a 10.00 bar, b 15.00 bar; at hot-idle less is commanded.",
                METRIC.setPressures("hot-idle", List.of(METRIC.set("a", 10e5), METRIC.set("b", 15e5))));
    }

    @Test
    void whatABuildMovesIsToldBeforeAndAfter() {
        assertEquals("gauge 5.00 to 8.00 bar", METRIC.moves("gauge", Quantity.PRESSURE, 5e5, 8e5));
        assertEquals("holds from 700 rpm, was 1200", CompareScreenPhrase.holdsFrom("1200", "700"));
        assertEquals(
                "restored against worn: gauge 5.00 to 8.00 bar.",
                CompareScreenPhrase.against("restored", "worn", List.of("gauge 5.00 to 8.00 bar")));
    }

    @Test
    void aFilmThatIsNotKnownIsNoFailure() {
        assertTrue(CompareScreenPhrase.filmNotKnown(List.of("a", "b"), true).contains("holds ("));
        assertTrue(CompareScreenPhrase.filmNotKnown(List.of("a", "b"), false).contains("in a, b ("));
    }

    @Test
    void aCustomerReadsWhetherABuildHoldsBeforeWhy() {
        assertEquals(
                "worn DOES NOT HOLD: line too low.",
                CustomerPhrase.verdict("worn", CustomerPhrase.Looks.FAILS, "line too low."));
        assertEquals(
                "fresh holds, with more than a tenth to spare.",
                CustomerPhrase.verdict("fresh", CustomerPhrase.Looks.HOLDS, ""));
        assertEquals("worn DOES NOT HOLD.", CustomerPhrase.verdict("worn", CustomerPhrase.Looks.FAILS, ""));
        assertTrue(
                CustomerPhrase.verdict("worn", CustomerPhrase.Looks.OPEN, "so").contains("NOT KNOWN: so"));
        assertTrue(CustomerPhrase.verdict("worn", CustomerPhrase.Looks.NARROW, "so")
                .contains("less than a tenth to spare: so"));
    }

    @Test
    void aClassReadsOfUnitsByLetters() {
        assertEquals("unit A", LessonPhrase.unit(0));
        assertEquals("unit E", LessonPhrase.unit(4));
        assertEquals("What is wrong with this unit?", LessonPhrase.question(1));
        assertTrue(LessonPhrase.question(4).contains("each of these 4 units"));
        assertTrue(LessonPhrase.task(1).get(0).startsWith("One unit of one kind"));
        assertTrue(LessonPhrase.task(3).get(0).startsWith("3 units of one kind"));
        assertEquals("Gauge line: drive, sump 230 degF", LessonPhrase.chart("line", UnitSystem.SHOP, "drive", 383.15));
    }
}
