package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** new as a user meets it. */
class NewCommandTest {

    @Test
    void answersOfAFileMakeAUnitThatCheckPassesAndCountsAsAssumed(@TempDir Path folder) throws Exception {
        Path answers = Files.writeString(
                folder.resolve("a.csv"), "question,answer\ndisplacement,24 cm3/rev\nset-pressure,185 psi\nbores,\n");
        Path file = folder.resolve("bus.yaml");
        Run made = Run.of(
                "new", "bus", "--like", "crescent-four", "--answers", answers.toString(), "--out", file.toString());
        assertEquals(HotIdle.DONE, made.code(), made.err());
        Run check = Run.of("check", file.toString());
        assertEquals(HotIdle.DONE, check.code(), check.err());
        assertEquals("", check.err());
        assertTrue(check.out().contains("assumed (~): "), check.out());
        Run again = Run.of("new", "bus", "--like", "crescent-four", "--out", file.toString());
        assertEquals(HotIdle.WRONG_INPUT, again.code());
        assertTrue(again.err().contains("is there already"), again.err());
    }

    @Test
    void asksWhatIsNotAnsweredAndTakesEmptyLinesAsTheyAre(@TempDir Path folder) throws Exception {
        InputStream before = System.in;
        System.setIn(new ByteArrayInputStream("24 cm3/rev\n\n180 psi\n".getBytes(StandardCharsets.UTF_8)));
        try {
            Path file = folder.resolve("bus.yaml");
            Run made = Run.of("new", "bus", "--like", "vane-six", "--ask", "--out", file.toString());
            assertEquals(HotIdle.DONE, made.code(), made.err());
            assertTrue(made.err().contains("displacement, of the pump"), made.err());
            assertTrue(Files.readString(file).contains("180 psi"), Files.readString(file));
        } finally {
            System.setIn(before);
        }
    }

    @Test
    void aWrongAnswerIsToldWithItsQuestion(@TempDir Path folder) {
        String out = folder.resolve("x.yaml").toString();
        Run idle = Run.of("new", "x", "--like", "vane-six", "--idle-pressure", "20psi", "--out", out);
        assertEquals(HotIdle.WRONG_INPUT, idle.code());
        assertTrue(idle.err().startsWith("hotidle: --idle-pressure: it must lie between"), idle.err());
        Run name = Run.of("new", "My Bus", "--like", "vane-six");
        assertTrue(name.err().contains("mend: write bus-12"), name.err());
        Run like = Run.of("new", "x", "--like", "nosuch");
        assertTrue(like.err().contains("ready circuits: crescent-four"), like.err());
    }
}
