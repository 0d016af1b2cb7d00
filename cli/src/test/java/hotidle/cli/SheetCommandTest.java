package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetCommandTest {

    @TempDir
    Path folder;

    private Path filled() throws Exception {
        Path file = folder.resolve("bus-12.csv");
        Run run = Run.of("sheet", "shuttle-five", "--out", file.toString(), "--units", "metric");
        assertEquals(0, run.code(), run.err());
        String blank = ",14.02,14.055,14,,,,mm,,,,,,,,";
        Files.writeString(
                file, Files.readString(file).replaceFirst(blank, ",14.02,14.055,14,,,,mm,\"14,061\",,,,mm,,J. D.,"));
        return file;
    }

    @Test
    void aFilledSheetIsABuildInEveryCommandAndBlanksAreListedAsAssumed() throws Exception {
        String sheet = filled().toString();
        Run check = Run.of("check", "shuttle-five", "--sheet", sheet, "--full");
        assertEquals(0, check.code(), check.err());
        assertTrue(check.out().contains("build bus-12: 1 of "), check.out());
        assertTrue(check.out()
                .lines()
                .anyMatch(line -> line.matches("manual-valve-front.bore .* 0.5536 in +past its limit by 0.24 thou")));
        assertTrue(check.out()
                .lines()
                .anyMatch(line ->
                        line.startsWith("manual-valve-rear.bore") && line.endsWith("not measured: assumed new")));
        Run sweep = Run.of("sweep", "shuttle-five", "--sheet", sheet, "--speed", "650rpm");
        assertTrue(sweep.out().startsWith("shuttle-five, bus-12, hot-idle"), sweep.out());
        assertTrue(sweep.err().contains("all others assumed new"));
        Run leaks = Run.of("leaks", "shuttle-five", "--sheet", sheet, "--speed", "600..800/200rpm", "--steps", "1");
        assertTrue(leaks.out().contains("bus-12 at hot-idle"), leaks.out());
        assertTrue(leaks.err().contains("all others assumed new"));
    }

    @Test
    void aSheetThatIsThereAlreadyIsNeverWrittenOver() throws Exception {
        Path file = filled();
        String before = Files.readString(file);
        Run run = Run.of("sheet", "shuttle-five", "--out", file.toString());
        assertEquals(HotIdle.WRONG_INPUT, run.code());
        assertTrue(run.err().contains("there already"), run.err());
        assertEquals(before, Files.readString(file));
        assertEquals(
                HotIdle.WRONG_INPUT,
                Run.of("check", "shuttle-five", "--sheet", "no-such.csv").code());
    }

    @Test
    void withoutAFileTheSheetIsPrintedAsItWouldBeWritten() throws Exception {
        Path file = folder.resolve("rig.csv");
        Run.of("sheet", "training-rig", "--out", file.toString());
        Run printed = Run.of("sheet", "training-rig");
        assertEquals(HotIdle.DONE, printed.code(), printed.err());
        assertEquals(
                Files.readString(file), "\uFEFF" + printed.out(), "the file has a mark for spreadsheets before it");
        assertEquals("", printed.err());
    }

    @Test
    void faultsOfASheetAreCountedUnderItsNameAndThoseOfTheCircuitUnderIts() throws Exception {
        Path sheet = filled();
        Files.writeString(sheet, Files.readString(sheet).replace("14,061", "fourteen"));
        Run run = Run.of("check", "shuttle-five", "--sheet", sheet.toString());
        assertEquals(HotIdle.WRONG_INPUT, run.code());
        assertTrue(run.err().strip().endsWith("\n" + sheet + ": 1 error"), run.err());
        Path circuit = folder.resolve("own.yaml");
        String text = hotidle.circuits.Library.text("shuttle-five").orElseThrow();
        Files.writeString(circuit, text.replace("filter, from: sump, to: suction", "filter, from: sump, to: section"));
        Run both = Run.of("check", circuit.toString(), "--sheet", sheet.toString());
        assertTrue(both.err().strip().endsWith(sheet + ": 1 error"), both.err());
        assertTrue(both.err().contains("\n" + circuit + ": "), both.err());
    }

    @Test
    void whatAFinishedUnitIsToReadIsAskedAfterItsJobsAndItsNewPressure() {
        Run worn = Run.of("sheet", "shuttle-five", "--build", "worn", "--expected");
        Run done = Run.of("sheet", "shuttle-five", "--build", "worn", "--job", "pump", "--set", "240psi", "--expected");
        assertEquals(HotIdle.DONE, done.code(), done.err());
        assertTrue(done.err().contains("After the job pump, set to 240 psi"), done.err());
        assertTrue(soundTo(done.out()) > 1.4 * soundTo(worn.out()), done.out());
    }

    /** The upper end of what the line reads in the first row. */
    private static double soundTo(String sheet) {
        String[] cells = sheet.lines().skip(1).findFirst().orElseThrow().split(",", -1);
        return Double.parseDouble(cells[cells.length - 1]);
    }

    @Test
    void aBlankSheetAsksNothingOfABuildAndNoSheetIsOfAFault() {
        for (String option : java.util.List.of("--job", "--set", "--build")) {
            Run run = Run.of("sheet", "shuttle-five", option, option.equals("--set") ? "200psi" : "pump");
            assertEquals(HotIdle.WRONG_INPUT, run.code());
            assertTrue(run.err().contains(option + " goes with --readings or --expected"), run.err());
        }
        Run fault = Run.of("sheet", "shuttle-five", "--expected", "--fault", "oil-aerated:8%");
        assertEquals(HotIdle.WRONG_INPUT, fault.code());
        assertTrue(fault.err().contains("hotidle sweep shuttle-five --fault oil-aerated:8% --plot-taps"), fault.err());
    }

    @Test
    void checkSaysHowMuchOfASheetIsFilledInAndDoesNotSendTheReaderToItself() throws Exception {
        Run check = Run.of("check", "shuttle-five", "--sheet", filled().toString(), "--full");
        assertTrue(check.out().contains("all others assumed new\n"), check.out());
        assertTrue(!check.out().contains("hotidle check"), check.out());
    }
}
