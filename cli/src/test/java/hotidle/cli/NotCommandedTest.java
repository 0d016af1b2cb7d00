package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A bench on which nothing regulates: two like orifices in series between a held supply and the sump. */
class NotCommandedTest {

    private static final String BENCH = """
            circuit: bench
            oil: thin
            oils: {thin: {viscosity: 1 mm2/s, density: 850 kg/m3, density-slope: 0 kg/m3/K, pressure-viscosity: 0 1/GPa, air: 0 %}}
            regions: {sump: all}
            nodes: {sump: {held: 0 psi}, middle: {}, supply: {held: 10 bar}}
            parts:
              first: {kind: orifice, from: supply, to: middle, diameter: 2 mm}
              second: {kind: orifice, from: middle, to: sump, diameter: 2 mm}
            ranges: {bench: {forward: yes}}
            duty: {run: {range: bench, temperatures: {sump: 40 degC}}}
            taps: {middle: {node: middle, port: between the orifices, between: nothing}}
            """;

    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void write() throws Exception {
        file = Files.writeString(folder.resolve("bench.yaml"), BENCH);
    }

    @Test
    void theGaugeBetweenTwoLikeOrificesShowsHalfTheSupply() throws Exception {
        Run run = Run.of("sweep", file.toString(), "--speed", "500rpm", "--format", "json");
        assertEquals(0, run.code(), run.err());
        JsonNode state = new ObjectMapper().readTree(run.out()).at("/builds/0/states/0");
        assertEquals(5e5, state.at("/pressures_pa/middle").doubleValue(), 1e-3);
        assertTrue(state.get("set_pressure_pa").isNull());
    }

    @Test
    void tablesShowGaugesAndFlowsAndSayThatNothingIsCommanded() {
        Run compare = Run.of("compare", "--full", file.toString(), "--units", "metric");
        assertEquals(0, compare.code(), compare.err());
        assertTrue(compare.out().contains("gauge at middle [bar]"), compare.out());
        assertTrue(
                compare.out().contains("flow second [mL/min]") && compare.out().contains("nothing is commanded"));
        assertFalse(compare.out().contains("NaN") || compare.out().contains("Power"), compare.out());
        Run sweep = Run.of("sweep", file.toString(), "--speed", "500..600/100rpm", "--full");
        assertEquals("", sweep.err());
        assertTrue(sweep.out().contains("not commanded: no set pressure"), sweep.out());
    }

    @Test
    void aSelectorShowsThePassagesOfEveryDutyPointInTheOrderOfTheFile() throws Exception {
        Path valves = Files.writeString(folder.resolve("valves.yaml"), """
                circuit: valves
                oil: thin
                oils: {thin: {viscosity: 1 mm2/s, density: 850 kg/m3}}
                regions: {sump: all}
                nodes: {sump: {held: 0 psi}, low: {}, high: {}, supply: {held: 10 bar}}
                parts:
                  selector:
                    kind: selector
                    ports: {supply: supply, low: low, high: high, sump: sump}
                    passages:
                      feed-low: {from: supply, to: low, diameter: 3 mm, ranges: [first]}
                      vent-low: {from: low, to: sump, diameter: 3 mm, ranges: [second]}
                      feed-high: {from: supply, to: high, diameter: 3 mm, ranges: [second]}
                      vent-high: {from: high, to: sump, diameter: 3 mm, ranges: [first]}
                  low-bleed: {kind: orifice, from: low, to: sump, diameter: 1 mm}
                  high-bleed: {kind: orifice, from: high, to: sump, diameter: 1 mm}
                ranges: {first: {forward: yes}, second: {forward: yes}}
                duty:
                  idle: {range: first, temperatures: {sump: 40 degC}}
                  cruise: {range: second, temperatures: {sump: 40 degC}}
                """);
        Run run = Run.of("compare", "--full", valves.toString(), "--format", "csv", "--units", "metric");
        assertEquals(0, run.code(), run.err());
        String[] lines = run.out().split("\n", -1);
        assertEquals(
                "duty,build,flow selector.feed-low [mL/min],flow selector.vent-low [mL/min],flow selector.feed-high [mL/min],"
                        + "flow selector.vent-high [mL/min],flow low-bleed [mL/min],flow high-bleed [mL/min]",
                lines[0]);
        String[] idle = lines[1].split(",", -1);
        String[] cruise = lines[2].split(",", -1);
        assertTrue(Double.parseDouble(idle[2]) > 100 && idle[3].isEmpty() && idle[4].isEmpty(), lines[1]);
        assertTrue(cruise[2].isEmpty() && Double.parseDouble(cruise[4]) > 100, lines[2]);
    }

    @Test
    void whatThePumpDeliversIsWhatTheLineGetsAndFallsWithWear() {
        Run run = Run.of("compare", "--full", "training-rig", "--format", "csv", "--units", "si");
        assertEquals(0, run.code(), run.err());
        List<String> head = List.of(run.out().split("\n", -1)[0].split(",", -1));
        double[] delivered = new double[2];
        for (int row = 0; row < 2; row++) {
            String[] cells = run.out().split("\n", -1)[row == 0 ? 1 : 3].split(",", -1);
            delivered[row] = Double.parseDouble(cells[head.indexOf("pump delivers after slip [m3/s]")]);
            double line = Double.parseDouble(cells[head.indexOf("flow first [m3/s]")]);
            assertEquals(line, delivered[row], 1e-9, "the line has one way out while the relief valve is shut");
        }
        assertTrue(delivered[1] < 0.9 * delivered[0], delivered[1] + " worn, " + delivered[0] + " new");
    }

    @Test
    void whatNeedsASetPressureIsRefusedInWords() {
        Run run = Run.of("sweep", file.toString(), "--set", "100psi");
        assertEquals(HotIdle.WRONG_INPUT, run.code());
        assertTrue(run.err().contains("bench is not commanded") && run.err().contains("leave out --set"), run.err());
    }
}
