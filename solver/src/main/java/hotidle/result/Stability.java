package hotidle.result;

/** Whether a circuit that is moved a little from a steady state comes back to it. */
public enum Stability {
    /** It comes back. */
    STABLE,
    /** It leaves in growing swings, with the compliance and damping assumed; with others it may not. */
    SWINGING,
    /** It leaves in one direction, whatever compliance and damping are. */
    UNSTABLE
}
