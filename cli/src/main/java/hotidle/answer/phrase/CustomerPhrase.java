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
     * @param why   its first limit, as {@link CustomerLimitPhrase} says it; empty where it holds with ease
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

    /** Before what the trade calls it. */
    public static String inFull(String limit) {
        return "In the shop's words: " + limit;
    }

    /**
     * Which pressures it may be set to.
     *
     * @param ranges each as {@link #range}
     * @param known  whether all limits are known there
     */
    public String maySet(List<String> ranges, double now, boolean known) {
        return "May be set: " + String.join(" or ", ranges) + (known ? "" : ", as far as is known") + "; it is set to "
                + Quantity.PRESSURE.with(units, now) + ".";
    }

    /** From one pressure to another [Pa]. */
    public String range(double low, double high) {
        return Quantity.PRESSURE.number(units, low) + " to " + Quantity.PRESSURE.with(units, high);
    }

    /** Where no pressure helps. */
    public String mayNotSet(double lowest, double highest) {
        return "May be set: NOTHING. No pressure of those tried, " + range(lowest, highest) + ", makes it hold.";
    }

    /**
     * What is to be repaired, and nothing else.
     *
     * @param cost   as {@link JobPhrase#cost} says it
     * @param known  whether all limits are known then
     * @param narrow whether one of them then has less than a tenth to spare
     */
    public static String repair(List<String> jobs, String cost, boolean known, boolean narrow) {
        return "Must be repaired: " + String.join(" and ", jobs) + cost + ". Then it holds"
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
