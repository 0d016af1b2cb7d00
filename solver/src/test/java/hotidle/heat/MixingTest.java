package hotidle.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.network.Node;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class MixingTest {

    private static final List<Node> NODES =
            List.of(Node.held("sump", 0), Node.free("a"), Node.free("b"), Node.free("still"));

    @Test
    void hotAndColdOilMixByMass() {
        Map<String, Double> mixed = Mixing.of(
                NODES,
                List.of(
                        new Mixing.Leg("sump", "a", 1, 3000),
                        new Mixing.Leg("sump", "b", 2, 0),
                        new Mixing.Leg("a", "b", 1, 0),
                        new Mixing.Leg("b", "sump", 3, 0)),
                Map.of("sump", 1000.0),
                0);
        assertEquals(4000, mixed.get("a"), 1e-9);
        assertEquals(2000, mixed.get("b"), 1e-9);
    }

    /** Oil that goes round carries the pump's heat with it until what leaves takes it all. */
    @Test
    void oilSentBackToThePumpGetsHotterThanOilThatPassesOnce() {
        Map<String, Double> mixed = Mixing.of(
                NODES,
                List.of(
                        new Mixing.Leg("sump", "a", 1, 0),
                        new Mixing.Leg("b", "a", 9, 0),
                        new Mixing.Leg("a", "b", 10, 5000),
                        new Mixing.Leg("b", "sump", 1, 0)),
                Map.of("sump", 0.0),
                0);
        assertEquals(5000, mixed.get("b"), 1e-9);
        assertEquals(4500, mixed.get("a"), 1e-9);
    }

    @Test
    void aNodeThatNothingFlowsIntoCountsAsTheSumps() {
        Map<String, Double> mixed =
                Mixing.of(NODES, List.of(new Mixing.Leg("sump", "a", 1, 10)), Map.of("sump", 700.0), 700);
        assertEquals(700, mixed.get("still"), 1e-9);
    }
}
