package hotidle.study;

import java.util.OptionalDouble;

/** What a change of a build does to its onset of regulation. */
public enum OnsetShift {
    /** It did not regulate before, so nothing is told of a shift. */
    NONE_BEFORE,
    /** It regulated before and does no more. */
    LOST,
    MOVED,
    SAME;

    /** Onsets nearer than this are one and the same: 1 rpm, twice what a search narrows them down to (assumed by us) [rev/s]. */
    private static final double NEAR = 1 / 60.0;

    /** Between two onsets [rev/s]; empty is a build that does not regulate. */
    static OnsetShift between(OptionalDouble was, OptionalDouble is) {
        if (was.isEmpty()) {
            return NONE_BEFORE;
        }
        if (is.isEmpty()) {
            return LOST;
        }
        return Math.abs(is.getAsDouble() - was.getAsDouble()) >= NEAR ? MOVED : SAME;
    }
}
