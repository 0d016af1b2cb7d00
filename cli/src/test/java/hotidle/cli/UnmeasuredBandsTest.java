package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Wrap;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The leading answers carry a band where a sheet is half filled in. */
class UnmeasuredBandsTest {

    @TempDir
    Path folder;

    private static Run compare(String... more) {
        return Run.of(java.util.stream.Stream.concat(
                        java.util.stream.Stream.of("compare", "shuttle-five", "--speed", "400..3000/200rpm"),
                        java.util.stream.Stream.of(more))
                .toArray(String[]::new));
    }

    @Test
    void aSheetHalfFilledInHasABandAndABuildAllMeasuredHasNone() throws Exception {
        Path sheet = Files.writeString(
                folder.resolve("bus-12.csv"),
                "part,size,measured bore,measured valve,unit\nregulator,bore,20.050,,mm\nlockup-valve,bore,14.052,,mm\n");
        Run half = compare("--sheet", sheet.toString(), "--build", "bus-12", "--build", "fresh");
        String said = half.out().replaceAll("\\s+", " ");
        assertTrue(said.contains("are not measured and count as new above"), half.out() + half.err());
        assertTrue(said.contains("such units would hold from"), said);
        assertTrue(said.contains("an estimate, rather too narrow"), said);
        assertTrue(half.out().lines().count() <= Wrap.LINES, half.out());
        assertFalse(compare("--build", "worn").out().contains("such units would"));
    }
}
