package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What new asks and says. */
class NewPhraseTest {

    @Test
    void aQuestionShowsOneNumberWhichIsWhatEnterKeeps() {
        assertEquals(
                "3 of 12  set-pressure, highest line pressure forward [143 psi]: ",
                NewPhrase.question(3, 12, "set-pressure", "highest line pressure forward", "143 psi"));
        assertTrue(NewPhrase.asks(12, "crescent-four", "a.csv").contains("Enter alone keeps what stands in [ ]"));
        assertTrue(NewPhrase.asks(1, "crescent-four", "a.csv").startsWith("1 question. "));
    }

    @Test
    void rangesAreListedWithWhatTheyApply() {
        Map<String, List<String>> applied = new LinkedHashMap<>();
        applied.put("reverse", List.of("direct-clutch", "low-reverse-brake"));
        applied.put("first", List.of("forward-clutch"));
        String said = NewPhrase.ranges("crescent-four", applied);
        assertTrue(
                said.startsWith(
                        "crescent-four applies\n  reverse  direct-clutch, low-reverse-brake\n  first    forward-clutch\n"),
                said);
        assertTrue(said.contains("is not possible with new"), said);
        assertTrue(said.lines().allMatch(line -> line.length() <= 100), said);
    }

    @Test
    void clutchesAndBandsAreCountedAndNamed() {
        assertEquals("1 clutch (a); 1 band (b)", NewPhrase.has(List.of("a"), List.of("b")));
        assertEquals("2 clutches (a, c)", NewPhrase.has(List.of("a", "c"), List.of()));
        assertEquals("0 clutches", NewPhrase.has(List.of(), List.of()));
    }

    @Test
    void aRefusedAnswerKeepsItsLines() {
        assertEquals("  not taken: bores 0: write\n  mend: more\n", NewPhrase.again("bores 0: write\nmend: more"));
        assertTrue(NewPhrase.stopped("a.csv").contains("--ask --answers a.csv"));
    }

    @Test
    void answersThatAPipeBroughtAreCountedAboveWhatIsWrongWithThem() {
        assertEquals(
                "hotidle: --ask: 2 answers cannot be taken; what comes after one is looked at without it",
                NewPhrase.refused(2));
        assertEquals("Not asked: bores, for a has none.", NewPhrase.notAsked("bores", "a has none"));
    }

    @Test
    void whatWasMadeIsCountedAndWhatToDoNextIsACommand() {
        assertTrue(NewPhrase.made("a.yaml", 120, "vane-six", "1 clutch (a)", 1).contains("1 number in it is assumed"));
        assertTrue(
                NewPhrase.made("a.yaml", 120, "vane-six", "1 clutch (a)", 2).contains("2 numbers in it are assumed"));
        assertEquals("""
                Next, in this order:
                  fill it in      hotidle sheet a.yaml --out a.csv
                  read right?     hotidle check a.yaml --sheet a.csv
                  beside all new  hotidle compare a.yaml --sheet a.csv
                  what fails      hotidle margins a.yaml --sheet a.csv
                  what to repair  hotidle leaks a.yaml --sheet a.csv --by job
                  what it costs   jobs: in a.yaml, each with changes: as of a build, time: 4 h, price: 900
                """, NewPhrase.next("a.yaml", "a.csv"));
        assertEquals("Your answers are in a.csv.\n", NewPhrase.kept("a.csv"));
        assertEquals(
                "Measure first what moves cooler (cooler) at hot-idle most (a tenth more of it adds); rows of the sheet: lube, bore +4 %; no fits and not on the sheet, to be written over the ~ in the file: lube.diameter -9 %.",
                NewPhrase.measureFirst(
                        "cooler (cooler) at hot-idle", Map.of("lube.bore", 0.04), Map.of("lube.diameter", -0.09)));
        assertEquals(
                "Measure first what moves cooler (cooler) at hot-idle most (a tenth more of it adds); rows of the sheet: lube, bore +4 %.",
                NewPhrase.measureFirst("cooler (cooler) at hot-idle", Map.of("lube.bore", 0.04), Map.of()));
    }
}
