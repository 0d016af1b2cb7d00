package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A regulator that its spring alone sets: 120 N and 8 N/mm against 200 mm², its first opening at 1 mm, so 128 N / 200 mm². */
class SpringAloneTest {

    private static final double SET = 128 / 200e-6;

    private static final String CIRCUIT = """
            circuit: plain
            oil: thin
            oils: {thin: {viscosity: [34.0 mm2/s at 40 degC, 7.4 mm2/s at 100 degC], density: 850 kg/m3}}
            regions: {sump: all}
            nodes: {sump: {held: 0 psi}, suction: {}, line: {}}
            parts:
              filter: {kind: filter, from: sump, to: suction, flow: 60 L/min, drop: 0.1 bar, viscosity: 6 mPa.s}
              inlet: {kind: pump-inlet, node: suction}
              pump:
                kind: pump-chamber
                from: suction
                to: line
                inlet: inlet
                displacement: 18 cm3/rev
                width: 12 mm
                face-clearance: 0.04 mm
                face-inner-diameter: 20 mm
                face-outer-diameter: 32 mm
                tip-diameter: 84 mm
                tip-clearance: 0.07 mm
                tip-land: 1.5 mm
                sealing-teeth: 4
              relief: {kind: relief-valve, from: line, to: sump, seat: 10 mm, spring-rate: 40 N/mm, cracking-pressure: 400 psi, lift: 2 mm}
              regulator:
                kind: spool-valve
                bore: 20.026 mm
                valve: 20.000 mm
                openings: {bypass: {from: line, to: suction, edge: 1 mm}}
                areas: {line: {node: line, area: 200 mm2, acts: open}}
                spring-rate: 8 N/mm
                preload: 120 N
                stops: [0 mm, 4 mm]
            ranges: {bench: {forward: yes}}
            duty: {idle: {speed: 650 rpm, range: bench, temperatures: {sump: 90 degC}}}
            """;

    @TempDir
    Path folder;

    private String file(String more) throws Exception {
        return Files.writeString(folder.resolve("plain.yaml"), CIRCUIT + more).toString();
    }

    @Test
    void theSpringsOwnPressureIsTheSetPressureThatMustBeHeld() throws Exception {
        String file = file("command: {line: line, regulator: regulator, edge: bypass}\n");
        Run run = Run.of("margins", "--full", file, "--format", "json");
        assertEquals(0, run.code(), run.err());
        JsonNode state = new ObjectMapper().readTree(run.out()).at("/builds/0/states/0");
        assertEquals(SET, state.get("set_pressure_pa").doubleValue(), 1e-6);
        assertTrue(
                state.at("/pressures_pa/line").doubleValue() > SET, "flow through the bypass lifts the line above it");
        JsonNode first = state.at("/margins/0");
        assertEquals("regulation", first.get("margin").textValue());
        assertEquals("holds", first.get("verdict").textValue());
        Run window = Run.of("window", file, "--try", "60..200/70psi");
        assertTrue(window.out().contains("The build's spring sets 93 psi."), window.out());
    }

    /** A hole of 1 mm passes about 0.5 L/min at 93 psi: the line is held, yet the branch starves, and each command says so. */
    @Test
    void aLineThatIsHeldIsNoPromiseThatAllBranchesAreServed() throws Exception {
        String branch = "  lube-tail: {kind: lube-branch, from: line, to: sump, diameter: 1 mm, needs: 5 L/min}\n";
        String starving = CIRCUIT.replace("ranges: {bench", branch + "ranges: {bench")
                + "command: {line: line, regulator: regulator, edge: bypass}\n";
        String file =
                Files.writeString(folder.resolve("starving.yaml"), starving).toString();
        Run compare = Run.of("compare", "--full", file);
        assertEquals(0, compare.code(), compare.err());
        String said = compare.out().replaceAll("\\s+", " ");
        assertTrue(said.contains("holds its 93 psi at idle"), said);
        assertTrue(said.contains("Even so too little (is, of needed) for lube-tail"), said);
        assertTrue(said.contains("short of oil SHORT: lube-tail"), said);
    }

    /** 3 N either way on 200 mm² is 2.2 psi up and down from where a free spool would hold the line. */
    @Test
    void aStickySpoolIsShownAsABand() throws Exception {
        String sticky = CIRCUIT.replace("preload: 120 N", "preload: 120 N\n    friction: 3 N")
                + "command: {line: line, regulator: regulator, edge: bypass}\n";
        String file = Files.writeString(folder.resolve("sticky.yaml"), sticky).toString();
        Run sweep = Run.of("sweep", file, "--speed", "800rpm", "--format", "csv", "--units", "metric");
        assertEquals(0, sweep.code(), sweep.err());
        String[] head = sweep.out().lines().findFirst().orElseThrow().split(",", -1);
        String[] row = sweep.out().lines().skip(1).findFirst().orElseThrow().split(",", -1);
        assertEquals("line at least bar", head[head.length - 2]);
        assertEquals("at most bar", head[head.length - 1]);
        double low = Double.parseDouble(row[row.length - 2]);
        double high = Double.parseDouble(row[row.length - 1]);
        assertEquals(2 * 3 / 200e-6 / 1e5, high - low, 0.021);
        String compare = Run.of("compare", "--full", file).out();
        assertTrue(compare.contains("within spool friction [psi]"), compare);
        assertFalse(Run.of("compare", "--full", file("command: {line: line, regulator: regulator, edge: bypass}\n"))
                .out()
                .contains("friction"));
    }

    @Test
    void anotherSetPressureIsAnotherSpring() throws Exception {
        String file = file("command: {line: line, regulator: regulator, edge: bypass}\n");
        Run run = Run.of("sweep", file, "--set", "10bar", "--speed", "800rpm", "--format", "json");
        assertEquals(0, run.code(), run.err());
        JsonNode state = new ObjectMapper().readTree(run.out()).at("/builds/0/states/0");
        assertEquals(1e6, state.get("set_pressure_pa").doubleValue(), 1e-6);
    }

    @Test
    void marginsSaysThatRegulationIsNotJudgedAndWhatToWrite() throws Exception {
        Run run = Run.of("margins", "--full", file(""));
        assertEquals(0, run.code(), run.err());
        String said = run.out().replaceAll("\\s+", " ");
        assertTrue(
                said.contains("Regulation is not judged: the circuit asks for no line pressure that could be held."),
                said);
        assertTrue(said.contains("add command: {line: line, regulator: regulator, edge: bypass}"), said);
        assertFalse(said.contains("()"), said);
        Run commanded =
                Run.of("margins", "--full", file("command: {line: line, regulator: regulator, edge: bypass}\n"));
        assertFalse(commanded.out().contains("not judged"), commanded.out());
    }

    @Test
    void aSolenoidAndItsTablesGoTogether() throws Exception {
        Run run = Run.of(
                "check",
                file("command: {line: line, regulator: regulator, edge: bypass, line-pressure: [[0 N.m, 90 psi]]}\n"));
        assertEquals(HotIdle.WRONG_INPUT, run.code());
        assertTrue(run.err().contains("command has line-pressure but no solenoid and no pilot-pressure"), run.err());
        assertTrue(run.err().contains("or leave out line-pressure"), run.err());
    }

    @Test
    void aTableShowsNoColumnOfWhatTheCircuitHasNot() throws Exception {
        String file = file("command: {line: line, regulator: regulator, edge: bypass}\n");
        String sweep =
                Run.of("sweep", file, "--speed", "600..700/100rpm", "--full").out();
        String compare = Run.of("compare", "--full", file).out();
        for (String absent : new String[] {"secondary", "charge", "cooler flow", "lube", "hub", "film"}) {
            assertFalse(sweep.contains(absent), sweep);
            assertFalse(compare.contains(absent), compare);
        }
        assertTrue(sweep.contains("primary bypasses from") && sweep.contains("slip gpm"), sweep);
        String leaks = Run.of("leaks", file("")).out();
        assertFalse(leaks.contains("onset rpm"), leaks);
    }
}
