package hotidle.circuits.kind;

import hotidle.circuits.kind.PartFigure.FigurePort;
import hotidle.circuits.kind.PartFigure.FigureRole;
import hotidle.circuits.kind.PartFigure.FigureWay;
import hotidle.circuits.shape.Attributes;
import java.util.ArrayList;
import java.util.List;

/** How valves with positions are drawn. */
final class ValveFigures {

    private ValveFigures() {}

    /** A spool between two stops: openings by their edges, areas by the end at which they push. */
    static PartFigure spool(Attributes given, List<Kind.FlowPath> paths) {
        List<Kind.FlowPath> through =
                paths.stream().filter(path -> !path.from().equals(path.to())).toList();
        List<FigurePort> ports = new ArrayList<>(PartFigure.ports(through));
        double rest = given.rows("stops").get(0).x();
        double stop = given.rows("stops").get(1).x();
        List<FigureWay> ways = new ArrayList<>();
        for (Attributes opening : given.groups("openings").values()) {
            double edge = opening.number("edge");
            boolean up = opening.word("opens").equals("up");
            ways.add(new FigureWay(
                    opening.word("from"),
                    opening.word("to"),
                    up ? rest > edge : rest < edge,
                    up ? stop > edge : stop < edge,
                    List.of()));
        }
        for (Attributes area : given.groups("areas").values()) {
            FigurePort port = new FigurePort(
                    area.word("node"),
                    area.word("acts").equals("open") ? FigureRole.PILOT : FigureRole.PILOT_AT_SPRING);
            if (!ports.contains(port)) {
                ports.add(port);
            }
        }
        return new PartFigure(GraphicSymbol.SPOOL_VALVE, ports, ways);
    }

    /** A valve moved by hand: each passage in its ranges. */
    static PartFigure selector(Attributes given, List<Kind.FlowPath> paths) {
        List<FigureWay> ways = paths.stream()
                .filter(path -> !path.from().equals(path.to()))
                .map(path -> new FigureWay(path.from(), path.to(), true, true, path.ranges()))
                .toList();
        List<FigurePort> ports = PartFigure.ports(paths).stream()
                .filter(port -> port.role() != FigureRole.PILOT)
                .toList();
        return new PartFigure(GraphicSymbol.SELECTOR, ports, ways);
    }

    /** A valve that makes a pilot pressure between its supply and its exhaust: shut at rest, fed at its stop. */
    static PartFigure piloting(GraphicSymbol symbol, List<Kind.FlowPath> paths) {
        return new PartFigure(
                symbol,
                PartFigure.ports(paths),
                List.of(
                        new FigureWay(paths.get(0).from(), paths.get(0).to(), false, true, List.of()),
                        new FigureWay(paths.get(1).from(), paths.get(1).to(), true, false, List.of())));
    }
}
