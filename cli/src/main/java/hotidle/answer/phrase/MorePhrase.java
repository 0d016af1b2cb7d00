package hotidle.answer.phrase;

/** What a first screen leaves for the whole text. */
public final class MorePhrase {

    private MorePhrase() {}

    /** Lines of a sort that found no room. */
    public static String lines(long count, String noun) {
        return CountPhrase.of(count, "more " + noun) + " (--full).";
    }

    /**
     * Every so manieth engine speed is shown.
     *
     * @param besides speeds shown that were not asked for: the driving condition's own, and those at which something begins
     */
    public static String speeds(int shown, int all, int besides) {
        return shown + " of the " + all + " speeds asked for shown"
                + (besides == 0 || shown == 0 ? "" : ", and " + besides + " at which something begins or is judged")
                + " (--full has all).";
    }

    /** Every value of a sort that is left to the program. */
    public static String defaults(int count) {
        return CountPhrase.of(count, "value") + " left to the program (--full).";
    }

    /** Sizes past their wear limit, the worst first; those that found no room are counted. */
    public static String past(String worst, int more) {
        return "past the wear limit: " + worst + (more > 0 ? "; and " + more + " more (--full)" : "");
    }

    /** How many sizes were measured. */
    public static String measured(long measured, long sizes) {
        return measured + " of " + CountPhrase.of(sizes, "size") + " measured, the others taken as new";
    }

    /** Names alone, with where their meaning stands. */
    public static String names(String what, String names, String command) {
        return what + ": " + names + ". '" + command + "' says what each is.";
    }
}
