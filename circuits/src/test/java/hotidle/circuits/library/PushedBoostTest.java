package hotidle.circuits.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Figures;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.circuits.ReadCircuit;
import hotidle.circuits.text.Problem;
import hotidle.network.Conditions;
import hotidle.newton.Series;
import hotidle.transmission.Transmission;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The set pressure of a regulator that more acts on than line and pilot: reverse oil, a throttle valve, oil behind an orifice. */
class PushedBoostTest {

    private static final String DRAINED = Library.text("crescent-four").orElseThrow();
    private static final String AREAS = DRAINED.substring(
            DRAINED.indexOf("      line: {node: line, area: 140 mm2"),
            DRAINED.indexOf("      throttle: {node: throttle, area: 150 mm2"));

    /** As the ready circuit, its regulator on other areas of the line, 225 mm² of them forward and 140 mm² in reverse. */
    private static ReadCircuit read(String areas) {
        return CircuitReader.read(DRAINED.replace(AREAS, areas), "pushed.yaml");
    }

    private static DescribedCircuit circuit(String areas) {
        return read(areas).circuit().orElseThrow();
    }

    private static final String PUSHED = """
                  line: {node: line, area: 225 mm2, acts: open}
                  reverse: {node: low-reverse, area: 85 mm2, acts: close}
            """;

    @Test
    void reverseOilThatPushesTheBoostSetsTheLineAsMuchAsAnAreaThatReverseDrains() {
        Ready drained = Ready.of("crescent-four");
        Ready pushed = new Ready(circuit(PUSHED));
        for (String duty : List.of("hot-idle", "stall", "road-cruise", "backing-up")) {
            double set = drained.figures("fresh", duty).set().orElseThrow();
            Figures f = pushed.figures("fresh", duty);
            assertEquals(set, f.set().orElseThrow(), 1e-9 * set, duty);
            assertTrue(f.regulated(), duty);
            assertFalse(f.farAboveSet(), duty);
        }
        assertEquals(List.of(), warnings(PUSHED));
    }

    /** Its spool leaves its seat 4 N before the converter feed begins to open: there the unit starves, and is not regulated. */
    @Test
    void aUnitThatStarvesInReverseIsNotCalledRegulated() {
        Transmission unit = circuit(PUSHED).unit("worn");
        Conditions backing = unit.conditions(unit.duty("backing-up").orElseThrow());
        Series series = new Series(unit.network());
        int starving = 0;
        for (double rpm = 300; rpm < 1500; rpm += 20) {
            assertTrue(series.solve(backing.atSpeed(rpm / 60)));
            Figures f = Figures.of(unit, series.state());
            if (f.offSeat() && f.line() < f.set().orElseThrow()) {
                starving++;
                assertFalse(f.regulated(), rpm + " rpm");
            }
        }
        assertTrue(starving > 0, "no speed leaves the spool between seat and edge");
    }

    @Test
    void anAreaBehindADampingOrificeIsTheLines() {
        String areas = """
                      line: {node: line, area: 140 mm2, acts: open}
                      end: {node: damped, area: 85 mm2, acts: open, ranges: [park, neutral, first, second, third, fourth]}
                """;
        String parts = """
                  damping: {kind: orifice, from: line, to: damped, diameter: 1 mm, length: 1 mm}
                  end-land: {kind: annular-gap, from: damped, to: sump, bore: 10.02 mm, valve: 10 mm, length: 9 mm}
                  throttle-valve: {\
                """;
        String damped = DRAINED.replace(AREAS, areas)
                .replace("  throttle: pressure of", "  damped: end of the regulator\n  throttle: pressure of")
                .replace("  throttle-valve: {", parts);
        ReadCircuit read = CircuitReader.read(damped, "damped.yaml");
        double set = Ready.of("crescent-four").figures("fresh", "stall").set().orElseThrow();
        assertEquals(
                set,
                new Ready(read.circuit().orElseThrow())
                        .figures("fresh", "stall")
                        .set()
                        .orElseThrow(),
                1e-9 * set);
    }

    @Test
    void aNodeWhosePressureOnlyAStateTellsIsWarnedAbout() {
        List<String> told = warnings(PUSHED.replace("node: low-reverse", "node: converter-feed"));
        assertEquals(1, told.size(), told.toString());
        assertTrue(
                told.get(0).contains("a regulator on which 'converter-feed' acts, which its set pressure leaves out"),
                told.get(0));
    }

    @Test
    void aRegulatorThatReverseOilShutsHardIsAnError() {
        ReadCircuit read = read(PUSHED.replace("85 mm2", "230 mm2"));
        assertTrue(read.circuit().isEmpty());
        assertTrue(
                read.problems().get(0).message().contains("has a regulator that the line shuts"),
                read.problems().toString());
    }

    private static List<String> warnings(String areas) {
        return read(areas).problems().stream().map(Problem::message).toList();
    }
}
