package hotidle.newton;

import hotidle.network.Group;
import hotidle.network.Network;
import hotidle.network.Node;
import hotidle.network.Placed;
import hotidle.part.Fit;
import hotidle.part.Orifice;
import hotidle.part.SpoolSpring;
import hotidle.part.SpoolValve;
import hotidle.study.TenNodes;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The small unit with a valve that latches: its own outlet helps to hold it open, so that between two line pressures it may stand
 * shut or open.
 *
 * <pre>
 * line ── latch ── out ── orifice ── sump       opens where 50 mm²·line exceeds 30 N: 6 bar
 *          ╰ area on out helps to open          shuts where 150 mm²·line falls below about 30 N: 2 bar
 * </pre>
 */
final class Latch {

    private Latch() {}

    static Transmission unit() {
        Transmission plain = TenNodes.worn(1);
        List<Node> nodes = new ArrayList<>(plain.network().nodes());
        nodes.add(Node.free("out"));
        List<Placed> parts = new ArrayList<>(plain.network().parts());
        SpoolValve valve = new SpoolValve(
                List.of("line", "out"),
                List.of(new SpoolValve.Opening("open", 0, 1, Fit.same(0.01203, 0.012), 0.3, 1e-3, true, 0.5, 0.65)),
                List.of(new SpoolValve.Area(0, 50e-6, Set.of()), new SpoolValve.Area(1, 100e-6, Set.of())),
                new SpoolSpring(5000, 25, 0, 2e-3, 0),
                OptionalDouble.empty());
        parts.add(Placed.of("latch", valve, "sump", Group.VALVE_BODY, "line", "out"));
        parts.add(Placed.of("out-orifice", new Orifice(0.8e-3, 0, 0.7, 1), "sump", Group.VALVE_BODY, "out", "sump"));
        return plain.with(new Network(nodes, parts), plain.command());
    }
}
