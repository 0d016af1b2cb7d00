package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A part as it is drawn.
 *
 * @param symbol its symbol
 * @param ports  where lines meet it, one a node and role
 * @param ways   of a valve: what it joins, and when
 */
public record PartFigure(GraphicSymbol symbol, List<FigurePort> ports, List<FigureWay> ways) {

    /** What a line is to a part. */
    public enum FigureRole {
        /** Oil comes in. */
        IN,
        /** Oil goes out. */
        OUT,
        /** Pressure that moves it against its spring. */
        PILOT,
        /** Pressure that helps its spring. */
        PILOT_AT_SPRING
    }

    /** Where a line meets it. */
    public record FigurePort(String node, FigureRole role) {}

    /**
     * What a valve joins.
     *
     * @param from   a node
     * @param to     a node
     * @param atRest whether it is open where the spring holds the spool
     * @param atStop whether it is open at the far stop
     * @param ranges in which it is open, empty for all
     */
    public record FigureWay(String from, String to, boolean atRest, boolean atStop, List<String> ranges) {
        public FigureWay {
            ranges = List.copyOf(ranges);
        }
    }

    public PartFigure {
        ports = List.copyOf(ports);
        ways = List.copyOf(ways);
    }

    /** Makes the figure of a part of a kind, of what was read without fault. */
    public interface Drawn {
        PartFigure of(Attributes given, List<Kind.FlowPath> paths);

        /** As its paths say: in where one begins, out where one ends, a pilot where a node is only read. */
        static Drawn by(GraphicSymbol symbol) {
            return (given, paths) -> new PartFigure(symbol, ports(paths), List.of());
        }
    }

    /** Ports by the paths; a node that is met more than once counts as what it is first. */
    static List<FigurePort> ports(List<Kind.FlowPath> paths) {
        Map<String, FigureRole> roles = new LinkedHashMap<>();
        for (Kind.FlowPath path : paths) {
            if (!path.from().equals(path.to())) {
                roles.putIfAbsent(path.from(), FigureRole.IN);
                roles.putIfAbsent(path.to(), FigureRole.OUT);
            }
        }
        for (Kind.FlowPath path : paths) {
            roles.putIfAbsent(path.from(), FigureRole.PILOT);
        }
        List<FigurePort> ports = new ArrayList<>();
        roles.forEach((node, role) -> ports.add(new FigurePort(node, role)));
        return ports;
    }
}
