package hotidle.study;

import hotidle.assess.Roles;
import hotidle.network.Network;
import hotidle.network.Placed;
import hotidle.newton.Series;
import hotidle.part.OwnState;
import hotidle.part.SpoolValve;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Whether the valves that give a pump's oil back to its inlet stand open. Where they open the hub's load leaps, as where a chamber is
 * unloaded and balances the other no more; elsewhere it moves with pressures and speed.
 */
final class PumpReturn {

    private final List<Edges> all = new ArrayList<>();

    /** The number by which a series knows the position of a valve, and the last of its edges [m]. */
    private record Edges(int position, double last) {
        boolean passed(double value) {
            return value > last;
        }
    }

    /** Of a unit that a series solves. */
    PumpReturn(Series series, Network network, Roles roles) {
        Set<String> inlets = nodes(roles, 0);
        Set<String> outlets = nodes(roles, 1);
        for (Placed placed : network.parts()) {
            if (placed.part() instanceof SpoolValve valve) {
                valve.openings().stream()
                        .filter(opening -> joins(placed, opening, outlets, inlets))
                        .mapToDouble(SpoolValve.Opening::edge)
                        .max()
                        .ifPresent(last ->
                                all.add(new Edges(series.number(placed.name() + "." + OwnState.POSITION), last)));
            }
        }
    }

    private static Set<String> nodes(Roles roles, int port) {
        return roles.chambers().stream()
                .map(chamber -> chamber.nodes().get(port))
                .collect(Collectors.toSet());
    }

    private static boolean joins(Placed valve, SpoolValve.Opening opening, Set<String> ones, Set<String> others) {
        String from = valve.nodes().get(opening.from());
        String to = valve.nodes().get(opening.to());
        return (ones.contains(from) && others.contains(to)) || (ones.contains(to) && others.contains(from));
    }

    /** Whether all of them are past all their edges in the state that the series has solved last. */
    boolean open(Series series) {
        for (Edges edges : all) {
            if (!edges.passed(series.value(edges.position()))) {
                return false;
            }
        }
        return true;
    }
}
