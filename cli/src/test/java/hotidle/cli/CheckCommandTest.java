package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.Library;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What check says of a file that can be used: worn past limits, clutches of which nothing is judged. */
class CheckCommandTest {

    @TempDir
    Path folder;

    private static List<String> about(String size, List<String> lines) {
        return lines.stream().filter(line -> line.startsWith(size + " ")).toList();
    }

    @Test
    void aSizeMeasuredPastItsLimitIsMarkedBesideBothAndCounted() {
        List<String> said = Run.of("check", "valve-body-bench", "--units", "metric", "--full")
                .out()
                .lines()
                .toList();
        assertTrue(
                about("manual-front.bore", said).get(0).matches(".* 14.055 mm +14.061 mm +past its limit by 6.0 um"),
                said.toString());
        assertTrue(about("manual-rear.bore", said).get(0).endsWith("14.048 mm"), said.toString());
        // front land, boost land, 1-2 and 4-5 valves lie past theirs; the build 'sleeved' mends just these
        assertTrue(
                said.stream().anyMatch(line -> line.matches("4 of \\d+ measured past the wear limit")),
                said.toString());
    }

    @Test
    void withASheetItIsTheSheetThatLiesPastALimit() throws IOException {
        Path sheet = folder.resolve("body-7.csv");
        Files.writeString(sheet, "part,size,measured bore,measured valve,unit\nmanual-rear,bore,14.060,13.99,mm\n");
        List<String> said = Run.of(
                        "check", "valve-body-bench", "--sheet", sheet.toString(), "--units", "metric", "--full")
                .out()
                .lines()
                .toList();
        assertTrue(
                about("manual-rear.bore", said).get(0).matches(".* 14.060 mm +past its limit by 5.0 um"),
                said.toString());
        assertTrue(about("manual-front.bore", said).get(0).endsWith("not measured: assumed new"), said.toString());
        assertTrue(
                said.stream().anyMatch(line -> line.matches("1 of \\d+ measured past the wear limit")),
                said.toString());
    }

    @Test
    void aClutchThatNoDutyPointAppliesIsNamedAsNotJudgedWithItsRanges() throws IOException {
        Run four = Run.of("check", "crescent-four");
        assertTrue(!four.out().contains("Not judged"), four.out());
        Path file = folder.resolve("own.yaml");
        String text = Library.text("crescent-four").orElseThrow();
        Files.writeString(file, text.replace("range: fourth\n", "range: second\n"));
        Run own = Run.of("check", file.toString());
        assertEquals(HotIdle.DONE, own.code(), own.err());
        assertTrue(
                own.out().contains("Not judged, since no driving condition is in a range that applies it:"), own.out());
        assertTrue(own.out().contains("overdrive-clutch (fourth)"), own.out());
        assertTrue(!Run.of("check", "training-rig").out().contains("Not judged"));
    }
}
