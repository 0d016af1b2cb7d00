package hotidle.answer.phrase;

import java.util.List;

/** How far leading answers may lie with fits that nobody measured. */
public final class BandPhrase {

    private BandPhrase() {}

    /**
     * The band of a build.
     *
     * @param notMeasured sizes that are not measured and count as new
     * @param wearing     those of them that wear
     * @param bands       {@link #reads} and {@link #holds}, as far as there are; none where slopes tell nothing of such units
     */
    public static String said(String build, long notMeasured, int wearing, List<String> bands) {
        String such = build + ": " + CountPhrase.of(notMeasured, "size")
                + (notMeasured == 1 ? " is not measured and counts" : " are not measured and count")
                + " as new above. Were the " + wearing + " that wear" + (wearing == 1 ? "s" : "")
                + " as worn as in service, ";
        return bands.isEmpty()
                ? such
                        + "what such units would do cannot be foretold from this one; 'hotidle spread' draws and solves them."
                : such + "such units would " + String.join(" and ", bands)
                        + " (nine in ten; an estimate, rather too narrow: 'hotidle spread' draws them).";
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
