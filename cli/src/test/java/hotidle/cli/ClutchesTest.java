package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hotidle.circuits.Library;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A clutch burns where it slips and where it is on though it should be off: every command that compares or judges says so. */
class ClutchesTest {

    @TempDir
    Path folder;

    private static String said(String... args) {
        return Run.of(args).out().replaceAll("\\s+", " ");
    }

    /** A blown gasket of 3 mm against a vent of 3 mm; the spring of 850 N on 190 cm² yields at 6 psi. */
    @Test
    void aClutchThatACrossLeakFillsIsOnThoughItsRangeDoesNotApplyIt() throws Exception {
        String leak = "\n  cross-leak: {kind: orifice, from: line, to: low-reverse, diameter: 3 mm}\n\ngearsets:\n";
        String file = Run.changed(folder, "crescent-four", "\ngearsets:\n", leak);
        String words = said("margins", "--full", file, "--build", "fresh");
        assertTrue(words.contains("fresh: FAILS. low-reverse-brake carries"), words);
        assertTrue(words.contains("though first does not apply it: its return spring yields at 6 psi"), words);
        assertTrue(said("compare", "--full", file, "--build", "fresh").contains("low-reverse-brake carries"));
        String csv = Run.of("margins", "--full", file, "--build", "fresh", "--format", "csv")
                .out();
        assertTrue(csv.lines().anyMatch(line -> line.startsWith("fresh,hot-idle,clutch-off,low-reverse-brake,")), csv);
        JsonNode states = new ObjectMapper()
                .readTree(Run.of("margins", "--full", file, "--build", "fresh", "--format", "json")
                        .out())
                .at("/builds/0/states");
        for (JsonNode state : states) {
            boolean reverse = state.get("duty").asText().equals("backing-up");
            assertEquals(
                    reverse ? 0 : 1,
                    state.get("clutch_on_though_not_applied_pa").size(),
                    state.get("duty") + "");
        }
        assertFalse(said("margins", "--full", "crescent-four").contains("does not apply it"));
    }

    @Test
    void aClutchWithTooLittlePressureIsNamedByCompareAtItsDutyPoint() throws Exception {
        String file = Run.changed(folder, "crescent-four", "piston-area: 135 cm2", "piston-area: 80 cm2");
        String words = said("compare", "--full", file, "--build", "fresh");
        assertTrue(words.contains("At stall too little pressure on forward-clutch: 153 psi where it needs 2"), words);
        assertFalse(
                said("compare", "--full", "crescent-four", "--build", "fresh").contains("too little pressure"));
    }

    /** Without a solenoid nothing else asks for the torque, and none asked is none that can slip. */
    @Test
    void aDutyPointWithoutTorqueIsWarnedOfWhereItsRangeAppliesClutches() throws Exception {
        String text = Library.text("crescent-four").orElseThrow();
        String plain = text.replaceAll("  (solenoid: throttle-valve|line-pressure: .*|pilot-pressure: .*)\n", "")
                .replace("    engine-torque: 380 N.m\n", "")
                .replaceAll("set-pressure: .*?([,}\n])", "$1");
        Path file = Files.writeString(folder.resolve("plain.yaml"), plain);
        Run check = Run.of("check", file.toString());
        assertTrue(check.err().contains("driving condition 'stall' has no engine-torque"), check.err());
    }
}
