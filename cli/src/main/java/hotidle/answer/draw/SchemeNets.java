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
import java.util.stream.Stream;

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
            return new SchemeNet(
                    node, "", SchemeNet.Look.RESERVOIR, shown.pressure(node), "", "", List.of(), node, false);
        }
        double pressure = shown.pressure(node);
        boolean changed = changed(node);
        String value = Double.isNaN(pressure) ? "" : Quantity.PRESSURE.with(units, pressure);
        String was = changed ? DrawPhrase.was(units, shown.pressureBefore(node)) : "";
        List<String> here = leaks.stream()
                .filter(line -> leaks(line, node))
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
                was,
                drips,
                DrawPhrase.net(node, value, was, here),
                changed);
    }

    boolean changed(String node) {
        double now = shown.pressure(node);
        double before = shown.pressureBefore(node);
        return Math.abs(now - before) > Math.max(STILL, CHANGED * Math.abs(before));
    }

    /** That of the part that feeds it, else of the first part at it, a leak if need be. */
    private String frame(String node) {
        return Stream.concat(
                        boxes.stream().filter(box -> joins(box, node, true)).map(SchemePart::frame),
                        Stream.concat(
                                boxes.stream()
                                        .filter(box -> joins(box, node, false))
                                        .map(SchemePart::frame),
                                leaks.stream().filter(line -> leaks(line, node)).map(this::frame)))
                .findFirst()
                .orElse("");
    }

    private static boolean joins(SchemePart box, String node, boolean feeding) {
        return box.pins().stream().anyMatch(pin -> pin.net().equals(node) && (!feeding || pin.role() == Pin.Role.OUT));
    }

    private static boolean leaks(DescribedCircuit.PartLine line, String node) {
        return line.figure().ports().stream().anyMatch(port -> port.node().equals(node));
    }

    private String frame(DescribedCircuit.PartLine line) {
        return Frames.of(shown.unit().network().part(line.name()).orElseThrow().group())
                .label();
    }
}
