package hotidle.answer.phrase;

import java.util.List;

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

    /** How many sizes were measured, and which were not: the first of them. */
    public static String measured(long measured, List<String> assumed) {
        String counted = "measured: " + measured + " of " + CountPhrase.of(measured + assumed.size(), "size");
        if (assumed.isEmpty()) {
            return counted;
        }
        int named = Math.min(MOST_NAMED, assumed.size());
        return counted + "; taken as new: " + assumed.size() + ", "
                + String.join(", ", assumed.subList(0, named))
                + (named < assumed.size() ? " and " + (assumed.size() - named) + " more" : "")
                + " (each by name: --full)";
    }

    /** Sizes not measured that are named (chosen). */
    private static final int MOST_NAMED = 4;

    /** All names of sizes that were measured, or that were not. */
    public static String each(boolean measured, List<String> sizes) {
        return (measured ? "measured, " : "not measured, taken as new, ") + sizes.size() + ": "
                + (sizes.isEmpty() ? "none" : String.join(", ", sizes));
    }

    /** Names alone, with where their meaning stands. */
    public static String names(String what, String names, String command) {
        return what + ": " + names + ". '" + command + "' says what each is.";
    }
}
