package hotidle.circuits.check;

import hotidle.circuits.kind.Kind;
import hotidle.circuits.kind.Parts;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/** How far oil gets along the paths of parts. */
final class Reachable {

    private Reachable() {}

    /** The paths through a part. */
    static List<Kind.FlowPath> paths(Parts.DeclaredPart part) {
        return part.kind().paths().apply(part.given());
    }

    /** Nodes that oil can get to or come from, both ways along every path. */
    static Set<String> of(Parts parts, Collection<String> from, Predicate<Kind.FlowPath> open) {
        Map<String, Set<String>> next = new HashMap<>();
        for (Parts.DeclaredPart part : parts.all().values()) {
            paths(part).stream().filter(open).forEach(path -> {
                next.computeIfAbsent(path.from(), name -> new LinkedHashSet<>()).add(path.to());
                next.computeIfAbsent(path.to(), name -> new LinkedHashSet<>()).add(path.from());
            });
        }
        return spread(from, next);
    }

    /** Everything that can be got to from some nodes. */
    static Set<String> spread(Collection<String> from, Map<String, Set<String>> next) {
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
}
