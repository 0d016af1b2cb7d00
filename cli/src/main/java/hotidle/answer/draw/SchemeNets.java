package hotidle.answer.draw;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.DrawPhrase;
import hotidle.circuits.DescribedCircuit;
import hotidle.plots.scheme.Pin;
import hotidle.plots.scheme.SchemeNet;
import hotidle.plots.scheme.SchemePart;
import hotidle.transmission.Tap;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Nodes of a circuit as tags.
 *
 * @param units      in which numbers are shown
 * @param shown      build and state
 * @param boxes      parts that are drawn
 * @param leaks      parts that are gathered
 * @param reservoirs nodes that are drawn as reservoirs
 * @param named      whether a leak alone at its node is named
 * @param highest    pressure at the dark end of the scale [Pa]; NaN where no state is known
 */
record SchemeNets(
        Quantity.UnitSystem units,
        DrawnState shown,
        List<SchemePart> boxes,
        List<DescribedCircuit.PartLine> leaks,
        Set<String> reservoirs,
        boolean named,
        double highest) {

    /** A pressure that changed by less is not marked. */
    private static final double CHANGED = 0.02;

    /** Below this nothing is called a change [Pa]. */
    private static final double STILL = 1000;

    SchemeNet tag(String node) {
        if (reservoirs.contains(node)) {
            return new SchemeNet(node, "", SchemeNet.Look.RESERVOIR, Double.NaN, "", List.of(), node, false);
        }
        double pressure = shown.pressure(node);
        boolean changed = changed(node);
        String value =
                Double.isNaN(pressure) ? "" : DrawPhrase.pressure(units, pressure, shown.pressureBefore(node), changed);
        List<String> here = leaks.stream()
                .filter(line -> line.figure().ports().stream()
                        .anyMatch(port -> port.node().equals(node)))
                .map(DescribedCircuit.PartLine::name)
                .toList();
        List<String> drips = new ArrayList<>();
        if (!here.isEmpty()) {
            double flow =
                    here.stream().mapToDouble(part -> shown.flow(part, node)).sum();
            drips.add(DrawPhrase.leaks(units, here, flow, named));
        }
        boolean tapped = shown.unit().taps().stream().map(Tap::node).anyMatch(node::equals);
        return new SchemeNet(
                node,
                frame(node),
                tapped ? SchemeNet.Look.GAUGE : SchemeNet.Look.TAG,
                Math.max(0, pressure) / highest,
                value,
                drips,
                DrawPhrase.net(node, value, here),
                changed);
    }

    boolean changed(String node) {
        double now = shown.pressure(node);
        double before = shown.pressureBefore(node);
        return Math.abs(now - before) > Math.max(STILL, CHANGED * Math.abs(before));
    }

    /** That of the part that feeds it, else of the first part at it. */
    private String frame(String node) {
        return boxes.stream()
                .filter(box ->
                        box.pins().stream().anyMatch(pin -> pin.net().equals(node) && pin.role() == Pin.Role.OUT))
                .findFirst()
                .or(() -> boxes.stream()
                        .filter(box ->
                                box.pins().stream().anyMatch(pin -> pin.net().equals(node)))
                        .findFirst())
                .map(SchemePart::frame)
                .orElse("");
    }
}
