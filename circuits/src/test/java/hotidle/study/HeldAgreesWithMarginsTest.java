package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Margin;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.study.TorqueHeld.Carrier;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * Judged as a driving condition at the torque that is said to be held, one per cent less holds and one per cent more does not, for the
 * link that is named. The judgement of margins knows nothing of the search.
 */
class HeldAgreesWithMarginsTest {

    private static final double SPEED = 2000 / 60.0;

    private static final DescribedCircuit CIRCUIT = CircuitReader.read(
                    Library.text("shuttle-five").orElseThrow(), "shuttle-five.yaml")
            .circuit()
            .orElseThrow();

    @Test
    void theMarginOfTheLinkNamedTurnsInEveryRangeOfTwoBuilds() {
        Set<String> links = new TreeSet<>();
        for (String build : List.of("restored", "restored-raised")) {
            Transmission unit = CIRCUIT.unit(build);
            for (TorqueHeld range : TorqueHeld.of(unit, SPEED)) {
                double torque = range.held().orElseThrow().torque();
                Carrier first = range.held().orElseThrow().links().get(0);
                String where = build + " " + range.range() + " " + first;
                assertTrue(margin(unit, range, 0.99 * torque, first).headroom() >= 0, where);
                assertTrue(margin(unit, range, 1.01 * torque, first).headroom() < 0, where);
                links.add(first.name());
            }
        }
        assertTrue(links.size() >= 3, links.toString());
        assertTrue(links.contains("input-shaft"), links.toString());
    }

    private static Margin margin(Transmission unit, TorqueHeld held, double torque, Carrier link) {
        List<Margin> found = Judgement.of(unit, held.at().duty(torque, SPEED), List.of(SPEED)).margins().stream()
                .filter(margin -> margin.part().equals(link.name())
                        && margin.kind() == (link.clutch() ? Margin.Kind.APPLY : Margin.Kind.RATED_TORQUE))
                .toList();
        assertEquals(1, found.size(), link.name());
        return found.get(0);
    }
}
