package hotidle.network;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Nodes and the parts between them.
 *
 * @param nodes all nodes, the held ones among them
 * @param parts all parts
 */
public record Network(List<Node> nodes, List<Placed> parts) {

    public Network {
        nodes = List.copyOf(nodes);
        parts = List.copyOf(parts);
        Set<String> known = new HashSet<>();
        for (Node node : nodes) {
            if (!known.add(node.name())) {
                throw new IllegalArgumentException("two nodes are named " + node.name());
            }
        }
        Set<String> names = new HashSet<>();
        for (Placed placed : parts) {
            if (!names.add(placed.name())) {
                throw new IllegalArgumentException("two parts are named " + placed.name());
            }
            for (String node : placed.nodes()) {
                if (!known.contains(node)) {
                    throw new IllegalArgumentException(placed.name() + " stands at " + node + ", which is no node");
                }
            }
        }
    }

    /** The part of a name. */
    public Optional<Placed> part(String name) {
        return parts.stream().filter(placed -> placed.name().equals(name)).findFirst();
    }

    /** The same network with one part exchanged for another of its name. */
    public Network with(Placed changed) {
        return new Network(
                nodes,
                parts.stream()
                        .map(placed -> placed.name().equals(changed.name()) ? changed : placed)
                        .toList());
    }
}
