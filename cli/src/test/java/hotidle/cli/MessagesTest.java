package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.Library;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a shop reads when something is wrong: one clear message each, exit code 2, no stack trace, no half-made file. */
class MessagesTest {

    @TempDir
    Path folder;

    /** The ready circuit with one text changed, written to a file. */
    private Path changed(String from, String to) throws IOException {
        String text = Library.text("shuttle-five").orElseThrow();
        assertTrue(text.contains(from), from);
        Path file = folder.resolve("shop.yaml");
        Files.writeString(file, text.replaceFirst(Pattern.quote(from), to), StandardCharsets.UTF_8);
        return file;
    }

    private static int lineOf(Path file, String text) throws IOException {
        return Files.readAllLines(file).stream()
                        .map(line -> line.contains(text))
                        .toList()
                        .indexOf(true)
                + 1;
    }

    private static void assertOneMessage(Run run, String start, String... says) {
        assertEquals(HotIdle.WRONG_INPUT, run.code(), run.err());
        assertTrue(run.err().startsWith(start), run.err());
        for (String word : says) {
            assertTrue(run.err().contains(word), word + " is not in: " + run.err());
        }
        assertEquals(1, run.err().split(": error: ", -1).length - 1, run.err());
        assertFalse(run.err().contains("\tat ") || run.err().contains("Exception"), run.err());
        assertEquals("", run.out());
    }

    @Test
    void malformedFileIsNamedWithLineAndColumn() throws IOException {
        Path file = changed("nodes:\n  sump: {held: 0 psi", "nodes:\n  sump: {held: 0 psi, [");
        Run run = Run.of("compare", file.toString());
        assertOneMessage(run, file + ":" + lineOf(file, "sump: {held: 0 psi, ["));
    }

    @Test
    void unknownBuildIsAnsweredWithTheNearestName() {
        Run run = Run.of("compare", "shuttle-five", "--build", "wrn");
        assertOneMessage(run, "shuttle-five.yaml:", "worn", "restored-raised");
        assertTrue(run.err().matches("(?s)shuttle-five.yaml:\\d+:\\d+: error: .*"), run.err());
    }

    @Test
    void bareNumberWithoutAUnitSaysWhatToWrite() throws IOException {
        Path file = changed("diameter: 2.6 mm, length: 1.2 mm, region", "diameter: 2.6, length: 1.2 mm, region");
        Run run = Run.of("sweep", file.toString());
        assertOneMessage(run, file + ":" + lineOf(file, "diameter: 2.6,") + ":", "unit", "2.6 mm");
    }

    @Test
    void valveWiderThanItsBoreIsRefused() throws IOException {
        Path file = changed("valve: 14.000 mm, length: 9 mm", "valve: 14.200 mm, length: 9 mm");
        Run run = Run.of("sweep", file.toString());
        assertOneMessage(run, file + ":" + lineOf(file, "valve: 14.200 mm") + ":", "manual-valve-front");
    }

    @Test
    void unknownCircuitListsTheReadyOnes() {
        Run run = Run.of("compare", "shutle-five");
        assertEquals(HotIdle.WRONG_INPUT, run.code());
        assertTrue(run.err().contains("shuttle-five"), run.err());
    }

    @Test
    void theNearestNameIsOffered() {
        String[][] slips = {
            {"swep", "shuttle-five", "did you mean sweep?"},
            {"sweep", "shuttle-five", "--bild=worn", "did you mean --build"},
            {"sweep", "shuttle-five", "--speed=fast", "write --speed 650rpm"},
            {"sweep", "shuttle-five", "--speed=500..600rpm", "write --speed 500..3500/50rpm"},
            {"sweep", "shuttle-five", "--units=imperial", "write shop"},
            {"sweep", "shuttle-five", "--format=cvs", "did you mean csv?"},
            {"sweep", "shuttle-five", "worn", "an option begins with --"},
            {"sweep", "shuttle-five", "--plot=x.gif", ".png, .svg or .pdf"}
        };
        for (String[] slip : slips) {
            Run run = Run.of(java.util.Arrays.copyOf(slip, slip.length - 1));
            assertEquals(HotIdle.WRONG_INPUT, run.code());
            assertTrue(run.err().contains(slip[slip.length - 1]), run.err());
        }
    }

    @Test
    void wrongOptionsAreAnsweredInOneLineWithTheWayToHelp() {
        for (String[] wrong : new String[][] {
            {"sweep", "shuttle-five", "--set", "270"},
            {"sweep", "shuttle-five", "--set", "270mm"},
            {"sweep", "shuttle-five", "--set", "0psi"},
            {"sweep", "shuttle-five", "--set=-50psi"},
            {"sweep", "shuttle-five", "--set", "1e9psi"},
            {"sweep", "shuttle-five", "--temperature", "400degC"},
            {"sweep", "shuttle-five", "--temperature=-300degC"},
            {"sweep", "shuttle-five", "--speed", "30000rpm"},
            {"sweep", "shuttle-five", "--speed", "650rpm", "--plot", "one.png"},
            {"sweep", "shuttle-five", "--plot", "/no/such/folder/x.png", "--speed", "600..700/100rpm"},
            {"check", "."},
            {"sweep", "shuttle-five", "--speed", "fast"},
            {"sweep", "shuttle-five", "--range", "sixth"},
            {"sweep", "shuttle-five", "--duty", "warm-idle"},
            {"sweep", "shuttle-five", "--format", "xml"},
            {"sweep"},
            {"swep", "shuttle-five"},
            {"sweep", "shuttle-five", "--sped", "500rpm"}
        }) {
            Run run = Run.of(wrong);
            assertEquals(HotIdle.WRONG_INPUT, run.code(), String.join(" ", wrong) + run.err());
            assertFalse(run.err().contains("\tat ") || run.err().contains("Exception"), run.err());
            assertTrue(run.err().length() > 20 && run.out().isEmpty(), run.err());
        }
    }

    @Test
    void pictureOfAnUnknownKindLeavesNoFile() throws IOException {
        Path file = folder.resolve("picture.gif");
        Run run = Run.of("sweep", "shuttle-five", "--speed", "1000..1100/100rpm", "--plot", file.toString());
        assertEquals(HotIdle.WRONG_INPUT, run.code());
        assertTrue(run.err().contains("png") && run.err().contains("svg"), run.err());
        try (var files = Files.list(folder)) {
            assertEquals(0, files.count());
        }
    }
}
