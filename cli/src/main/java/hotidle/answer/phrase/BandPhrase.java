package hotidle.answer.phrase;

import java.util.List;

/** How far leading answers may lie with fits that nobody measured. */
public final class BandPhrase {

    private BandPhrase() {}

    /**
     * The band of a build.
     *
     * @param sizes that are not measured
     * @param bands {@link #reads} and {@link #holds}, as far as there are; none where slopes tell nothing of such units
     */
    public static String said(String build, int sizes, List<String> bands) {
        String such = build + " with " + CountPhrase.of(sizes, "size") + " not measured, those of fits taken as worn: ";
        return bands.isEmpty()
                ? such + "how far such units lie from it is not known to first order; 'hotidle spread' draws them."
                : such + "such units " + String.join(" and ", bands)
                        + " (nine in ten to first order, rather too narrow: 'hotidle spread' draws them).";
    }

    /** What their gauge reads. */
    public static String reads(String line) {
        return "read " + line;
    }

    /** From which speed the line holds. */
    public static String holds(String speeds) {
        return "hold from " + speeds;
    }

    /** Two ends with their unit; one number where both read alike. */
    public static String between(String low, String high, String unit) {
        return (low.equals(high) ? "about " + high : low + " to " + high) + " " + unit;
    }
}
