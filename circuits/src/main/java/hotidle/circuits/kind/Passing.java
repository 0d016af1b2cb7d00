package hotidle.circuits.kind;

/** How a kind of part passes oil, as far as can be said before a state is solved. One way only is said by its paths. */
public enum Passing {
    /** Always open, and so wide that what is behind it is the line itself. */
    WIDE,
    /** Always open, and a throttle. */
    THROTTLE,
    /** By ranges: each of its {@link Kind.FlowPath paths} is open for certain in its ranges and shut in all others. */
    BY_RANGE,
    /** Open or shut, or somewhere between, by the state: not known before it is solved. */
    BY_STATE,
    /** The same; it opens to end the rise of the pressure at its first path's beginning. */
    RELIEF,
    /** A leak, and no way for oil. */
    LEAK
}
