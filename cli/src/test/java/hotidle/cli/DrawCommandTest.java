package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.CircuitReader;
import hotidle.circuits.Library;
import hotidle.result.Solution;
import hotidle.study.AtDuty;
import hotidle.transmission.Transmission;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The drawn circuit as a user gets it. */
class DrawCommandTest {

    @TempDir
    Path folder;

    @Test
    void eachGaugeIsFoundByItsTitle() throws IOException {
        String svg = drawn("training-rig", "--duty", "fast", "--units", "metric");
        for (String node : new String[] {"line", "middle", "last"}) {
            assertTrue(svg.matches("(?s).*<title>" + node + ", \\d+\\.\\d\\d bar</title>.*"), node);
        }
    }

    @Test
    void pressuresOfTheDrawingAreThoseOfTheState() throws IOException {
        String svg = drawn("training-rig", "--duty", "fast", "--units", "metric");
        Transmission unit = CircuitReader.read(Library.text("training-rig").orElseThrow(), "training-rig.yaml")
                .circuit()
                .orElseThrow()
                .unit();
        Solution state =
                AtDuty.solved(unit, unit.duty("fast").orElseThrow()).state().orElseThrow();
        for (String node : new String[] {"line", "middle", "last"}) {
            String shown = svg.replaceAll("(?s).*<title>" + node + ", (\\d+\\.\\d\\d) bar</title>.*", "$1");
            assertEquals(state.pressure(node) / 1e5, Double.parseDouble(shown), 0.005, node);
        }
    }

    @Test
    void aWiderBleedIsMarked() throws IOException {
        String svg = drawn("training-rig", "--duty", "fast", "--build", "three-holes", "--against", "one-hole");
        assertTrue(svg.matches("(?s).*<title>bleed, orifice[^<]*; changed</title>.*"));
        assertFalse(svg.matches("(?s).*<title>first, orifice[^<]*; changed</title>.*"));
        assertTrue(svg.matches("(?s).*<title>last, \\d+ psi, was \\d+ psi</title>.*"), "its gauge falls");
    }

    /** Leaks are gathered at their place: what is worn among them is marked and named there, and counted. */
    @Test
    void aWornLeakIsMarkedAmongThoseGathered() throws IOException {
        String svg = drawn("valve-body-bench", "--build", "at-limit", "--against", "fresh");
        assertTrue(svg.matches("(?s).*<title>plate; leaks to the sump: [^<]* \\(changed\\)[^<]*</title>.*"), svg);
        assertTrue(svg.contains("#f3e3c2") || svg.contains("rgb(243,227,194)"), "its ground");
        assertFalse(drawn("valve-body-bench", "--build", "at-limit", "--against", "at-limit")
                .contains("(changed)"));
    }

    @Test
    void withoutADutyPointNoPressureIsShown() throws IOException {
        String svg = drawn("training-rig");
        assertFalse(svg.contains(" psi"));
        assertTrue(svg.contains("<title>line</title>"));
    }

    @Test
    void aGroupShowsItsPartsOnly() throws IOException {
        String svg = drawn("training-rig", "--group", "pump");
        assertTrue(svg.contains("<title>pump, pump-chamber</title>"));
        assertFalse(svg.contains("<title>first, "));
    }

    @Test
    void anUnknownGroupIsNamedWithThoseThatThereAre() {
        Run run =
                Run.of("draw", "training-rig", "--plot", folder.resolve("x.svg").toString(), "--group", "box");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("converter-and-cooler, lubrication"), run.err());
        assertFalse(Files.exists(folder.resolve("x.svg")));
    }

    private String drawn(String circuit, String... more) throws IOException {
        Path file = folder.resolve("drawn.svg");
        String[] all = new String[more.length + 4];
        all[0] = "draw";
        all[1] = circuit;
        all[2] = "--plot";
        all[3] = file.toString();
        System.arraycopy(more, 0, all, 4, more.length);
        Run run = Run.of(all);
        assertEquals(0, run.code(), run.err());
        return Files.readString(file);
    }
}
