package hotidle.circuits.kind;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.text.Problem;
import hotidle.part.SpoolValve;
import hotidle.transmission.Control;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A spring written as the pressure that it balances: preload = set-pressure x area - spring-rate x edge, worked out by hand. */
class SpoolSpringTest {

    private static final double PSI = 6894.757293168361;

    private static final String CIRCUIT = """
            circuit: valve
            oil: thin
            oils: {thin: {viscosity: 10 mm2/s, density: 850 kg/m3}}
            regions: {sump: all}
            nodes: {sump: {held: 0 psi}, line: {held: 100 psi}, out: {}}
            parts:
              valve:
                kind: spool-valve
                bore: 20.026 mm
                valve: 20.000 mm
                openings: {%s}
                areas: {%s}
                spring-rate: 8 N/mm
                %s
                stops: [0 mm, 4 mm]
              drain: {kind: orifice, from: out, to: sump, diameter: 2 mm}
            ranges: {bench: {forward: yes}, back: {}}
            command: {line: line, regulator: valve, edge: bypass}
            duty: {run: {range: bench, temperatures: {sump: 40 degC}}}
            builds:
              plain: {}
              shimmed: {changes: {valve.shim: {to: 1 mm, because: to raise it}}}
            """;

    private static final String BYPASS = "bypass: {from: line, to: out, edge: 1 mm}";
    private static final String LINE = "line: {node: line, area: 200 mm2, acts: open}";

    private static DescribedCircuit circuit(String openings, String areas, String spring) {
        var read = CircuitReader.read(String.format(CIRCUIT, openings, areas, spring), "valve.yaml");
        assertTrue(read.circuit().isPresent(), () -> read.problems().toString());
        return read.circuit().orElseThrow();
    }

    private static double preload(DescribedCircuit circuit, String build) {
        return ((SpoolValve) circuit.unit(build)
                        .network()
                        .part("valve")
                        .orElseThrow()
                        .part())
                .spring()
                .preload();
    }

    private static List<String> errors(String openings, String areas, String spring) {
        return CircuitReader.read(String.format(CIRCUIT, openings, areas, spring), "valve.yaml").problems().stream()
                .filter(problem -> problem.severity() == Problem.Severity.ERROR)
                .map(Problem::message)
                .toList();
    }

    @Test
    void thePreloadBalancesTheSetPressureWhereTheFirstOpeningBeginsToOpen() {
        DescribedCircuit circuit = circuit(BYPASS, LINE, "set-pressure: 10 bar");
        assertEquals(1e6 * 200e-6 - 8000 * 0.001, preload(circuit, "plain"), 1e-9);
        Transmission plain = circuit.unit("plain");
        assertEquals(1e6, plain.command().setPressure(plain.network(), new Control("bench", Map.of())), 1e-6);
    }

    @Test
    void aShimOfAMillimetreRaisesItByTheSpringRate() {
        DescribedCircuit circuit = circuit(BYPASS, LINE, "set-pressure: 10 bar");
        Transmission shimmed = circuit.unit("shimmed");
        assertEquals(
                1e6 + 8 / 200e-6,
                shimmed.command().setPressure(shimmed.network(), new Control("bench", Map.of())),
                1e-6);
    }

    @Test
    void ofSeveralOpeningsTheFirstThatOpensUpIsMeantUnlessAnotherIsNamed() {
        String openings = "late: {from: line, to: sump, edge: 3 mm, bore: 18.026 mm, valve: 18 mm}, " + BYPASS;
        assertEquals(192, preload(circuit(openings, LINE, "set-pressure: 10 bar"), "plain"), 1e-9);
        assertEquals(
                176,
                preload(
                        circuit(
                                openings,
                                LINE,
                                "{set-pressure: 10 bar, set-edge: late}"
                                        .replaceAll("[{}]", "")
                                        .replace(", ", "\n    ")),
                        "plain"),
                1e-9);
    }

    @Test
    void anAreaThatTheSamePressureClosesIsTakenOffAndOneOfSomeRangesIsNotCounted() {
        String areas =
                LINE + ", step: {node: line, area: 50 mm2, acts: close}, back: {node: line, area: 100 mm2, acts: open,"
                        + " ranges: [back]}";
        assertEquals(1e6 * 150e-6 - 8, preload(circuit(BYPASS, areas, "set-pressure: 10 bar"), "plain"), 1e-9);
    }

    @Test
    void aPressureThatHasNoOneMeaningIsRefusedInWords() {
        String out = LINE + ", out: {node: out, area: 20 mm2, acts: open}";
        assertEquals(
                List.of("spool-valve 'valve' has a set-pressure, but several nodes open it: line, out"),
                errors(BYPASS, out, "set-pressure: 10 bar"));
        String back = "back: {node: line, area: 100 mm2, acts: open, ranges: [bench, back]}";
        assertEquals(
                List.of("spool-valve 'valve' has a set-pressure, but no pressure that opens it in every range"),
                errors(BYPASS, back, "set-pressure: 10 bar"));
        String down =
                "one: {from: line, to: out, edge: 1 mm, opens: down}, bypass: {from: out, to: sump, edge: 0.5 mm, opens: down}";
        assertTrue(errors(down, LINE, "set-pressure: 10 bar")
                .contains("spool-valve 'valve' has a set-pressure, but none of its openings opens up"));
        assertEquals(
                List.of("spool-valve 'valve' has a set-pressure that its spring would exceed without any preload"),
                errors(BYPASS, LINE, "set-pressure: " + 0.9 * 8 / 200e-6 / PSI + " psi"));
    }
}
