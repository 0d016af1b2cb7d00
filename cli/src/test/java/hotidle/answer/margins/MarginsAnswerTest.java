package hotidle.answer.margins;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import hotidle.answer.format.Json;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.assess.Margin;
import hotidle.assess.NotCommanded;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.result.Outcome;
import hotidle.result.Unsolved;
import hotidle.study.JudgedBuild;
import hotidle.study.Judgement;
import hotidle.study.SameSpeedFilms;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class MarginsAnswerTest {

    private static final DescribedCircuit CIRCUIT = CircuitReader.read(
                    Library.text("crescent-four").orElseThrow(), "crescent-four.yaml")
            .circuit()
            .orElseThrow();
    private static final List<Double> SPEEDS = List.of(10.0, 30.0);
    private static List<JudgedBuild> worn;

    /** Not while the class is made ready: the threads of a study would wait for that, and it for them. */
    @BeforeAll
    static void judge() {
        worn = JudgedBuild.study(List.of(CIRCUIT.unit("worn")), SPEEDS, () -> {});
    }

    private static MarginsAnswer answer(List<JudgedBuild> builds) {
        return new MarginsAnswer(UnitSystem.SHOP, "rig", "", builds, Optional.empty(), SameSpeedFilms.of(builds));
    }

    /** The worn build with one duty whose state was not found. */
    private static MarginsAnswer unsolved() {
        Judgement like = worn.get(0).duties().get(0);
        Judgement open = new Judgement(
                like.unit(),
                like.duty(),
                Outcome.of(like.outcome().conditions(), new Unsolved(0.3, "node line", List.of("Newton"))),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Map.of(),
                Map.of());
        return answer(List.of(new JudgedBuild(like.unit(), List.of(open))));
    }

    private static MarginsAnswer dragging() {
        Judgement like = worn.get(0).duties().get(0);
        Transmission unit = like.unit();
        String clutch = unit.network().parts().stream()
                .filter(placed -> placed.part() instanceof hotidle.part.Clutch)
                .findFirst()
                .orElseThrow()
                .name();
        Judgement drags = new Judgement(
                unit,
                like.duty(),
                like.outcome(),
                like.assessed(),
                like.hub(),
                like.held(),
                like.margins(),
                Map.of(clutch, 9e5),
                Map.of(clutch, 2e5));
        return answer(List.of(new JudgedBuild(unit, List.of(drags))));
    }

    @Test
    void everyLimitOfEveryDutyIsARowAndARecord() {
        MarginsAnswer answer = answer(worn);
        int margins = worn.get(0).duties().stream()
                .mapToInt(judged -> judged.margins().size())
                .sum();
        assertEquals(1 + margins, answer.csv().lines().count());
        JsonNode states = Json.tree(answer.json()).at("/builds/0/states");
        int recorded = 0;
        for (JsonNode state : states) {
            assertTrue(state.get("solved").booleanValue(), "a state's own keys stand beside its margins");
            recorded += state.get("margins").size();
        }
        assertEquals(margins, recorded);
        assertTrue(answer.complete());
    }

    @Test
    void theHeadlineOfTheRecordIsThatOfTheScreen() {
        MarginsAnswer answer = answer(worn);
        String summary = Json.tree(answer.json()).at("/builds/0/summary").textValue();
        assertTrue(summary.startsWith("worn: FAILS. First limit: regulation (pump)"), summary);
        assertTrue(answer.full().replaceAll("\\s+", " ").contains(summary), answer.screen());
    }

    @Test
    void whereNoStateWasFoundNothingIsShownAsANumberAndTheAnswerIsNotComplete() {
        MarginsAnswer answer = unsolved();
        assertFalse(answer.complete());
        String words = answer.full().replaceAll("\\s+", " ");
        assertTrue(words.contains("worn: NOT KNOWN. Not known at hot-idle"), words);
        assertTrue(words.contains("node line does not settle"), words);
        assertTrue(words.contains("nothing is known here."), words);
        assertTrue(words.contains("IDLE PRESSURE IS LOW with worn"), "what is not known at idle is not stall-tested");
        JsonNode state = Json.tree(answer.json()).at("/builds/0/states/0");
        assertFalse(state.get("solved").booleanValue());
        assertEquals(0, state.get("margins").size());
        assertEquals(1, answer.csv().lines().count());
    }

    @Test
    void aClutchThatDragsFailsOnTheScreenInARowAndInTheRecord() {
        MarginsAnswer answer = dragging();
        String words = answer.full().replaceAll("\\s+", " ");
        assertTrue(words.contains("worn: FAILS. "), words);
        assertTrue(words.contains(" drags and burns. Apart from that: "), words);
        assertTrue(words.contains("points to a leak in its circuit"), words);
        assertTrue(answer.csv().contains(",clutch-off,"), answer.csv());
        JsonNode state = Json.tree(answer.json()).at("/builds/0/states/0");
        assertEquals(1, state.get("clutch_on_though_not_applied_pa").size());
        assertEquals(1, state.get("clutch_pressure_far_below_line_pa").size());
    }

    @Test
    void aClutchWithOneCoefficientOfFrictionHasOneLimitOnTheScreenAndTwoInTheSpreadsheet() {
        Judgement judged = worn.get(0).duties().get(0);
        List<LimitRows.LabelledMargin> shown = new LimitRows(UnitSystem.SHOP, judged).shown();
        long sliding = judged.margins().stream()
                .filter(margin -> margin.kind() == Margin.Kind.APPLY_SLIDING)
                .count();
        long merged = shown.stream()
                .filter(row -> row.label().equals("apply, holding and slipping"))
                .count();
        assertEquals(judged.margins().size(), shown.size() + merged);
        assertTrue(sliding >= merged);
    }

    @Test
    void twoBuildsAreNamedInFrontOfTheirDutiesAndTheirFilmsStandAtTheSameSpeed() {
        List<JudgedBuild> two =
                JudgedBuild.study(List.of(CIRCUIT.unit("worn"), CIRCUIT.unit("restored")), SPEEDS, () -> {});
        String screen = answer(two).full();
        assertTrue(screen.contains("\nworn, hot-idle"), screen);
        assertTrue(screen.contains("\nrestored, hot-idle"), screen);
        assertTrue(screen.contains("of all builds at the same speed"), screen);
        assertFalse(answer(worn).full().contains("at the same speed"));
    }

    @Test
    void aCircuitThatCommandsNothingSaysWhatToWriteOnTheScreenAndInTheRecord() {
        NotCommanded why = new NotCommanded(
                true, Optional.of(new NotCommanded.UncommandedRegulator("main", "pressure-valve", "exhaust")));
        MarginsAnswer answer =
                new MarginsAnswer(UnitSystem.SI, "rig", "", worn, Optional.of(why), SameSpeedFilms.of(worn));
        String written = "command: {line: main, regulator: pressure-valve, edge: exhaust}";
        assertTrue(answer.full().replaceAll("\\s+", " ").contains(written), answer.screen());
        assertTrue(Json.tree(answer.json())
                .at("/not_judged/regulation")
                .textValue()
                .contains(written));
        assertFalse(Json.tree(answer(worn).json()).has("not_judged"));
        assertTrue(MarginSentences.notCommanded(new NotCommanded(false, Optional.empty()))
                .contains("no spool-valve"));
        assertTrue(MarginSentences.notCommanded(new NotCommanded(true, Optional.empty()))
                .contains("<spool-valve>"));
    }

    @Test
    void theLimitOfTheVerdictHeadsTheTableAndNothingInItIsNotKnown() {
        String screen = answer(worn).screen();
        List<String> rows = screen.lines()
                .filter(line -> line.contains(" % ") && line.contains(" of "))
                .toList();
        assertTrue(rows.stream().noneMatch(row -> row.contains("not known")), screen);
        String head = screen.lines()
                .dropWhile(line -> !line.startsWith("---"))
                .skip(1)
                .findFirst()
                .orElseThrow();
        assertTrue(head.contains("FAILS") && head.contains("regulation (pump)"), head);
    }

    @Test
    void aBuildThatHoldsShowsItsTightestLimits() {
        String screen = answer(JudgedBuild.study(List.of(CIRCUIT.unit("fresh")), SPEEDS, () -> {}))
                .screen();
        assertEquals(
                5,
                screen.lines()
                        .filter(line -> line.contains("% holds") || line.contains("% narrow"))
                        .count(),
                screen);
    }
}
