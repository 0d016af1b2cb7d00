package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import java.util.List;

/** What a report says to who pays for the work and does not know the trade. */
public record CustomerPhrase(Quantity.UnitSystem units) {

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
     * @param build as {@link #asItIs} or {@link #builtAs} calls it
     * @param why   its first limit, as {@link CustomerLimitPhrase} says it; empty where it holds with ease
     * @param looks whether it fails, is not known, is narrow or holds
     */
    public static String verdict(String build, Looks looks, String why) {
        String reason = why.isEmpty() ? "." : ": " + why;
        return build
                + switch (looks) {
                    case FAILS -> " DOES NOT HOLD" + reason;
                    case OPEN -> " may or may not hold, which is NOT KNOWN" + reason;
                    case NARROW -> " holds as far as is known, with less than a tenth to spare" + reason;
                    case HOLDS -> " holds as far as is known, with more than a tenth to spare.";
                };
    }

    /** The build named first: the unit that came in. */
    public static String asItIs(String build) {
        return "The unit as it is (" + build + ")";
    }

    /**
     * Any other build.
     *
     * @param about what it is; may be empty
     */
    public static String builtAs(String build, String about) {
        return "If it is built as " + build + (about.isEmpty() ? "" : " (" + about + ")") + ", it";
    }

    /** Before what may be set of the unit that came in. */
    public static final String AS_IT_IS = "As it is";

    /** The same of the unit with the jobs done that must be done. */
    public static final String AFTER_REPAIRS = "After these repairs";

    /** The same of another build. */
    public static String built(String build) {
        return "Built as " + build;
    }

    /** A build with the jobs done that must be done. */
    public static String repaired(String build) {
        return build + " after these repairs";
    }

    /** Of a build that does not hold its pressure at idle. */
    public static String lowAtIdle(String when) {
        return when + ", its idle pressure is LOW: no stall test, whatever is worked out for one here.";
    }

    /** What a build comes to. */
    public enum Looks {
        FAILS,
        OPEN,
        NARROW,
        HOLDS
    }

    /**
     * Which pressures it may be set to.
     *
     * @param when   of which build that is said
     * @param ranges each as {@link #range}
     * @param known  whether all limits are known there
     */
    public String maySet(String when, List<String> ranges, double now, boolean known) {
        return when + " it may be set: " + String.join(" or ", ranges) + (known ? "" : ", as far as is known")
                + "; it is set to " + Quantity.PRESSURE.with(units, now) + ".";
    }

    /** From one pressure to another [Pa]. */
    public String range(double low, double high) {
        return Quantity.PRESSURE.number(units, low) + " to " + Quantity.PRESSURE.with(units, high);
    }

    /** Where no pressure helps. */
    public String mayNotSet(String when, double lowest, double highest) {
        return when + " it may be set: NOTHING. No pressure of those tried, " + range(lowest, highest)
                + ", makes it hold.";
    }

    /**
     * What is to be repaired, and nothing else.
     *
     * @param cost   as {@link JobPhrase#cost} says it
     * @param known  whether all limits are known then
     * @param narrow whether one of them then has less than a tenth to spare
     */
    public static String repair(List<String> jobs, String cost, boolean known, boolean narrow) {
        return "Must be repaired: " + String.join(" and ", jobs) + cost + ". " + AFTER_REPAIRS + " it holds"
                + (known ? "" : " as far as is known") + (narrow ? ", with less than a tenth to spare." : ".");
    }

    /** Under the jobs, before why it is these, as {@link JobPhrase#why} says it. */
    public static String enough(int needed, String why) {
        return (needed == 1
                        ? "The job marked yes is enough. "
                        : "The jobs marked yes are enough, and all of them are needed. ")
                + why;
    }

    /** Where nothing is. */
    public static final String NO_REPAIR = "Must be repaired: NOTHING.";

    /** Where no jobs known are enough. */
    public static final String NO_REPAIR_DOES = "Must be repaired: NOT KNOWN. No set of the jobs below makes it hold.";

    /** Over the jobs. */
    public static String jobs(String build) {
        return "Jobs that were tried on " + build + ", alone and together";
    }

    /** Its columns; hours where they are known. */
    public static List<String> jobHead(boolean hours) {
        return hours ? List.of("job", "what is done", "hours", "needed") : List.of("job", "what is done", "needed");
    }

    public static final String NEEDED = "yes";
    public static final String NOT_NEEDED = "no";

    /** Words that it takes to read it. */
    public static final List<String> WORDS =
            List.of("set pressure", "build", "driving condition", "pump slip", "leaks", "not known");

    /** A word and what it means. */
    public static String word(String word, String meaning) {
        return word + ": " + meaning + ".";
    }

    /** Where all of it stands. */
    public static final String WHOLE =
            "The shop's own report has every limit, number, assumption and source behind this page.";
}
