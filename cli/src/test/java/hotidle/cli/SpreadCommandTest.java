package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** spread as a user meets it: whole, in parts, and streamed. */
class SpreadCommandTest {

    private static final String[] RIG = {
        "spread", "training-rig", "--unmeasured", "worn", "--samples", "1000", "--pairs", "30", "--format", "json"
    };

    @TempDir
    Path folder;

    private static Run run(String... more) {
        return Run.of(Stream.concat(Stream.of(RIG), Stream.of(more)).toArray(String[]::new));
    }

    private String[] joined(int parts) {
        List<String> options = new ArrayList<>();
        for (int part = 1; part <= parts; part++) {
            Path kept = folder.resolve("part-" + part);
            Run run = run("--part", part + "/" + parts, "--keep", kept.toString(), "--threads", "1");
            assertEquals(0, run.code(), run.err());
            options.add("--join");
            options.add(kept.toString());
        }
        return options.toArray(String[]::new);
    }

    @Test
    void tenPartsJoinedAnswerWhatTheWholeDoes() {
        Run whole = run("--threads", "2");
        assertEquals(0, whole.code(), whole.err());
        assertEquals(whole.out(), run(joined(10)).out());
    }

    @Test
    void aPartThatIsDamagedIsRefusedWithItsLine() throws Exception {
        String[] parts = joined(2);
        Path second = Path.of(parts[3]);
        String text = Files.readString(second);
        for (String damaged : List.of(
                text.substring(0, text.length() / 2),
                text.replaceFirst("REGULATION|LUBRICATION|COOLER|RELIEF|[A-Z]{5,}", "NOSUCH"),
                text.replaceFirst("\\n\\d+ \\d+", "\nx 1"),
                "")) {
            Files.writeString(second, damaged);
            Run run = run(parts);
            assertEquals(2, run.code(), run.err());
            assertTrue(run.err().contains("part-2"), run.err());
        }
    }

    @Test
    void eachUnitDrawnIsARowInTheOrderOfItsNumber() throws Exception {
        Path file = folder.resolve("draws.csv");
        assertEquals(0, run("--draws", file.toString(), "--threads", "2").code());
        List<String> lines = Files.readAllLines(file);
        assertEquals(1001, lines.size());
        assertTrue(lines.get(0).startsWith("unit,possible,unsolved,"), lines.get(0));
        for (int i = 0; i < 1000; i++) {
            assertTrue(lines.get(i + 1).startsWith(i + ",yes,"), lines.get(i + 1));
        }
    }

    @Test
    void aFullDiskIsSaidAsWhatItIs() {
        Run run = Run.of("spread", "training-rig", "--samples", "9000", "--pairs", "0", "--draws", "/dev/full");
        assertEquals(2, run.code(), run.err());
        assertFalse(run.err().contains("fault of the program"), run.err());
    }

    @Test
    void aBuildOfWhichAllIsMeasuredSaysSo() {
        Run run = Run.of("spread", "training-rig", "--build", "worn", "--samples", "20", "--pairs", "2");
        assertTrue(run.code() == 0 && !run.out().contains("null"), run.out() + run.err());
    }
}
