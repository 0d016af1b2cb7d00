package hotidle.network;

import java.util.OptionalDouble;

/**
 * A place of one pressure.
 *
 * @param name its name
 * @param held gauge pressure at which it is held [Pa], as the sump is; empty where the pressure is asked for
 */
public record Node(String name, OptionalDouble held) {

    /** A node whose pressure is asked for. */
    public static Node free(String name) {
        return new Node(name, OptionalDouble.empty());
    }

    /** A node held at a gauge pressure [Pa]. */
    public static Node held(String name, double pressure) {
        return new Node(name, OptionalDouble.of(pressure));
    }
}
