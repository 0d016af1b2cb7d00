package hotidle.answer.draw;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.DrawPhrase;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.kind.GraphicSymbol;
import hotidle.circuits.kind.PartFigure;
import hotidle.network.Placed;
import hotidle.part.Form;
import hotidle.part.OwnState;
import hotidle.part.Part;
import hotidle.part.SpoolValve;
import hotidle.plots.scheme.Envelope;
import hotidle.plots.scheme.Pin;
import hotidle.plots.scheme.SchemePart;
import hotidle.plots.scheme.Symbol;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Parts of a circuit as boxes.
 *
 * @param units      in which numbers are shown
 * @param shown      build and state
 * @param reservoirs nodes that are drawn as reservoirs
 * @param moving     parts with a spool that moves in some build
 * @param widest     flow of the widest line [m³/s]; NaN where no state is known
 */
record SchemeParts(
        Quantity.UnitSystem units, DrawnState shown, Set<String> reservoirs, Set<String> moving, double widest) {

    private static final Set<GraphicSymbol> OPEN_TO_THE_PAN =
            Set.of(GraphicSymbol.LUBRICATED, GraphicSymbol.CLUTCH, GraphicSymbol.BAND);

    /** Whether a part is gathered with the other leaks of its node. */
    boolean gathered(DescribedCircuit.PartLine line) {
        return line.figure().symbol().leaks()
                && line.figure().ports().stream().anyMatch(port -> reservoirs.contains(port.node()));
    }

    /** Whether a part has a box of its own. */
    boolean boxed(DescribedCircuit.PartLine line) {
        return line.figure().symbol() != GraphicSymbol.NONE && !gathered(line);
    }

    SchemePart box(DescribedCircuit.PartLine line, Frames frame) {
        PartFigure figure = line.figure();
        Placed placed = shown.unit().network().part(line.name()).orElseThrow();
        List<Pin> pins = new ArrayList<>();
        for (PartFigure.FigurePort port : figure.ports()) {
            if (!OPEN_TO_THE_PAN.contains(figure.symbol()) || !reservoirs.contains(port.node())) {
                pins.add(new Pin(
                        port.node(),
                        Pin.Role.valueOf(port.role().name()),
                        Math.abs(shown.flow(line.name(), port.node())) / widest));
            }
        }
        boolean moves = moving.contains(line.name());
        double stands = spool(placed.part())
                .flatMap(state -> shown.state()
                        .map(known -> (known.own(line.name(), OwnState.POSITION) - state.low())
                                / (state.high() - state.low())))
                .orElse(Double.NaN);
        List<String> lines = new ArrayList<>();
        passes(line, placed.part()).ifPresent(lines::add);
        if (!Double.isNaN(stands)) {
            lines.add(DrawPhrase.stands(stands));
        }
        boolean changed = shown.changed(line.name());
        return new SchemePart(
                line.name(),
                Symbol.valueOf(figure.symbol().name()),
                frame.label(),
                lines,
                new KeptRoom(units).part(moves),
                DrawPhrase.part(line.name(), line.kind(), line.about(), lines, changed),
                pins,
                envelopes(figure),
                moves,
                stands,
                changed);
    }

    /** Where its spool may stand; empty where it has none, or it is stuck. */
    static Optional<Form.Unknown> spool(Part part) {
        return part.form().states().stream()
                .filter(state -> state.state().equals(OwnState.POSITION) && state.high() > state.low())
                .findFirst();
    }

    /** What runs through it; of a valve through which nothing but its leaks runs, that it is shut. */
    private Optional<String> passes(DescribedCircuit.PartLine line, Part part) {
        List<String> nodes =
                line.figure().ports().stream().map(PartFigure.FigurePort::node).toList();
        double flow = shown.flow(line.name(), nodes);
        if (!DrawPhrase.visible(units, flow)) {
            return Optional.empty();
        }
        boolean shut = part instanceof SpoolValve valve
                && shown.state()
                        .map(state -> ShutLands.of(valve, line.name(), state).negate())
                        .map(open -> shown.flow(line.name(), nodes, open))
                        .filter(open -> !DrawPhrase.visible(units, open))
                        .isPresent();
        return Optional.of(shut ? DrawPhrase.shut(units, flow) : DrawPhrase.flow(units, flow));
    }

    /** One for the far stop and one at the spring; of a selector, the one in which it stands. */
    private List<Envelope> envelopes(PartFigure figure) {
        if (figure.ways().isEmpty()) {
            return List.of();
        }
        if (figure.symbol() == GraphicSymbol.SELECTOR) {
            return List.of(new Envelope(figure.ways().stream()
                    .filter(way -> way.ranges().isEmpty() || way.ranges().contains(shown.range()))
                    .map(SchemeParts::link)
                    .toList()));
        }
        return List.of(
                new Envelope(figure.ways().stream()
                        .filter(PartFigure.FigureWay::atStop)
                        .map(SchemeParts::link)
                        .toList()),
                new Envelope(figure.ways().stream()
                        .filter(PartFigure.FigureWay::atRest)
                        .map(SchemeParts::link)
                        .toList()));
    }

    private static Envelope.Arrow link(PartFigure.FigureWay way) {
        return new Envelope.Arrow(way.from(), way.to());
    }
}
