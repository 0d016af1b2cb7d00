package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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
        System.setIn(new ByteArrayInputStream(("24 cm3/rev\n\n180 psi\n" + REST).getBytes(StandardCharsets.UTF_8)));
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
        assertTrue(idle.err().startsWith("hotidle: --idle-pressure: a gauge at hot-idle can read from"), idle.err());
        Run name = Run.of("new", "My Bus", "--like", "vane-six");
        assertTrue(name.err().contains("mend: write bus-12"), name.err());
        Run like = Run.of("new", "x", "--like", "nosuch");
        assertTrue(like.err().contains("ready circuits: crescent-four"), like.err());
    }

    /** Enter for all questions that are left. */
    private static final String REST = "\n".repeat(16);

    /** Who feeds answers by a pipe that ends early has not kept what stands in brackets. */
    @Test
    void theEndOfAPipeIsNoEnterAndNamesTheQuestionThatIsOpen(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("bus.yaml");
        String[] ask = {"new", "bus", "--like", "crescent-four", "--ask", "--out", file.toString()};
        Run none = typed("", ask);
        assertEquals(HotIdle.WRONG_INPUT, none.code());
        assertTrue(none.err().contains("the answers end before question 1 of 16, displacement"), none.err());
        assertTrue(Files.notExists(file) && Files.notExists(folder.resolve("bus-answers.csv")));
        Run two = typed("24 cm3/rev\n\n", ask);
        assertEquals(HotIdle.WRONG_INPUT, two.code());
        assertTrue(two.err().contains("the answers end before question 3 of 16, set-pressure"), two.err());
        assertTrue(two.err().contains("--ask --answers"), two.err());
        assertTrue(Files.notExists(file));
    }

    private static Run typed(String lines, String... words) {
        InputStream before = System.in;
        System.setIn(new ByteArrayInputStream(lines.getBytes(StandardCharsets.UTF_8)));
        try {
            return Run.of(words);
        } finally {
            System.setIn(before);
        }
    }

    /** Where nobody can be asked again the next line answers the next question; what is right is kept, what is not is told at the end. */
    @Test
    void answersAreKeptWhereOneCannotBeTakenAndTheAskingGoesOnFromThem(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("bus.yaml");
        Path kept = folder.resolve("bus-answers.csv");
        String[] ask = {"new", "bus", "--like", "crescent-four", "--ask", "--out", file.toString()};
        Run wrong = typed("24 cm3/rev\n\n170 psi\n5 psi\n650\n" + REST, ask);
        assertEquals(HotIdle.WRONG_INPUT, wrong.code());
        assertTrue(wrong.err().contains("--idle-pressure: a gauge at hot-idle can read from 2"), wrong.err());
        assertTrue(wrong.err().contains("--ask: 2 answers cannot be taken"), wrong.err());
        assertTrue(wrong.err().contains("--idle-speed 650, a number without its unit"), wrong.err());
        assertTrue(
                wrong.err().replaceAll("\\s+", " ").contains("--ask --answers " + kept + " asks for the others alone"),
                wrong.err());
        assertEquals("question,answer\r\ndisplacement,24 cm3/rev\r\nset-pressure,170 psi\r\n", Files.readString(kept));
        Run again = typed("", ask);
        assertTrue(again.err().contains("is there already, with the answers of another time"), again.err());
        Run done = typed(
                "\n62 psi\n" + REST,
                "new",
                "bus",
                "--like",
                "crescent-four",
                "--ask",
                "--answers",
                kept.toString(),
                "--out",
                file.toString());
        assertEquals(HotIdle.DONE, done.code(), done.err());
        assertTrue(done.err().contains("2 of 14  idle-pressure"), done.err());
        assertTrue(done.out().contains("As sound, with all fits new"), done.out());
        assertTrue(done.out().contains("Next, in this order:\n"), done.out());
        assertTrue(done.out().lines().count() <= 24, done.out());
        assertTrue(Files.readString(kept).contains("idle-pressure,62 psi"));
    }

    @Test
    void rangesAreAskedWithWhatTheyApplyAndPromptsShowOneNumberInTheUnitsOfTheUser(@TempDir Path folder) {
        Run asked = typed(
                "\n\n\n\n\n\n\n\nreverse,first,second,third\nnone\n",
                "new",
                "bus",
                "--like",
                "crescent-four",
                "--ask",
                "--units",
                "metric",
                "--displacement",
                "1.3in3/rev",
                "--out",
                folder.resolve("bus.yaml").toString());
        assertTrue(asked.err().contains("fourth   forward-clutch, direct-clutch, overdrive-clutch"), asked.err());
        assertTrue(
                asked.err().contains("3 clutches (forward-clutch, direct-clutch, low-reverse-brake); 1 band"),
                asked.err());
        assertTrue(
                asked.err().contains("2 of 15  set-pressure, highest line pressure forward [9.83 bar]: "), asked.err());
        assertTrue(asked.err().contains("--clutch none: write its name and its area"), asked.err());
        assertTrue(asked.err().contains("[forward-clutch=10,direct-clutch=10,low-reverse-brake=18]"), asked.err());
    }

    /** Who is not asked for the pressure in reverse is told that, and why. */
    @Test
    void aQuestionThatTheReadyUnitHasNoAnswerToIsNamedWithItsReason(@TempDir Path folder) {
        Run asked = typed(
                "",
                "new",
                "x",
                "--like",
                "vane-six",
                "--ask",
                "--out",
                folder.resolve("x.yaml").toString());
        String said = asked.err().replaceAll("\\s+", " ");
        assertTrue(
                said.contains(
                        "Not asked: reverse-pressure, for vane-six has no area of its regulator that is drained in"
                                + " reverse, so that reverse has the line pressure of any range."),
                said);
        assertTrue(said.contains("Not asked: hub-diameter, for vane-six has no bushing on the pump's hub."), said);
    }

    @Test
    void everyCommandThatIsNamedAsNextRunsInItsOrder(@TempDir Path folder) {
        Path file = folder.resolve("bus.yaml");
        Run made = Run.of("new", "bus", "--like", "crescent-four", "--out", file.toString());
        List<String> next = made.out()
                .lines()
                .filter(line -> line.contains("  hotidle "))
                .map(line -> line.substring(line.indexOf("hotidle ") + 8))
                .toList();
        assertEquals(
                List.of("sheet", "check", "compare", "margins", "leaks"),
                next.stream().map(line -> line.substring(0, line.indexOf(' '))).toList());
        for (String line : next) {
            Run run = Run.of(line.split(" ", -1));
            assertEquals(HotIdle.DONE, run.code(), line + "\n" + run.err());
        }
    }

    @Test
    void everyWrongAnswerIsToldAtOnce(@TempDir Path folder) {
        Run wrong = Run.of(
                "new",
                "x",
                "--like",
                "vane-six",
                "--displacement",
                "25",
                "--bores",
                "many",
                "--idle-pressure",
                "20psi",
                "--reverse-pressure",
                "200psi",
                "--out",
                folder.resolve("x.yaml").toString());
        assertEquals(HotIdle.WRONG_INPUT, wrong.code());
        for (String told : new String[] {
            "--displacement 25, a number without its unit",
            "cm3/rev, in3/rev",
            "--bores many",
            "--idle-pressure: a gauge at hot-idle can read",
            "--reverse-pressure: vane-six has no area"
        }) {
            assertTrue(wrong.err().contains(told), told + " in " + wrong.err());
        }
    }
}
