package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.StateFault;
import hotidle.network.Network;
import hotidle.network.Node;
import hotidle.study.Comparison.BuildAtDuty;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Ten nodes with a brake, a clutch and a shaft, compared: pulling in second puts 320 N·m on the shaft. */
class RatingsInComparisonTest {

    private static final List<Double> SPEEDS = List.of(1000 / 60.0, 2000 / 60.0);

    private static BuildAtDuty pulling(Transmission unit) {
        return Comparison.of(List.of(unit), SPEEDS).cell(unit.build(), "pull");
    }

    private static Transmission unit(double shaft) {
        return TenNodesWithTrain.unit(1, 8, shaft, TenNodesWithTrain.LEVEL);
    }

    private static List<StateFault> over(BuildAtDuty cell) {
        return cell.faults().stream()
                .filter(fault ->
                        fault.kind() == StateFault.Kind.OVER_TORQUE || fault.kind() == StateFault.Kind.OVER_PRESSURE)
                .toList();
    }

    @Test
    void aShaftThatBearsLessThanItCarriesFailsAndIsTheWeakestLink() {
        BuildAtDuty weak = pulling(unit(300));
        assertEquals(1, over(weak).size());
        StateFault fault = over(weak).get(0);
        assertEquals(StateFault.Kind.OVER_TORQUE, fault.kind());
        assertEquals("input-shaft", fault.part());
        assertEquals(320, fault.is().orElseThrow(), 1e-9);
        assertEquals(300, fault.needs().orElseThrow(), 1e-9);
        assertEquals("input-shaft", weak.weakestLink().orElseThrow().part());
        assertEquals(300.0 / 320 - 1, weak.weakestLink().orElseThrow().headroom(), 1e-12);
        Comparison compared = new Comparison(List.of(weak));
        assertEquals(1, compared.failing(weak.unit().build()).size());
        assertTrue(over(pulling(unit(330))).isEmpty());
    }

    @Test
    void ofWhatHasARatingAndOfClutchesTheOneWithLeastLeftIsTheWeakest() {
        BuildAtDuty strong = pulling(unit(TenNodesWithTrain.STRONG));
        double least = strong.weakestLink().orElseThrow().headroom();
        strong.rated().forEach(margin -> assertTrue(margin.headroom() >= least, margin.toString()));
        assertTrue(strong.rated().stream().anyMatch(margin -> margin.part().equals("pump-drive")));
    }

    @Test
    void aHousingUnderMoreThanItBearsFails() {
        Transmission plain = unit(TenNodesWithTrain.STRONG);
        List<Node> nodes = plain.network().nodes().stream()
                .map(node -> node.name().equals("line") ? new Node("line", node.held(), OptionalDouble.of(5e5)) : node)
                .toList();
        Transmission rated = plain.with(new Network(nodes, plain.network().parts()), plain.command());
        StateFault fault = over(pulling(rated)).get(0);
        assertEquals(StateFault.Kind.OVER_PRESSURE, fault.kind());
        assertEquals(5e5, fault.needs().orElseThrow());
    }
}
