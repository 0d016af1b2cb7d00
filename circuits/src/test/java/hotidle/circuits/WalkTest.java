package hotidle.circuits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.text.Problem;
import hotidle.newton.SteadySolver;
import hotidle.part.OwnState;
import hotidle.result.Solution;
import hotidle.transmission.Control;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The walk of README.md, taken as a reader takes it: piece after piece at the end of one file, checked after each. */
class WalkTest {

    private static final double PSI = 6894.757293168361;

    private static List<String> pieces() throws IOException {
        List<String> pieces = new ArrayList<>();
        String[] parts = Files.readString(Path.of("README.md")).split("```yaml\n", -1);
        for (int i = 1; i < parts.length; i++) {
            pieces.add(parts[i].substring(0, parts[i].indexOf("```")));
        }
        assertEquals(9, pieces.size(), "five pieces of the walk, and four files based on it");
        return pieces;
    }

    private static String upTo(int piece) throws IOException {
        return String.join("", pieces().subList(0, piece));
    }

    private static List<String> said(int piece) throws IOException {
        return CircuitReader.read(upTo(piece), "first.yaml").problems().stream()
                .map(Problem::message)
                .toList();
    }

    private static Solution solved(Transmission unit) {
        DutyPoint idle = unit.duties().get(0);
        return new SteadySolver(unit.network())
                .solve(unit.conditions(idle), Optional.empty())
                .state()
                .orElseThrow();
    }

    @Test
    void theFirstPiecesLackNothingButWhatComesAfterThem() throws IOException {
        assertEquals(
                List.of("the circuit has no parts", "the circuit has no ranges", "the circuit has no duty"), said(1));
        assertEquals(List.of("the circuit has no ranges", "the circuit has no duty"), said(2));
    }

    @Test
    void afterTheThirdPieceItIsSolvedAndTheSpringAloneRegulates() throws IOException {
        assertEquals(List.of(), said(3));
        Transmission bench = CircuitReader.read(upTo(3), "first.yaml")
                .circuit()
                .orElseThrow()
                .unit();
        assertTrue(bench.commanded().isEmpty());
        double line = solved(bench).pressure("line") / PSI;
        assertTrue(line > 93 && line < 100, line + " psi");
    }

    @Test
    void theWholeFileReadsWithoutAWarningAndAllItsBuildsAreSolved() throws IOException {
        assertEquals(List.of(), said(4));
        assertEquals(List.of(), said(5));
        DescribedCircuit first =
                CircuitReader.read(upTo(5), "first.yaml").circuit().orElseThrow();
        assertEquals(3, first.units().size());
        first.units().values().forEach(unit -> assertTrue(solved(unit).pressure("line") > 50 * PSI, unit.build()));
    }

    private static DescribedCircuit based(int piece) throws IOException {
        Map<String, String> bases = Map.of("first.yaml", upTo(5), "geared.yaml", pieces().get(5));
        ReadCircuit read = CircuitReader.read(
                pieces().get(piece),
                "mine.yaml",
                (name, from) -> Optional.ofNullable(bases.get(name)).map(base -> new BaseFiles.FoundFile(name, base)),
                Optional.empty());
        assertEquals(List.of(), read.problems());
        return read.circuit().orElseThrow();
    }

    @Test
    void theClutchOfTheRangeEngagedStandsAtLinePressureAndTheOtherIsVented() throws IOException {
        Solution state = solved(based(5).unit("worn"));
        assertTrue(state.pressure("forward") > 0.99 * state.pressure("line"));
        assertTrue(Math.abs(state.pressure("reverse")) < 100);
    }

    @Test
    void theConverterIsFedBeforeTheBypassOpensAndOneStreamRunsThroughCoolerAndLubrication() throws IOException {
        DescribedCircuit fed = based(6);
        Solution worn = solved(fed.unit("worn"));
        double opened = worn.own("regulator", OwnState.POSITION);
        assertTrue(opened > 0.0005 && opened < 0.001, opened + " m: feed open, bypass shut");
        Solution fresh = solved(fed.unit("fresh"));
        assertTrue(fresh.own("regulator", OwnState.POSITION) > 0.001, "the bypass is open too");
        assertTrue(fresh.flow("lube-front") > 1.5 * worn.flow("lube-front"));
        double mass = mass(fresh, "converter");
        assertEquals(mass, mass(fresh, "cooler"), 1e-6 * mass);
        assertEquals(mass, mass(fresh, "lube-front") + mass(fresh, "lube-rear"), 1e-6 * mass);
        assertTrue(fresh.flow("cooler") < fresh.flow("lube-front") + fresh.flow("lube-rear"), "its air expands");
    }

    private static double mass(Solution state, String part) {
        return state.streams().stream()
                .filter(stream -> stream.part().equals(part))
                .mapToDouble(Solution.PartStream::mass)
                .sum();
    }

    @Test
    void inReverseTheDrainedAreaRaisesTheLineByAThirdAndTheBandHoldsOnlyInSecond() throws IOException {
        DescribedCircuit banded = based(7);
        for (Transmission unit : banded.units().values()) {
            Solution pulling = solved(unit, "pulling");
            Solution backing = solved(unit, "backing");
            double ratio = backing.pressure("line") / pulling.pressure("line");
            assertEquals(200.0 / 150, ratio, 0.02, unit.build() + ": the spool is off its seat in both");
            assertTrue(pulling.pressure("second") > 0.99 * pulling.pressure("line"), unit.build());
            assertTrue(Math.abs(backing.pressure("second")) < 100, unit.build());
        }
        double set = banded.unit("fresh")
                .commanded()
                .orElseThrow()
                .setPressure(banded.unit("fresh").network(), new Control("drive", Map.of()));
        assertEquals(93 * PSI, set, 0.1 * PSI, "the preload is what the text says");
    }

    private static Solution solved(Transmission unit, String duty) {
        return new SteadySolver(unit.network())
                .solve(unit.conditions(unit.duty(duty).orElseThrow()), Optional.empty())
                .state()
                .orElseThrow();
    }

    @Test
    void theSecondUnitOfTheFamilyReadsAndIsSolved() throws IOException {
        DescribedCircuit circuit = based(8);
        assertEquals(
                List.of("fresh", "worn", "bored-out"),
                circuit.builds().stream().map(DescribedCircuit.Build::name).toList());
        assertTrue(solved(circuit.unit("bored-out")).flow("lube-front")
                > solved(circuit.unit("worn")).flow("lube-front"));
    }
}
