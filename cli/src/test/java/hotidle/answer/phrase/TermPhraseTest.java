package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class TermPhraseTest {

    @Test
    void theSpeedFromWhichALineHoldsIsFoundByItsTradeWordAndByItsKey() {
        assertEquals(TermPhrase.of("holds from"), TermPhrase.of("onset_rpm"));
        assertEquals(
                "holds from", TermPhrase.of("Onset of regulation").orElseThrow().word());
        assertEquals("narrow", TermPhrase.of("close").orElseThrow().word());
        assertEquals(
                "both chambers feeding", TermPhrase.of("joined").orElseThrow().word());
        assertTrue(TermPhrase.of("torque").isEmpty());
    }

    @Test
    void aTermIsSaidInThreeLines() {
        TermPhrase.ALL.forEach(term ->
                assertTrue(term.said().lines().allMatch(line -> line.length() <= 100), term.word()));
        TermPhrase.ALL.forEach(term -> assertEquals(3, term.said().lines().count(), term.word()));
        assertEquals(
                List.of(
                        "narrow: a limit that holds with up to 10 % to spare (assumed).",
                        "seen in: margins, compare, leaks --by job", "JSON: verdict: close"),
                TermPhrase.of("narrow").orElseThrow().said().lines().toList());
    }

    @Test
    void noNameStandsForTwoTerms() {
        List<String> names =
                TermPhrase.ALL.stream().flatMap(term -> term.names().stream()).toList();
        assertEquals(names.stream().distinct().toList(), names);
    }

    /** Whoever reads JSON by these words finds the key. */
    @Test
    void everyKeyOfJsonThatATermNamesIsInTheSchemaOfTheOutput() throws Exception {
        String schema = Files.readString(Path.of("../circuits/output.schema.json"));
        for (TermPhrase.Term term : TermPhrase.ALL) {
            if (!term.json().equals(TermPhrase.NONE) && !term.json().equals("null")) {
                for (String word : term.json().split(": ", -1)) {
                    assertTrue(schema.contains("\"" + word + "\""), term.word() + ": " + word);
                }
            }
        }
    }

    @Test
    void allWordsFitOnAScreen() {
        assertTrue(TermPhrase.listed().lines().count() <= 24, TermPhrase.listed());
        assertTrue(TermPhrase.listed().lines().allMatch(line -> line.length() <= 100));
        TermPhrase.TOPICS.stream()
                .flatMap(topic -> topic.terms().stream())
                .forEach(term ->
                        assertTrue(TermPhrase.listed().replaceAll("\\s+", " ").contains(term.word())));
    }

    @Test
    void theWordsThatAReaderOfFirstScreensAskedForAreThere() {
        for (String word : List.of(
                "accumulator",
                "input-shaft",
                "plate",
                "primary",
                "hub",
                "relief",
                "fresh",
                "sound",
                "thou",
                "wear limit",
                "displacement",
                "command table",
                "zero overlap",
                "cautions",
                "first limit",
                "binds",
                "tip-slip",
                "face-slip",
                "orifice-slip",
                "orifice slip",
                "Trumpler",
                "gauge full scale",
                "full scale",
                "misfit",
                "eccentricity",
                "Reynolds number",
                "used or sent back",
                "stall test")) {
            assertTrue(TermPhrase.of(word).isPresent(), word);
        }
    }

    /** With its unit, its count, its mark, the words behind it: as a table or a sentence has it. */
    @Test
    void aWordIsFoundAsItIsCopiedFromAScreen() {
        assertEquals("others", TermPhrase.of("55 others").orElseThrow().word());
        assertEquals("net", TermPhrase.of("others, net").orElseThrow().word());
        assertEquals("not known", TermPhrase.of("12 not known").orElseThrow().word());
        assertEquals("gone at", TermPhrase.of("gone at [in]").orElseThrow().word());
        assertEquals(
                "every limit holds",
                TermPhrase.of("every limit holds, psi").orElseThrow().word());
        assertEquals("hub film", TermPhrase.of("hub film *").orElseThrow().word());
        assertEquals("hub film", TermPhrase.of("hub film ~").orElseThrow().word());
        assertEquals("holds", TermPhrase.of("HOLDS.").orElseThrow().word());
        assertEquals(
                "commanded", TermPhrase.of("hot-idle, commanded").orElseThrow().word());
        assertTrue(TermPhrase.of("55").isEmpty());
        assertTrue(TermPhrase.of("psi").isEmpty());
        assertTrue(TermPhrase.of("").isEmpty());
    }
}
