package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PictureSizeTest {

    @TempDir
    Path folder;

    private String gap(String... size) throws IOException {
        Path file = folder.resolve("gap.svg");
        String[] words = new String[10 + size.length];
        System.arraycopy(
                new String[] {
                    "part",
                    "annular-gap",
                    "bore=14.06mm",
                    "valve=14mm",
                    "length=8mm",
                    "--drop",
                    "150psi",
                    "--plot",
                    file.toString(),
                    "--vary=length=1..12mm"
                },
                0,
                words,
                0,
                10);
        System.arraycopy(size, 0, words, 10, size.length);
        Run run = Run.of(words);
        assertEquals(0, run.code(), run.err());
        return Files.readString(file);
    }

    @Test
    void aPictureHasTheSizeAskedForAndItsLettersTheirs() throws IOException {
        assertTrue(gap().contains("viewBox=\"0 0 1200 800\""));
        assertTrue(gap("--size", "slide").contains("viewBox=\"0 0 960 540\""));
        String large = gap("--size", "1600x900");
        assertTrue(large.contains("viewBox=\"0 0 1600 900\""));
        assertFalse(large.matches("(?s).*font-size=\"(\\d|1[01])(px)?\".*"), "no letter below 12 px");
    }

    @Test
    void itsTitleSaysHowTheFlowFallsWithTheLength() throws IOException {
        String svg = gap();
        assertTrue(
                svg.matches(
                        "(?s).*<title>Flow of an annular-gap: 0\\.64 gpm at length 1 mm, 0\\.09 gpm at 12 mm</title>.*"),
                svg.substring(0, 600));
    }
}
