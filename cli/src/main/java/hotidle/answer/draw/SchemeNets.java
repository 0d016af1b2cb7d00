package hotidle.answer.draw;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.DrawPhrase;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.kind.GraphicSymbol;
import hotidle.plots.scheme.Pin;
import hotidle.plots.scheme.SchemeNet;
import hotidle.plots.scheme.SchemePart;
import hotidle.plots.scheme.Symbol;
import hotidle.plots.scheme.Widest;
import hotidle.transmission.Tap;
import java.util.List;
import java.util.Optional;
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
 * @param named      whether leaks are named, as on a sheet of one frame
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

    /** So many leaks of a node are named one by one. */
    private static final int MOST_NAMED = 4;

    /** Below this nothing is called a change [Pa]. */
    private static final double STILL = 1000;

    SchemeNet tag(String node) {
        if (reservoirs.contains(node)) {
            return new SchemeNet(
                    node,
                    node,
                    "",
                    SchemeNet.Look.RESERVOIR,
                    shown.pressure(node),
                    "",
                    "",
                    List.of(),
                    Widest.NOTHING,
                    node,
                    false);
        }
        double pressure = shown.pressure(node);
        boolean changed = changed(node);
        String value = Double.isNaN(pressure) ? "" : Quantity.PRESSURE.with(units, pressure);
        String was = changed ? DrawPhrase.was(units, shown.pressureBefore(node)) : "";
        List<DescribedCircuit.PartLine> here =
                leaks.stream().filter(line -> leaks(line, node)).toList();
        List<List<DescribedCircuit.PartLine>> apart = apart(here);
        List<String> taps = shown.unit().taps().stream()
                .filter(tap -> tap.node().equals(node))
                .map(Tap::name)
                .toList();
        String label = DrawPhrase.node(node, taps);
        return new SchemeNet(
                node,
                label,
                frame(node),
                taps.isEmpty() ? SchemeNet.Look.TAG : SchemeNet.Look.GAUGE,
                Math.max(0, pressure) / highest,
                value,
                was,
                apart.stream().map(lines -> drip(lines, node)).toList(),
                new KeptRoom(units).node(apart.stream().map(SchemeNets::names).toList(), named),
                DrawPhrase.net(
                        label,
                        value,
                        was,
                        here.stream()
                                .map(line -> DrawPhrase.leak(line.name(), shown.changed(line.name())))
                                .toList()),
                changed);
    }

    /** On a sheet of one frame a line for each leak as long as they are few; else one for accumulators and one for all others. */
    private List<List<DescribedCircuit.PartLine>> apart(List<DescribedCircuit.PartLine> here) {
        return named && here.size() <= MOST_NAMED
                ? here.stream().map(List::of).toList()
                : Stream.of(true, false)
                        .map(stored -> here.stream()
                                .filter(line -> accumulator(line) == stored)
                                .toList())
                        .filter(lines -> !lines.isEmpty())
                        .toList();
    }

    private static boolean accumulator(DescribedCircuit.PartLine line) {
        return line.figure().symbol() == GraphicSymbol.ACCUMULATOR;
    }

    private SchemeNet.Drip drip(List<DescribedCircuit.PartLine> lines, String node) {
        double flow = lines.stream()
                .mapToDouble(line -> shown.flow(line.name(), node))
                .sum();
        boolean shownBySymbol = (named && lines.size() == 1) || accumulator(lines.get(0));
        return new SchemeNet.Drip(
                shownBySymbol
                        ? Optional.of(
                                Symbol.valueOf(lines.get(0).figure().symbol().name()))
                        : Optional.empty(),
                DrawPhrase.leaks(units, names(lines), flow, named),
                lines.stream().anyMatch(line -> shown.changed(line.name())));
    }

    private static List<String> names(List<DescribedCircuit.PartLine> lines) {
        return lines.stream().map(DescribedCircuit.PartLine::name).toList();
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
