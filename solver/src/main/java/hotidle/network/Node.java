package hotidle.network;

import java.util.OptionalDouble;

/**
 * A place of one pressure.
 *
 * @param name its name
 * @param held gauge pressure at which it is held [Pa], as the sump is; empty where the pressure is asked for
 * @param rated gauge pressure that what holds the oil there bears by its maker, a housing or a piston [Pa]; empty where nobody said
 */
public record Node(String name, OptionalDouble held, OptionalDouble rated) {

    /** A node of which nobody said what holds its oil. */
    public Node(String name, OptionalDouble held) {
        this(name, held, OptionalDouble.empty());
    }

    /** A node whose pressure is asked for. */
    public static Node free(String name) {
        return new Node(name, OptionalDouble.empty());
    }

    /** A node held at a gauge pressure [Pa]. */
    public static Node held(String name, double pressure) {
        return new Node(name, OptionalDouble.of(pressure));
    }
}
