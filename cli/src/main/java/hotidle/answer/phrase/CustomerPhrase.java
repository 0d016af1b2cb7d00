package hotidle.answer.phrase;

import java.util.List;

/** What a report says to who pays for the work and does not know the trade. */
public final class CustomerPhrase {

    private CustomerPhrase() {}

    /** Whether the gauge readings of a unit fit the build that is told of. */
    public static String readings(boolean agree) {
        return agree
                ? "The gauge readings of your unit fit the build shown here."
                : "The gauge readings of your unit do NOT fit the build shown here: what follows is not said of your unit until the"
                        + " cause is found.";
    }

    /**
     * What a build comes to.
     *
     * @param why   its first limit, as {@link BuildVerdictPhrase} says it; empty where it holds with ease
     * @param looks whether it fails, is not known, is narrow or holds
     */
    public static String verdict(String build, Looks looks, String why) {
        String reason = why.isEmpty() ? "." : ": " + why;
        return build
                + switch (looks) {
                    case FAILS -> " DOES NOT HOLD" + reason;
                    case OPEN -> ": whether it holds is NOT KNOWN" + reason;
                    case NARROW -> " holds as far as is known, with less than a tenth to spare" + reason;
                    case HOLDS -> " holds as far as is known, with more than a tenth to spare.";
                };
    }

    /** What a build comes to. */
    public enum Looks {
        FAILS,
        OPEN,
        NARROW,
        HOLDS
    }

    /** Words that it takes to read it. */
    public static final List<String> WORDS =
            List.of("set pressure", "build", "driving condition", "headroom", "pump slip", "leaks", "not known");

    /** A word and what it means. */
    public static String word(String word, String meaning) {
        return word + ": " + meaning + ".";
    }

    /** Where all of it stands. */
    public static final String WHOLE =
            "The shop's own report has every limit, number, assumption and source behind this page.";
}
