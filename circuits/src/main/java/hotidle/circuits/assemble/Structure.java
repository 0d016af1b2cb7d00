package hotidle.circuits.assemble;

import hotidle.circuits.kind.Kind;
import hotidle.circuits.kind.Passing;
import hotidle.circuits.shape.Attributes;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/** Checks how the parts hang together: every node touched and with a way to the sump, every pump with a ceiling. */
public final class Structure {

    private final Attributes file;
    private final Parts parts;

    private Structure(Attributes file, Parts parts) {
        this.file = file;
        this.parts = parts;
    }

    /** Notes everything that is wrong with the structure. */
    public static void check(Attributes file, Parts parts) {
        Structure structure = new Structure(file, parts);
        structure.loops();
        if (parts.nodesKnown()) {
            structure.nodes();
            structure.ceilings();
        }
        structure.idleClutches();
    }

    private Collection<Parts.One> all() {
        return parts.all().values();
    }

    private static List<Kind.Path> paths(Parts.One part) {
        return part.kind().paths().apply(part.given());
    }

    private void loops() {
        for (Parts.One part : all()) {
            loop(part.given());
            part.given().groups("openings").values().forEach(this::loop);
            part.given().groups("passages").values().forEach(this::loop);
        }
    }

    private void loop(Attributes given) {
        if (given.has("from") && given.text("from").equals(given.text("to"))) {
            given.error(
                    "to",
                    "has both ends at '" + given.text("to") + "'",
                    "no oil flows between a node and itself",
                    "name another node in from or to");
        }
    }

    private void nodes() {
        Map<String, Attributes> nodes = file.groups("nodes");
        List<String> held = nodes.values().stream()
                .filter(node -> node.has("held"))
                .map(Attributes::name)
                .toList();
        if (held.isEmpty() && !nodes.isEmpty()) {
            file.error(
                    "nodes",
                    "has no node that is held",
                    "the sump holds the pressure that all others are counted from",
                    "write sump: {held: 0 psi}");
            return;
        }
        Set<String> touched = new LinkedHashSet<>();
        all().forEach(part -> paths(part).forEach(path -> touched.addAll(List.of(path.from(), path.to()))));
        Set<String> drained = reach(held, path -> true);
        for (Attributes node : nodes.values()) {
            if (!touched.contains(node.name())) {
                node.error(
                        "", "touches no part", "its pressure would be anything", "leave it out, or name it in a part");
            } else if (!drained.contains(node.name())) {
                cutOff(node, "");
            }
        }
        for (String range : file.groups("ranges").keySet()) {
            Set<String> inRange =
                    reach(held, path -> path.ranges().isEmpty() || path.ranges().contains(range));
            nodes.values().stream()
                    .filter(node -> drained.contains(node.name()) && !inRange.contains(node.name()))
                    .forEach(node -> cutOff(node, " in range " + range));
        }
    }

    private static void cutOff(Attributes node, String when) {
        node.error(
                "",
                "has no way to the sump" + when,
                "oil that cannot leave leaves its pressure open; every node leaks or is vented",
                "add the leak or vent that it has");
    }

    /** Nodes that oil can get to or come from, both ways along every path. */
    private Set<String> reach(Collection<String> from, Predicate<Kind.Path> open) {
        Map<String, Set<String>> next = new HashMap<>();
        for (Parts.One part : all()) {
            paths(part).stream().filter(open).forEach(path -> {
                next.computeIfAbsent(path.from(), name -> new LinkedHashSet<>()).add(path.to());
                next.computeIfAbsent(path.to(), name -> new LinkedHashSet<>()).add(path.from());
            });
        }
        return spread(from, next);
    }

    private static Set<String> spread(Collection<String> from, Map<String, Set<String>> next) {
        Set<String> reached = new LinkedHashSet<>(from);
        Deque<String> open = new ArrayDeque<>(from);
        while (!open.isEmpty()) {
            for (String node : next.getOrDefault(open.pop(), Set.of())) {
                if (reached.add(node)) {
                    open.push(node);
                }
            }
        }
        return reached;
    }

    /** A pump's outlet needs a relief valve that it can reach without passing a pump or a held node, or a check valve backwards. */
    private void ceilings() {
        Map<String, Set<String>> next = new HashMap<>();
        List<String> relieved = new ArrayList<>();
        List<Attributes> pumps = new ArrayList<>();
        for (Parts.One part : all()) {
            if (part.kind().isPump()) {
                pumps.add(part.given());
                continue;
            }
            if (part.kind().facts().passing() == Passing.RELIEF) {
                paths(part).stream().limit(1).map(Kind.Path::from).forEach(relieved::add);
            }
            paths(part).forEach(path -> join(path, next));
        }
        for (Attributes pump : pumps) {
            if (pump.has("to")
                    && spread(List.of(pump.word("to")), next).stream().noneMatch(relieved::contains)) {
                pump.error(
                        "to",
                        "has no relief valve at its outlet",
                        "with every valve shut the pressure must still end somewhere",
                        "add a relief-valve from '" + pump.word("to") + "' to the sump");
            }
        }
    }

    private void join(Kind.Path path, Map<String, Set<String>> next) {
        if (!held(path.from()) && !held(path.to())) {
            next.computeIfAbsent(path.from(), name -> new LinkedHashSet<>()).add(path.to());
            if (!path.oneWay()) {
                next.computeIfAbsent(path.to(), name -> new LinkedHashSet<>()).add(path.from());
            }
        }
    }

    private boolean held(String node) {
        return file.groups("nodes").containsKey(node)
                && file.groups("nodes").get(node).has("held");
    }

    private void idleClutches() {
        Set<String> applied = new LinkedHashSet<>();
        file.groups("ranges")
                .values()
                .forEach(range -> applied.addAll(range.groups("clutches").keySet()));
        boolean faulty = file.groups("ranges").values().stream().anyMatch(Attributes::broken);
        if (faulty || !parts.all().keySet().containsAll(applied)) {
            return;
        }
        for (Parts.One part : all()) {
            if (part.kind().isClutch() && !applied.contains(part.given().name())) {
                part.given()
                        .error(
                                "",
                                "is applied in no range",
                                "a clutch or band has its torque to hold in some range",
                                "name it in the clutches of a range");
            }
        }
    }
}
