package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is said where a speed, a file or the output cannot be. */
class OutputAndFilesTest {

    private record Lost(int code, String said) {}

    private static Lost lost(String reason) {
        KeptOutput kept = new KeptOutput(new OutputStream() {
            @Override
            public void write(int one) throws IOException {
                throw new IOException(reason);
            }
        });
        StringWriter err = new StringWriter();
        int code = HotIdle.run(new PrintWriter(kept, false, StandardCharsets.UTF_8), new PrintWriter(err), "list");
        return new Lost(kept.checked(code, new PrintWriter(err)), err.toString());
    }

    @Test
    void whatAFullDiskLosesIsSaid() {
        Lost full = lost("No space left on device");
        assertEquals(HotIdle.WRONG_INPUT, full.code());
        assertTrue(full.said().contains("some of it is lost: No space left on device"), full.said());
    }

    @Test
    void whoClosesThePipeEarlyHasSeenEnough() {
        assertEquals(new Lost(HotIdle.DONE, ""), lost("Broken pipe"));
    }

    @Test
    void aSpeedBelowZeroIsRefusedWherever() {
        for (String command : new String[] {"sweep", "margins", "compare"}) {
            Run run = Run.of(command, "vane-six", "--speed=-500rpm");
            assertEquals(HotIdle.WRONG_INPUT, run.code(), run.err());
            assertTrue(run.err().contains("a speed is not below zero"), run.err());
        }
        assertEquals(
                HotIdle.WRONG_INPUT,
                Run.of("sweep", "vane-six", "--speed=-500..1000/500rpm").code());
    }

    @Test
    void aNameThatTheLocaleCannotWriteIsTheInputsFault() {
        Run run = Run.of("check", "a\0b.yaml");
        assertEquals(HotIdle.WRONG_INPUT, run.code());
        assertTrue(run.err().contains("UTF-8 locale"), run.err());
        for (String option : new String[] {"--sheet", "--plot"}) {
            Run wrong = Run.of("sweep", "vane-six", option, "a\0b.csv");
            assertEquals(HotIdle.WRONG_INPUT, wrong.code());
            assertTrue(wrong.err().contains("UTF-8 locale") && !wrong.err().contains("Exception"), wrong.err());
        }
    }

    @Test
    void aSheetAndANewUnitNeverOverwrite(@TempDir Path folder) throws Exception {
        String there = Files.writeString(folder.resolve("there"), "filled in").toString();
        Run sheet = Run.of("sheet", "vane-six", "--out", there);
        Run made = Run.of("new", "own", "--like", "vane-six", "--out", there);
        assertEquals(HotIdle.WRONG_INPUT, sheet.code());
        assertEquals(sheet.err(), made.err());
        assertEquals("filled in", Files.readString(folder.resolve("there")));
    }

    @Test
    void aPictureNeedsNoTemporaryFolder(@TempDir Path folder) {
        String before = System.getProperty("java.io.tmpdir");
        System.setProperty("java.io.tmpdir", folder.resolve("nosuch").toString());
        try {
            Path png = folder.resolve("x.png");
            Run run = Run.of("sweep", "vane-six", "--speed", "500..1500/500rpm", "--plot", png.toString());
            assertEquals(HotIdle.DONE, run.code(), run.err());
            assertTrue(Files.exists(png));
        } finally {
            System.setProperty("java.io.tmpdir", before);
        }
    }
}
