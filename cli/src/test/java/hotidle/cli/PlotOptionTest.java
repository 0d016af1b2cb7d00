package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import hotidle.plots.LineChart;
import hotidle.plots.Picture;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The picture of an answer, and the torque that a build is asked to hold. */
class PlotOptionTest {

    private static final Picture PICTURE = new Picture(List.of(new LineChart(
            "Flow",
            "of a gap",
            "drop [bar]",
            "flow [L/min]",
            "not known",
            List.of(new LineChart.Point(0, 0), new LineChart.Point(10, 2)))));

    @TempDir
    Path folder;

    private final StringWriter err = new StringWriter();

    private PlotOption plot(String... words) {
        return Options.of(new PlotOption(), words);
    }

    @Test
    void whereNoPictureIsAskedForNoneIsMade() {
        plot().check();
        plot().draw(() -> fail("it was made"), new PrintWriter(err, true));
        assertEquals("", err.toString());
    }

    @Test
    void whereThereIsNothingToDrawThatIsSaidAndNoFileIsLeft() {
        Path file = folder.resolve("a.svg");
        plot("--plot", file.toString()).draw(Optional::empty, new PrintWriter(err, true));
        assertTrue(err.toString().startsWith("not drawn: " + file + ": "), err.toString());
        assertFalse(Files.exists(file));
    }

    @Test
    void aPictureIsDrawnInItsSizeAndSaidToBeThere() throws Exception {
        Path file = folder.resolve("a.svg");
        plot("--plot", file.toString(), "--size", "800x600")
                .draw(() -> Optional.of(PICTURE), new PrintWriter(err, true));
        assertTrue(Files.readString(file).contains("viewBox=\"0 0 800 600\""));
        assertEquals("drawn: " + file, err.toString().strip());
    }

    @Test
    void fileAndSizeAreLookedAtBeforeAnythingIsSolved() {
        assertDoesNotThrow(
                () -> plot("--plot", folder.resolve("a.svg").toString()).check());
        assertThrows(
                WrongInputException.class,
                () -> plot("--plot", folder.resolve("a.txt").toString()).check());
        assertThrows(
                WrongInputException.class,
                () -> plot("--plot", folder.resolve("none").resolve("a.svg").toString())
                        .check());
        assertThrows(WrongInputException.class, () -> plot("--size", "wide").check());
    }

    @Test
    void theTorqueWantedIsAboveNothing() {
        assertTrue(Options.of(new WantedTorque()).torque().isEmpty());
        assertEquals(
                700 * 1.3558179483314,
                Options.of(new WantedTorque(), "--for", "700lbf.ft").torque().orElseThrow(),
                1e-6);
        for (String wrong : List.of("0N.m", "-5N.m")) {
            WantedTorque none = Options.of(new WantedTorque(), "--for=" + wrong);
            assertEquals(
                    "hotidle: --for " + wrong + " is no torque of an engine\nmend: write 700lbf.ft",
                    assertThrows(WrongInputException.class, none::torque).getMessage());
        }
        assertThrows(
                WrongInputException.class,
                () -> Options.of(new WantedTorque(), "--for", "700psi").torque());
    }
}
