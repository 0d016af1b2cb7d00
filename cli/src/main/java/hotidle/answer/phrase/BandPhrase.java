package hotidle.answer.phrase;

/** How far leading answers may lie with fits that nobody measured. */
public final class BandPhrase {

    /** Where the middle unit holds its line at no speed asked, or at all. */
    public static final String NO_SPEED = "";

    private BandPhrase() {}

    /**
     * The band of a build.
     *
     * @param sizes that are not measured
     * @param line  its line pressure, as {@link #between}
     * @param holds as {@link #holds}, or {@link #NO_SPEED}
     */
    public static String said(String build, int sizes, String line, String holds) {
        return build + " with " + CountPhrase.of(sizes, "size")
                + " not measured, those of fits taken as worn: such units read " + line + holds
                + " (nine in ten to first order, rather too narrow: 'hotidle spread' draws them).";
    }

    /** From which speed the line holds. */
    public static String holds(String speeds) {
        return " and hold from " + speeds;
    }

    /** Two ends with their unit; one number where both read alike. */
    public static String between(String low, String high, String unit) {
        return (low.equals(high) ? "about " + high : low + " to " + high) + " " + unit;
    }
}
