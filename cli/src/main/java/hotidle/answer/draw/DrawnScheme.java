package hotidle.answer.draw;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.DrawPhrase;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.kind.GraphicSymbol;
import hotidle.circuits.kind.PartFigure;
import hotidle.network.Node;
import hotidle.network.Placed;
import hotidle.plots.scheme.Pin;
import hotidle.plots.scheme.Scheme;
import hotidle.plots.scheme.SchemeNet;
import hotidle.plots.scheme.SchemePart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A circuit as the description of its drawing.
 *
 * @param scheme what is drawn
 * @param leaks  how many parts are gathered at their nodes
 * @param changed parts that are marked, drawn or gathered
 */
public record DrawnScheme(Scheme scheme, int leaks, List<String> changed) {

    public DrawnScheme {
        changed = List.copyOf(changed);
    }

    /**
     * Describes it.
     *
     * @param units   in which numbers are shown
     * @param circuit what is drawn
     * @param shown   build and state
     * @param only    the one frame that is drawn; empty for all
     */
    public static DrawnScheme of(
            Quantity.UnitSystem units, DescribedCircuit circuit, DrawnState shown, Optional<Frames> only) {
        Set<String> reservoirs = shown.unit().network().nodes().stream()
                .filter(node -> node.held().isPresent() && node.held().getAsDouble() == 0)
                .map(Node::name)
                .collect(Collectors.toSet());
        double widest = circuit.parts().stream()
                .mapToDouble(line -> shown.flow(
                        line.name(),
                        line.figure().ports().stream()
                                .map(PartFigure.FigurePort::node)
                                .toList()))
                .max()
                .orElse(Double.NaN);
        double highest = shown.state()
                .map(state -> state.pressures().values().stream()
                        .mapToDouble(Double::doubleValue)
                        .max()
                        .orElse(0))
                .orElse(Double.NaN);
        SchemeParts parts = new SchemeParts(units, shown, reservoirs, moving(circuit), widest);
        List<DescribedCircuit.PartLine> lines = circuit.parts().stream()
                .filter(line -> only.isEmpty() || frame(shown, line, circuit) == only.get())
                .toList();
        List<SchemePart> boxes = lines.stream()
                .filter(parts::boxed)
                .map(line -> parts.box(line, frame(shown, line, circuit)))
                .toList();
        List<DescribedCircuit.PartLine> leaks =
                lines.stream().filter(parts::gathered).toList();
        SchemeNets nets = new SchemeNets(units, shown, boxes, leaks, reservoirs, only.isPresent(), highest);
        List<SchemeNet> tags = shown.unit().network().nodes().stream()
                .map(Node::name)
                .filter(node -> met(node, boxes, leaks))
                .map(nets::tag)
                .toList();
        boolean known = shown.state().isPresent();
        List<String> changed = lines.stream()
                .filter(line -> parts.boxed(line) || parts.gathered(line))
                .map(DescribedCircuit.PartLine::name)
                .filter(shown::changed)
                .toList();
        return new DrawnScheme(
                new Scheme(
                        DrawPhrase.heading(
                                circuit.name(), only.map(Frames::label).orElse("")),
                        notes(shown, changed, tags),
                        Frames.labels(),
                        boxes,
                        tags,
                        new Scheme.ScaleKey(
                                known ? Quantity.PRESSURE.with(units, 0) : "",
                                known ? Quantity.PRESSURE.with(units, highest) : "",
                                known ? DrawPhrase.widest(units, widest) : "",
                                shown.against()
                                        .map(other -> DrawPhrase.marked(other.build()))
                                        .orElse(""),
                                DrawPhrase.signs(only.isPresent()))),
                leaks.size(),
                changed);
    }

    /** Where a spool that is stuck in one build moves in another, both are drawn alike. */
    private static Set<String> moving(DescribedCircuit circuit) {
        return circuit.units().values().stream()
                .flatMap(unit -> unit.network().parts().stream())
                .filter(placed -> SchemeParts.spool(placed.part()).isPresent())
                .map(Placed::name)
                .collect(Collectors.toSet());
    }

    private static List<String> notes(DrawnState shown, List<String> changed, List<SchemeNet> tags) {
        List<String> notes = new ArrayList<>();
        String build = shown.unit().build();
        notes.add(shown.duty()
                .map(duty -> shown.state().isPresent()
                        ? DrawPhrase.state(build, duty.name(), duty.speed(), duty.range())
                        : DrawPhrase.unsolved(build, duty.name()))
                .orElseGet(() -> DrawPhrase.still(build)));
        if (shown.state().isPresent()) {
            notes.add(DrawPhrase.FLOWS);
        }
        shown.against()
                .ifPresent(other -> notes.add(DrawPhrase.against(other.build(), changed.size(), (int)
                        tags.stream().filter(SchemeNet::changed).count())));
        return notes;
    }

    /** A check valve stands with what feeds it, all else where its oil is booked. */
    private static Frames frame(DrawnState shown, DescribedCircuit.PartLine line, DescribedCircuit circuit) {
        if (line.figure().symbol() == GraphicSymbol.CHECK_VALVE) {
            String inlet = line.figure().ports().get(0).node();
            for (DescribedCircuit.PartLine other : circuit.parts()) {
                if (other.figure().ports().contains(new PartFigure.FigurePort(inlet, PartFigure.FigureRole.OUT))) {
                    return booked(shown, other);
                }
            }
        }
        return booked(shown, line);
    }

    private static Frames booked(DrawnState shown, DescribedCircuit.PartLine line) {
        return Frames.of(shown.unit().network().part(line.name()).orElseThrow().group());
    }

    private static boolean met(String node, List<SchemePart> boxes, List<DescribedCircuit.PartLine> leaks) {
        return boxes.stream().flatMap(box -> box.pins().stream()).map(Pin::net).anyMatch(node::equals)
                || leaks.stream()
                        .flatMap(line -> line.figure().ports().stream())
                        .anyMatch(port -> port.node().equals(node));
    }
}
