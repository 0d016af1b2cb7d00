package hotidle.transmission;

import hotidle.network.Network;
import hotidle.network.Placed;
import hotidle.part.CheckValve;
import hotidle.part.Converter;
import hotidle.part.Cooler;
import hotidle.part.Filter;
import hotidle.part.LubeBranch;
import hotidle.part.Orifice;
import hotidle.part.Passage;
import hotidle.part.PumpChamber;
import hotidle.part.Selector;
import hotidle.part.SignalValve;
import hotidle.part.Solenoid;
import hotidle.part.SpoolValve;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Pressures that nodes have as the control means them, known from the network's ways before any state is solved: that of the line, of
 * a held node, or what a pilot valve is asked for, whether its supply carries that or not. Selector and passages hand a pressure on;
 * so does an orifice to where nothing flows. A check valve hands on the higher of two, less what it takes to crack. Leaks are left out, and what
 * flow costs in a selector and in passages. Behind an orifice from which oil goes on, or may go on through a spool's opening, nothing
 * is known.
 */
final class Signals {

    /**
     * The pressure of a node while the line has some pressure.
     *
     * @param value [Pa]
     * @param slope by the line's pressure [-]
     */
    record Known(double value, double slope) {

        private static Known higher(Known one, Known other) {
            return other.value > one.value ? other : one;
        }

        private boolean agrees(Known other) {
            return value == other.value && slope == other.slope;
        }

        private Known less(double drop) {
            return new Known(value - drop, slope);
        }
    }

    private final Network network;
    private final String line;
    private final Control control;

    Signals(Network network, String line, Control control) {
        this.network = network;
        this.line = line;
        this.control = control;
    }

    /** The pressure of a node with the line at a pressure [Pa]; empty where it is not known. */
    Optional<Known> at(String node, double pressure) {
        return at(node, pressure, new HashSet<>());
    }

    /**
     * @param asking nodes being asked for: a circle of check valves feeds nothing
     */
    private Optional<Known> at(String node, double pressure, Set<String> asking) {
        if (!asking.add(node)) {
            return Optional.empty();
        }
        Set<String> wide = spread(node, false);
        List<Known> sources = sources(wide, pressure);
        if (!sources.isEmpty()) {
            return same(sources);
        }
        Set<String> still = spread(node, true);
        if (moved(still)) {
            return Optional.empty();
        }
        List<Known> behind = sources(still, pressure);
        List<Known> checked = checked(still, pressure, asking);
        if (behind.isEmpty()) {
            return checked.stream().reduce(Known::higher);
        }
        // a check valve that pushes oil on through the throttle makes a pressure of its own
        return same(behind).filter(known -> checked.stream().allMatch(other -> other.value() <= known.value()));
    }

    /** The one pressure of sources that agree; empty where they do not, or there is none. */
    private static Optional<Known> same(List<Known> sources) {
        return sources.stream().findFirst().filter(first -> sources.stream().allMatch(first::agrees));
    }

    private List<Known> sources(Set<String> nodes, double pressure) {
        return nodes.stream().flatMap(node -> source(node, pressure).stream()).toList();
    }

    /** What holds a node's pressure: the line, a held node, a pilot valve. */
    private Optional<Known> source(String node, double pressure) {
        if (node.equals(line)) {
            return Optional.of(new Known(pressure, 1));
        }
        Optional<Known> held = network.nodes().stream()
                .filter(one -> one.name().equals(node) && one.held().isPresent())
                .map(one -> new Known(one.held().getAsDouble(), 0))
                .findFirst();
        return held.or(() -> same(pilots(node).stream().map(this::asked).toList()));
    }

    private Known asked(Placed valve) {
        return new Known(
                valve.part() instanceof SignalValve mechanical
                        ? mechanical.demand().pressure(control.sensed())
                        : control.commands().getOrDefault(valve.name(), 0.0),
                0);
    }

    private List<Placed> pilots(String node) {
        return network.parts().stream()
                .filter(placed -> (placed.part() instanceof Solenoid || placed.part() instanceof SignalValve)
                        && placed.nodes().get(1).equals(node))
                .toList();
    }

    /** Check valves that let oil in from elsewhere. */
    private List<Known> checked(Set<String> nodes, double pressure, Set<String> asking) {
        List<Known> found = new ArrayList<>();
        for (Placed placed : network.parts()) {
            if (placed.part() instanceof CheckValve valve
                    && nodes.contains(placed.nodes().get(1))
                    && !nodes.contains(placed.nodes().get(0))) {
                at(placed.nodes().get(0), pressure, new HashSet<>(asking))
                        .map(known -> known.less(valve.poppet().cracking()))
                        .ifPresent(found::add);
            }
        }
        return found;
    }

    /** The node and those that its pressure reaches by ways that are open for certain, up to what holds a pressure. */
    private Set<String> spread(String start, boolean throttles) {
        Set<String> reached = new LinkedHashSet<>(Set.of(start));
        Deque<String> open = new ArrayDeque<>(reached);
        while (!open.isEmpty()) {
            String node = open.pop();
            if (!node.equals(line) && !held(node) && pilots(node).isEmpty()) {
                for (Placed placed : network.parts()) {
                    next(placed, node, throttles).stream().filter(reached::add).forEach(open::push);
                }
            }
        }
        return reached;
    }

    private List<String> next(Placed placed, String node, boolean throttles) {
        List<String> next = new ArrayList<>();
        List<String> nodes = placed.nodes();
        if (placed.part() instanceof Selector selector) {
            for (Selector.Connection link : selector.links()) {
                if (link.ranges().contains(control.range())) {
                    other(nodes.get(link.from()), nodes.get(link.to()), node, next);
                }
            }
        } else if (placed.part() instanceof Passage || (throttles && throttle(placed))) {
            other(nodes.get(0), nodes.get(1), node, next);
        }
        return next;
    }

    private static void other(String one, String two, String node, List<String> next) {
        if (node.equals(one)) {
            next.add(two);
        } else if (node.equals(two)) {
            next.add(one);
        }
    }

    private static boolean throttle(Placed placed) {
        return placed.part() instanceof Orifice
                || placed.part() instanceof Filter
                || placed.part() instanceof Cooler
                || placed.part() instanceof LubeBranch;
    }

    /** Whether a pump, a converter or a spool's opening may move oil there. */
    private boolean moved(Set<String> nodes) {
        return network.parts().stream()
                .anyMatch(placed -> moving(placed).stream()
                        .anyMatch(node -> nodes.contains(node) && !node.equals(line) && !held(node)));
    }

    private boolean held(String node) {
        return network.nodes().stream()
                .anyMatch(one -> one.name().equals(node) && one.held().isPresent());
    }

    private static List<String> moving(Placed placed) {
        if (placed.part() instanceof SpoolValve valve) {
            return valve.openings().stream()
                    .flatMap(opening -> List.of(opening.from(), opening.to()).stream())
                    .map(placed.nodes()::get)
                    .toList();
        }
        return placed.part() instanceof PumpChamber || placed.part() instanceof Converter ? placed.nodes() : List.of();
    }
}
