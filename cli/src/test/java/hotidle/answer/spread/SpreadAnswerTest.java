package hotidle.answer.spread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import hotidle.answer.format.Json;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.answer.format.Wrap;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.Library;
import hotidle.study.spread.SpreadFindings;
import hotidle.study.spread.SpreadQuestion;
import hotidle.study.spread.SpreadRun;
import hotidle.study.spread.SpreadTally;
import hotidle.study.spread.Unmeasured;
import hotidle.transmission.Adjustable;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class SpreadAnswerTest {

    private static final Adjustable SHUTTLE = CircuitReader.read(
                    Library.text("shuttle-five").orElseThrow(), "shuttle-five.yaml")
            .circuit()
            .orElseThrow()
            .adjustable("fresh");

    private static SpreadAnswer answer(SpreadQuestion question, SpreadTally tally) {
        return new SpreadAnswer(UnitSystem.SHOP, "", question, tally, SpreadFindings.of(question.sizes(), tally), "");
    }

    private static SpreadAnswer answer(Unmeasured.FitState taken, int samples, int pairs) {
        SpreadQuestion question =
                new SpreadQuestion(SHUTTLE, Unmeasured.of(SHUTTLE, taken), List.of("hot-idle"), samples, pairs, 5);
        return answer(
                question, new SpreadRun(question).run(SpreadRun.RunPart.WHOLE, 2, (number, unit) -> {}, () -> {}));
    }

    private static SpreadAnswer worn;

    /** Not while the class is loaded: the run's threads need it. */
    @BeforeAll
    static void draw() {
        worn = answer(Unmeasured.FitState.WORN, 120, 8);
    }

    @Test
    void aUnitThatHasServedFailsMoreOftenThanASoundOne() {
        SpreadAnswer sound = answer(Unmeasured.FitState.SOUND, 60, 0);
        assertTrue(sound.tally().allHold().low() > worn.tally().allHold().high());
        assertTrue(sound.screen().contains("fits taken as sound"), sound.screen());
    }

    @Test
    void theFirstScreenHasTheFailingLimitsAndWhatDrivesTheWorst() {
        String screen = worn.screen();
        assertTrue(screen.lines().count() <= Wrap.LINES, screen);
        assertTrue(screen.contains("regulation (primary + secondary), hot-idle"), screen);
        assertTrue(screen.contains("more limits hold in every unit"), screen);
        assertTrue(worn.full().contains("worth measuring"), worn.full());
        assertTrue(worn.full().contains("Wilson"));
    }

    @Test
    void theRecordHasEverySizeAndEveryLimit() {
        JsonNode json = Json.tree(worn.json());
        assertEquals(53, json.get("sizes").size());
        assertEquals(worn.tally().margins().size(), json.get("margins").size());
        JsonNode first = json.at("/margins/0");
        double sum = first.at("/holds/share").doubleValue()
                + first.at("/fails/share").doubleValue()
                + first.at("/not_known/share").doubleValue();
        assertEquals(1, sum, 1e-12);
        assertEquals(53, first.get("drivers").size());
        for (JsonNode size : json.get("sizes")) {
            boolean gauge = !size.get("drawn_as").textValue().equals("assumed");
            assertEquals(gauge, size.get("settles").isNumber(), size.toString());
        }
        assertEquals(1 + worn.tally().margins().size(), worn.csv().lines().count());
        assertTrue(worn.complete());
    }

    @Test
    void withoutPairsNothingIsSaidOfWhatToMeasure() {
        SpreadAnswer plain = answer(Unmeasured.FitState.WORN, 20, 0);
        assertFalse(plain.screen().contains("worth measuring"), plain.screen());
        assertFalse(plain.screen().contains("drives"), plain.screen());
    }

    @Test
    void whereNoStateIsFoundNothingIsKnown() {
        SpreadTally none = new SpreadTally(5, 0, 5, 0, 0, 0, 10, List.of());
        SpreadAnswer answer = answer(worn.question(), none);
        assertTrue(answer.screen().contains("Not known: no steady state was found at hot-idle"), answer.screen());
        assertFalse(answer.complete());
    }

    @Test
    void unitsThatAreNotThereAreCountedApart() {
        SpreadTally tally = worn.tally();
        SpreadAnswer answer = answer(
                worn.question(),
                new SpreadTally(
                        130, 10, 3, tally.sound(), tally.failing(), tally.rows(), tally.solves(), tally.margins()));
        assertTrue(answer.screen().contains("10 of the 130 drawn cannot be built"), answer.screen());
        assertTrue(answer.screen().contains("No steady state was found in 3 units"), answer.screen());
        assertFalse(answer.complete());
        assertTrue(answer.screen().lines().count() <= Wrap.LINES, answer.screen());
    }
}
