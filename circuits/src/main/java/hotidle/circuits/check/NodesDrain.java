package hotidle.circuits.check;

import hotidle.circuits.kind.Parts;
import hotidle.circuits.shape.Attributes;
import hotidle.circuits.text.ProblemCode;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A node is held, and every other one touches a part and has a way to a held one in every range. */
final class NodesDrain implements Rule.OfCircuit {

    @Override
    public void check(Attributes file, Parts parts) {
        if (!parts.nodesKnown()) {
            return;
        }
        Map<String, Attributes> nodes = file.groups("nodes");
        List<String> held = nodes.values().stream()
                .filter(node -> node.has("held"))
                .map(Attributes::name)
                .toList();
        if (held.isEmpty() && !nodes.isEmpty()) {
            file.error(
                    ProblemCode.NO_NODE_HELD,
                    "nodes",
                    "has no node that is held",
                    "the sump holds the pressure that all others are counted from",
                    "write sump: {held: 0 psi}");
            return;
        }
        Set<String> touched = new LinkedHashSet<>();
        parts.all()
                .values()
                .forEach(part ->
                        Reachable.paths(part).forEach(path -> touched.addAll(List.of(path.from(), path.to()))));
        Set<String> drained = Reachable.of(parts, held, path -> true);
        for (Attributes node : nodes.values()) {
            if (!touched.contains(node.name())) {
                node.error(
                        ProblemCode.NODE_WITHOUT_PART,
                        "",
                        "touches no part",
                        "its pressure would be anything",
                        "leave it out, or name it in a part");
            } else if (!drained.contains(node.name())) {
                cutOff(node, "");
            }
        }
        for (String range : file.groups("ranges").keySet()) {
            Set<String> inRange = Reachable.of(
                    parts,
                    held,
                    path -> path.ranges().isEmpty() || path.ranges().contains(range));
            nodes.values().stream()
                    .filter(node -> drained.contains(node.name()) && !inRange.contains(node.name()))
                    .forEach(node -> cutOff(node, " in range " + range));
        }
    }

    private static void cutOff(Attributes node, String when) {
        node.error(
                ProblemCode.NODE_SHUT_IN,
                "",
                "has no way to the sump" + when,
                "oil that cannot leave leaves its pressure open; every node leaks or is vented",
                "add the leak or vent that it has");
    }
}
