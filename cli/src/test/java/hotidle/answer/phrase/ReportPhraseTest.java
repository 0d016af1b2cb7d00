package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.phrase.CustomerPhrase.Looks;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ReportPhraseTest {

    @Test
    void theQuestionCountsTheBuilds() {
        assertTrue(ReportPhrase.question(List.of("worn")).startsWith("Does this build hold"));
        assertTrue(ReportPhrase.question(List.of("worn", "restored")).startsWith("Which of these 2 builds holds"));
    }

    @Test
    void whatIsLeftOutIsSaidWithTheReason() {
        assertEquals(List.of(), ReportPhrase.leftOut(true, true, true, true, true, true));
        List<String> bench = ReportPhrase.leftOut(false, false, false, false, false, false);
        assertEquals(6, bench.size());
        bench.forEach(line -> assertTrue(line.startsWith("Not in it: "), line));
    }

    @Test
    void aBuildSaysWhatItStandsOn() {
        assertEquals("worn: 180 000 km (on fresh)", ReportPhrase.build("worn", "180 000 km", Optional.of("fresh")));
        assertEquals("fresh", ReportPhrase.build("fresh", "", Optional.empty()));
    }

    @Test
    void whatWasWrittenIsCounted() {
        assertEquals(
                "Written: 1 section, 2 tables, 0 pictures; opens in any browser, without a network",
                ReportPhrase.written(1, 2, 0));
    }

    @Test
    void aCustomerIsToldInPlainWords() {
        assertEquals("worn DOES NOT HOLD: no oil.", CustomerPhrase.verdict("worn", Looks.FAILS, "no oil."));
        assertEquals("worn: whether it holds is NOT KNOWN.", CustomerPhrase.verdict("worn", Looks.OPEN, ""));
        assertTrue(CustomerPhrase.verdict("new", Looks.NARROW, "film.").contains("less than a tenth to spare: film."));
        assertTrue(CustomerPhrase.verdict("new", Looks.HOLDS, "").endsWith("more than a tenth to spare."));
    }

    @Test
    void aHandoutCallsItsUnitsByLetters() {
        assertEquals("unit A", LessonPhrase.unit(0));
        assertEquals("unit F", LessonPhrase.unit(5));
        assertTrue(LessonPhrase.question(3).contains("3 units"));
        assertTrue(LessonPhrase.question(1).contains("this unit"));
        assertTrue(LessonPhrase.task(1).get(0).startsWith("One unit"));
        assertEquals(
                "hotidle: in first some of these units read alike; the handout shows third and reverse too, to tell them apart",
                LessonPhrase.moreRanges("first", java.util.List.of("third", "reverse")));
        assertTrue(LessonPhrase.alike("fresh", "worn", false).contains("in the ranges shown"));
        assertEquals("check ball missing", LessonPhrase.wrong("check ball missing", ""));
    }

    @Test
    void aWordIsExplainedInAFullSentence() {
        assertEquals("leaks: oil lost.", CustomerPhrase.word("leaks", "oil lost"));
        assertTrue(CustomerPhrase.WORDS.stream()
                .allMatch(word ->
                        TermPhrase.ALL.stream().anyMatch(term -> term.word().equals(word))));
    }
}
