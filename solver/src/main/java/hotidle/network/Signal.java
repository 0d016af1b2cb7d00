package hotidle.network;

import hotidle.part.OwnState;

/**
 * What a part reads from elsewhere: the pressure of a node, or the state of another part.
 *
 * @param owner name of the node or of the part
 * @param state name of the part's state; empty for the pressure of a node
 */
public record Signal(String owner, String state) {

    /** The gauge pressure of a node [Pa]. */
    public static Signal pressure(String node) {
        return new Signal(node, "");
    }

    /** A state of another part. */
    public static Signal state(String part, OwnState state) {
        return new Signal(part, state.name());
    }
}
