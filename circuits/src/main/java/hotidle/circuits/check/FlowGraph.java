package hotidle.circuits.check;

import hotidle.circuits.kind.Kind;
import hotidle.circuits.kind.Parts;
import hotidle.circuits.kind.Passing;
import hotidle.circuits.shape.Attributes;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The ways that oil has in one range, as far as the file alone can tell. A selector's passage is open or shut by its table; orifices,
 * pipes and filters are always open, a check valve one way. Whether a spool valve, a solenoid or anything else lets oil pass is not
 * known before the state is solved: such a way may be open. Gaps, rings and seals are leaks and no ways.
 */
final class FlowGraph {

    /** A node held higher is a supply; below lie the sump and exhausts kept full at a few psi (common practice) [Pa]. */
    private static final double SUPPLY = 1e5;

    /**
     * A way.
     *
     * @param passage the cell of a selector's table that opens it, where it is one
     * @param sure    whether it is open for certain
     * @param wide    whether it is no throttle either
     */
    private record FlowEdge(
            String from, String to, boolean oneWay, Optional<Attributes> passage, boolean sure, boolean wide) {

        /** The node that oil gets to from another one; empty where it does not. */
        private Optional<String> leads(String node) {
            if (node.equals(from)) {
                return Optional.of(to);
            }
            return node.equals(to) && !oneWay ? Optional.of(from) : Optional.empty();
        }
    }

    private final Set<String> sources = new LinkedHashSet<>();
    private final Set<String> drains = new LinkedHashSet<>();
    private final List<FlowEdge> ways = new ArrayList<>();
    private final Set<String> shutPorts = new LinkedHashSet<>();
    private final Set<String> line;
    private final Map<String, Optional<Attributes>> fed;
    private final Set<String> perhapsFed;

    /**
     * The ways of a range.
     *
     * @param file  the circuit, without fault
     * @param parts without fault
     */
    FlowGraph(Attributes file, Parts parts, String range) {
        file.groups("nodes")
                .forEach((name, node) ->
                        node.numberIf("held").ifPresent(held -> (held > SUPPLY ? sources : drains).add(name)));
        for (Parts.DeclaredPart part : parts.all().values()) {
            if (part.kind().isPump()) {
                sources.add(part.given().word("to"));
            } else {
                part.kind().paths().apply(part.given()).forEach(path -> add(path, part.kind(), range));
            }
        }
        line = spread(sources, FlowEdge::wide);
        fed = spreadSurely();
        perhapsFed = spread(sources, way -> true);
    }

    /** Nodes that certainly get oil from a pump or a supply, each with the last passage of a selector on the way, if any. */
    Map<String, Optional<Attributes>> fed() {
        return fed;
    }

    /** Nodes that may get oil from a pump or a supply, whatever valves do. */
    Set<String> perhapsFed() {
        return perhapsFed;
    }

    private void add(Kind.FlowPath path, Kind kind, String range) {
        Passing passing = kind.facts().passing();
        boolean readOnly = path.from().equals(path.to());
        boolean sure = passing == Passing.WIDE || passing == Passing.THROTTLE || passing == Passing.BY_RANGE;
        if (passing == Passing.LEAK || readOnly) {
            return;
        }
        if (passing == Passing.BY_RANGE && !path.ranges().contains(range)) {
            shutPorts.addAll(List.of(path.from(), path.to()));
        } else {
            ways.add(new FlowEdge(path.from(), path.to(), path.oneWay(), path.cell(), sure, passing == Passing.WIDE));
        }
    }

    private Map<String, Optional<Attributes>> spreadSurely() {
        Map<String, Optional<Attributes>> reached = new LinkedHashMap<>();
        sources.forEach(source -> reached.put(source, Optional.empty()));
        Deque<String> open = new ArrayDeque<>(sources);
        while (!open.isEmpty()) {
            String node = open.removeFirst();
            for (FlowEdge way : ways) {
                Optional<String> next = way.leads(node).filter(to -> way.sure && !drains.contains(to));
                if (next.isPresent() && !reached.containsKey(next.get())) {
                    reached.put(next.get(), way.passage.or(() -> reached.get(node)));
                    open.addLast(next.get());
                }
            }
        }
        return reached;
    }

    /** The passage of a selector by which a node certainly empties to the sump, other than through the line. */
    Optional<Attributes> vent(String start) {
        Set<String> seen = new LinkedHashSet<>(Set.of(start));
        Deque<String> open = new ArrayDeque<>(List.of(start));
        while (!open.isEmpty()) {
            String node = open.removeFirst();
            for (FlowEdge way : ways) {
                String next = way.leads(node).filter(to -> way.sure).orElse(node);
                if (drains.contains(next) && way.passage.isPresent()) {
                    return way.passage;
                }
                boolean goesOn = !drains.contains(next) && !line.contains(next);
                if (goesOn && seen.add(next)) {
                    open.addLast(next);
                }
            }
        }
        return Optional.empty();
    }

    /** Whether a node behind the line may have a way to the sump, so that it may stand low although it is fed. */
    boolean perhapsDrained(String start) {
        if (line.contains(start)) {
            return false;
        }
        Set<String> reached = new LinkedHashSet<>(Set.of(start));
        Deque<String> open = new ArrayDeque<>(reached);
        while (!open.isEmpty()) {
            String node = open.pop();
            for (FlowEdge way : ways) {
                String next = way.leads(node).orElse(node);
                if (drains.contains(next)) {
                    return true;
                }
                if (!line.contains(next) && reached.add(next)) {
                    open.push(next);
                }
            }
        }
        return false;
    }

    /** Whether two open passages end at one node, so that what the one feeds the other empties with no throttle between. */
    boolean meet(Attributes feed, Attributes vent) {
        return ways.stream()
                .filter(way -> way.passage.filter(passage -> passage == feed).isPresent())
                .anyMatch(one -> ways.stream()
                        .filter(way ->
                                way.passage.filter(passage -> passage == vent).isPresent())
                        .anyMatch(two -> Stream.of(two.from, two.to)
                                .anyMatch(node -> node.equals(one.from) || node.equals(one.to))));
    }

    /** Whether a node hangs on a selector that has shut it off, and on nothing else that might let oil in or out. */
    boolean shutIn(String node) {
        Set<String> around = new LinkedHashSet<>(Set.of(node));
        boolean grew = true;
        while (grew) {
            grew = false;
            for (FlowEdge way : ways) {
                if (around.contains(way.from) || around.contains(way.to)) {
                    grew |= around.addAll(List.of(way.from, way.to));
                }
            }
        }
        return around.stream().anyMatch(shutPorts::contains)
                && around.stream().noneMatch(one -> sources.contains(one) || drains.contains(one));
    }

    private Set<String> spread(Set<String> from, Predicate<FlowEdge> through) {
        Set<String> reached = new LinkedHashSet<>(from);
        Deque<String> open = new ArrayDeque<>(from);
        while (!open.isEmpty()) {
            String node = open.pop();
            ways.stream()
                    .filter(through)
                    .flatMap(way -> way.leads(node).stream())
                    .filter(next -> !drains.contains(next) && reached.add(next))
                    .forEach(open::push);
        }
        return reached;
    }
}
