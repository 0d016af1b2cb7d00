package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.Library;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** In which units a user reads pressures who does not say so each time. */
class UnitsSettingTest {

    @TempDir
    Path folder;

    @AfterEach
    void asBefore() {
        System.clearProperty(UnitsOption.PROPERTY);
    }

    private Path metricRig() throws Exception {
        Path file = folder.resolve("rig.yaml");
        Files.writeString(
                file, Library.text("training-rig").orElseThrow().replaceFirst("(?m)^oil: ", "units: metric\noil: "));
        return file;
    }

    private static Run sweep(Object circuit, String... more) {
        String[] words = {"sweep", circuit.toString(), "--speed", "600rpm"};
        String[] all = java.util.Arrays.copyOf(words, words.length + more.length);
        System.arraycopy(more, 0, all, words.length, more.length);
        return Run.of(all);
    }

    @Test
    void aFileMaySayItsUnits() throws Exception {
        assertTrue(sweep(metricRig()).out().contains("line bar"));
        assertTrue(sweep("training-rig").out().contains("line psi"));
        assertTrue(Run.of("check", metricRig().toString()).out().contains("cm3/rev"));
    }

    @Test
    void theUsersOwnSettingGoesBeforeTheFilesAndWhatIsAskedForBeforeBoth() throws Exception {
        System.setProperty(UnitsOption.PROPERTY, "si");
        assertTrue(sweep(metricRig()).out().contains("line Pa"));
        assertTrue(sweep(metricRig(), "--units", "shop").out().contains("line psi"));
    }

    /** A spreadsheet that was built on psi is not fed with bar because somebody set his screen. */
    @Test
    void noSettingTouchesWhatAProgramReads() throws Exception {
        String csv = sweep(metricRig(), "--format", "csv").out();
        assertTrue(csv.contains("line psi"), csv);
        System.setProperty(UnitsOption.PROPERTY, "metric");
        assertEquals(csv, sweep(metricRig(), "--format", "csv").out());
        assertTrue(
                sweep(metricRig(), "--format", "csv", "--units", "metric").out().contains("line bar"));
    }

    @Test
    void aSettingThatIsNoSystemOfUnitsIsRefusedByItsName() {
        System.setProperty(UnitsOption.PROPERTY, "imperial");
        Run run = sweep("training-rig");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("the setting HOTIDLE_UNITS is imperial"), run.err());
        assertTrue(run.err().contains("mend: set it to shop, metric or si"), run.err());
    }
}
