package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A line far above its command is no regulated line, and what a new user missed beside it. */
class TooHighTest {

    @TempDir
    Path folder;

    private static String said(String... args) {
        Run run = Run.of(args);
        assertEquals(0, run.code(), run.err());
        return run.out().replaceAll("\\s+", " ");
    }

    /** A spring ten times too stiff keeps the slide of the pump where it displaces most. */
    @Test
    void aSlideThatDoesNotMoveShowsAsALineFarAboveItsCommandAndAtFullDisplacement() throws Exception {
        String file = Run.changed(folder, "vane-six", "preload: 160 N", "preload: 1600 N");
        String compare = said("compare", "--full", file, "--build", "fresh");
        assertTrue(
                compare.contains("At road-cruise the line stands at 136 psi, far above the 108 psi commanded"),
                compare);
        assertTrue(compare.contains("pump slide, share of full displacement [%] 100.0"), compare);
        String margins = said("margins", "--full", file, "--build", "fresh");
        assertTrue(margins.contains("Here the line stands at"), margins);
        String sound = said("compare", "--full", "vane-six", "--build", "fresh");
        assertFalse(sound.contains("far above"), sound);
        assertFalse(sound.contains("share of full displacement [%] 100.0"), sound);
    }

    /** A limit valve of the lubrication that is open does its work; it does not hold the line. */
    @Test
    void anOpenLimitValveBehindTheCoolerIsNoOpenReliefValve() throws Exception {
        String limit = "\n  lube-limit: {kind: relief-valve, from: lube, to: sump, seat: 8 mm, spring-rate: 5 N/mm,"
                + " cracking-pressure: 1 psi, lift: 2 mm}\n\ngearsets:\n";
        String file = Run.changed(folder, "crescent-four", "\ngearsets:\n", limit);
        String compare = said("compare", "--full", file, "--build", "fresh");
        assertFalse(compare.contains("relief open"), compare);
        assertTrue(compare.contains("regulator regulating"), compare);
        assertTrue(said("leaks", "--full", file, "--build", "fresh", "--steps", "0")
                .contains("spilled by relief and limit valves"));
    }

    /** The slowest duty point of the circuit runs at 700 rpm, and its film is thinnest at the lowest speed looked at. */
    @Test
    void theHubIsNotFailedForASpeedAtWhichTheUnitNeverRuns() {
        List<String> films = Run.of("margins", "--full", "crescent-four", "--format", "csv")
                .out()
                .lines()
                .filter(line -> line.contains(",film,hub-bushing,"))
                .toList();
        assertEquals(5, films.size());
        films.forEach(line -> assertEquals(700, Double.parseDouble(line.split(",", -1)[9]), 1, line));
        Run asked = Run.of("margins", "--full", "crescent-four", "--format", "csv", "--speed", "400..1000/100rpm");
        assertTrue(asked.out().lines().anyMatch(line -> line.contains(",film,hub-bushing,") && line.contains(",400,")));
    }
}
