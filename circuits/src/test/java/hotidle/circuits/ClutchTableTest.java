package hotidle.circuits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.text.Problem;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What the clutches of the ranges and the selector's table have to do with each other; the plain faults stand in bad.txt. */
class ClutchTableTest {

    private static List<String> said(String circuit, String... exchanged) {
        String text = Library.text(circuit).orElseThrow();
        for (int i = 0; i < exchanged.length; i += 2) {
            assertTrue(text.contains(exchanged[i]), exchanged[i]);
            text = text.replace(exchanged[i], exchanged[i + 1]);
        }
        ReadCircuit read = CircuitReader.read(text, "x.yaml");
        assertTrue(read.circuit().isPresent(), read.problems().toString());
        return read.problems().stream().map(Problem::message).toList();
    }

    /** Every feed and every vent of every ready circuit: leaving any of its ranges out is found, and so is one too many. */
    @TestFactory
    Stream<DynamicTest> everySlipInTheTableOfAReadyCircuitIsFound() {
        return Stream.of("shuttle-five", "crescent-four", "vane-six")
                .flatMap(circuit -> Library.text(circuit)
                        .orElseThrow()
                        .lines()
                        .filter(line -> line.matches(" +\\S+-(feed|vent): \\{from: .*ranges: \\[.*"))
                        .map(line -> DynamicTest.dynamicTest(circuit + line, () -> slips(circuit, line))));
    }

    private static void slips(String circuit, String line) {
        boolean feed = line.contains("-feed:");
        String[] ranges = line.replaceAll(".*ranges: \\[|].*", "").split(", ", -1);
        for (String range : ranges) {
            String without = ranges.length == 1
                    ? line.replaceAll("ranges: \\[.*\\]", "ranges: []")
                    : line.replaceFirst("(?<=ranges: \\[.{0,80})\\b" + range + "(, )?", "")
                            .replace(", ]", "]");
            List<String> said = said(circuit, line, without);
            assertEquals(1, said.size(), without + " " + said);
            String fault = feed ? "fed by nothing there" : "shut in " + range;
            assertTrue(said.get(0).contains(fault) && (!feed || said.get(0).contains("'" + range + "'")), said.get(0));
        }
        if (feed) {
            List<String> said = said(circuit, line, line.replace("ranges: [", "ranges: [park, "));
            assertEquals(1, said.size(), said.toString());
            assertTrue(said.get(0).matches("range 'park' has \\S+ fed and vented at the same time"), said.get(0));
        }
    }

    @Test
    void aClutchFedInNeutralInPlaceOfBeingVentedIsToldAtNeutral() {
        List<String> said = said(
                "crescent-four",
                "forward-feed: {from: line, to: forward, diameter: 2.2 mm, ranges: [first",
                "forward-feed: {from: line, to: forward, diameter: 2.2 mm, ranges: [neutral, first",
                "ranges: [park, reverse, neutral]}\n      intermediate-feed",
                "ranges: [park, reverse]}\n      intermediate-feed");
        assertEquals(List.of("range 'neutral' does not list forward-clutch, which is fed there"), said);
    }

    /** Whether a shift valve moved by pilot pressure lets oil pass is known only when the state is solved. */
    @Test
    void nothingIsSaidOfAClutchBehindAShiftValve() {
        String valve =
                "  shift-valve: {kind: spool-valve, bore: 10.02 mm, valve: 10 mm, openings: {feed: {from: line, to: forward,"
                        + " edge: 1 mm}, vent: {from: forward, to: sump, edge: 1 mm, opens: down}}, areas: {pilot: {node: governor, area: 70"
                        + " mm2, acts: open}}, spring-rate: 3 N/mm, preload: 10 N, stops: [0 mm, 3 mm]}\n";
        List<String> said = said(
                "crescent-four",
                "forward-feed: {from: line, to: forward, diameter: 2.2 mm, ranges: [first, second, third, fourth]}",
                "forward-feed: {from: line, to: forward, diameter: 2.2 mm, ranges: []}",
                "forward-vent: {from: forward, to: sump, diameter: 3 mm, ranges: [park, reverse, neutral]}",
                "forward-vent: {from: forward, to: sump, diameter: 3 mm, ranges: []}",
                "  # ---- manual and shift valves ----\n",
                valve);
        assertEquals(List.of(), said);
    }

    /** Fed through an orifice at all times, and emptied by a selector where it is to be off. */
    @Test
    void anOrificeThatFeedsAlwaysAndAVentThatHoldsItOffAreNoFault() {
        List<String> said = said(
                "crescent-four",
                "      forward-feed: {from: line, to: forward, diameter: 2.2 mm, ranges: [first, second, third, fourth]}\n",
                "",
                "  # ---- manual and shift valves ----\n",
                "  always: {kind: orifice, from: line, to: forward, diameter: 0.8 mm}\n");
        assertEquals(List.of(), said);
    }

    /** Two ways to one clutch, each behind its check valve: the way that is vented does not empty the other. */
    @Test
    void aCheckValveKeepsAClutchFromTheVentOfItsOtherFeed() {
        List<String> said = said(
                "crescent-four",
                "nodes:\n",
                "nodes:\n  way-one: {}\n  way-two: {}\n",
                "forward: forward, direct: direct",
                "forward: way-one, second-way: way-two, direct: direct",
                "ranges: [first, second, third, fourth]}\n      forward-vent:",
                "ranges: [first, second]}\n      other-feed: {from: line, to: second-way, diameter: 2.2 mm, ranges: [third,"
                        + " fourth]}\n      other-vent: {from: second-way, to: sump, diameter: 3 mm, ranges: [park, reverse, neutral,"
                        + " first, second]}\n      forward-vent:",
                "from: forward, to: sump, diameter: 3 mm, ranges: [park, reverse, neutral]}",
                "from: forward, to: sump, diameter: 3 mm, ranges: [park, reverse, neutral, third, fourth]}",
                "  # ---- manual and shift valves ----\n",
                "  check-one: {kind: check-valve, from: way-one, to: forward, seat: 6 mm, spring-rate: 0.1 N/mm, cracking-pressure: 0"
                        + " psi, lift: 1 mm}\n  check-two: {like: check-one, from: way-two}\n  bleed: {kind: orifice, from: forward,"
                        + " to: sump, diameter: 0.5 mm}\n");
        assertEquals(List.of(), said);
    }

    /** Vented clutches stand full at a few psi in an exhaust of its own, fed a little and let off by a weak valve. */
    @Test
    void anExhaustKeptFullIsNoFeed() {
        String vents = Library.text("crescent-four").orElseThrow().replaceAll("(-vent: .*)to: sump", "$1to: exhaust");
        String ports =
                vents.replace("low-reverse: low-reverse, sump: sump}", "low-reverse: low-reverse, exhaust: exhaust}");
        String held = ports.replace("nodes:\n", "nodes:\n  exhaust: {held: 2 psi}\n");
        assertEquals(List.of(), CircuitReader.read(held, "x.yaml").problems());
        String free = ports.replace("nodes:\n", "nodes:\n  exhaust: {}\n")
                .replace(
                        "  # ---- manual and shift valves ----\n",
                        "  fill: {kind: orifice, from: line, to: exhaust, diameter: 0.5 mm}\n  let-off: {kind: relief-valve, from: exhaust,"
                                + " to: sump, seat: 8 mm, spring-rate: 0.2 N/mm, cracking-pressure: 3 psi, lift: 2 mm}\n");
        assertEquals(List.of(), CircuitReader.read(free, "x.yaml").problems());
    }
}
