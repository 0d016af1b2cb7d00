package hotidle.assess;

/** What the line pressure that a command brings comes to, beside the one that an engine torque needs. */
public enum LineVerdict {
    SHORT,
    FITS,
    WASTES,
    NOT_KNOWN
}
