package hotidle.network;

import hotidle.part.Part;
import java.util.List;

/**
 * A part in its place.
 *
 * @param name    its name in the circuit
 * @param part    its kind and dimensions
 * @param region  whose temperature its oil has
 * @param group   what its oil is booked under
 * @param nodes   node at each port
 * @param signals source of each signal
 */
public record Placed(String name, Part part, String region, Group group, List<String> nodes, List<Signal> signals) {

    public Placed {
        nodes = List.copyOf(nodes);
        signals = List.copyOf(signals);
        int ports = part.form().ports().size();
        int wanted = part.form().signals().size();
        if (nodes.size() != ports || signals.size() != wanted) {
            throw new IllegalArgumentException(name + " has " + ports + " ports and " + wanted
                    + " signals and was given " + nodes.size() + " and " + signals.size());
        }
    }

    /** Of the name alone: all of its dimensions would be asked for each look into a map. */
    @Override
    public int hashCode() {
        return name.hashCode();
    }

    /** A part without signals. */
    public static Placed of(String name, Part part, String region, Group group, String... nodes) {
        return new Placed(name, part, region, group, List.of(nodes), List.of());
    }

    /** The same place with another part of the same form. */
    public Placed with(Part other) {
        return new Placed(name, other, region, group, nodes, signals);
    }
}
