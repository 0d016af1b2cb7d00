package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** explain, asked for what a user copies from a screen. */
class ExplainCommandTest {

    private static String said(String... words) {
        String[] line = new String[words.length + 1];
        line[0] = "explain";
        System.arraycopy(words, 0, line, 1, words.length);
        Run run = Run.of(line);
        assertEquals(HotIdle.DONE, run.code(), run.err());
        return run.out().replaceAll("\\s+", " ");
    }

    @Test
    void aCountedWordIsExplainedWithoutItsCount() {
        assertTrue(said("55 others").startsWith("others: rows that found no room"));
        assertTrue(said("55", "others").startsWith("others: rows that found no room"));
        assertTrue(said("net").startsWith("net: oil lost less oil brought back"));
    }

    @Test
    void aNameOfAReadyCircuitIsToldForWhatItIs() {
        assertTrue(said("hot-idle").contains("vane-six: a driving condition"));
        assertTrue(said("restored-firm-lockup").contains("shuttle-five: a build: the restored unit under"));
        assertTrue(said("regulator.bore").contains("the size 'bore' of regulator, a part of the kind spool-valve"));
        assertTrue(said("regulator.bore, in").contains("'regulator.bore' is a name"));
        assertTrue(said("fourth").contains("a range: the clutches that it applies"));
        assertTrue(said("direct-clutch").contains("a part of the kind clutch"));
        assertTrue(said("spring-weak@relief").contains("--fault spring-weak@PART"));
        assertTrue(said("psi").contains("a pressure is given"));
    }

    @Test
    void whatIsNeitherAWordNorANameIsRefused() {
        Run run = Run.of("explain", "nosuchword");
        assertEquals(HotIdle.WRONG_INPUT, run.code(), run.out());
        assertTrue(run.err().contains("there is no word 'nosuchword' to explain"), run.err());
    }
}
