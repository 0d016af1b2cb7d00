package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import java.util.List;
import java.util.Optional;

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
                    case NARROW -> " holds, with less than a tenth to spare" + reason;
                    case HOLDS -> " holds, with more than a tenth to spare.";
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

    /** Of what was just said to be done. */
    public static final String THEN = "Then";

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
        return when + ", its oil pressure at idle is LOW: never race the engine against the brakes.";
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
     */
    public String maySet(String when, List<String> ranges, double now) {
        return when + " it may be set: " + String.join(" or ", ranges) + "; it is set to "
                + Quantity.PRESSURE.with(units, now) + ".";
    }

    /** From one pressure to another [Pa]. */
    public String range(double low, double high) {
        return Quantity.PRESSURE.number(units, low) + " to " + Quantity.PRESSURE.with(units, high);
    }

    /** Where no pressure helps. */
    public String mayNotSet(String when, double lowest, double highest) {
        return when + " it may be set: NOTHING. No pressure from " + range(lowest, highest) + " makes it hold.";
    }

    /**
     * What is to be repaired, and nothing else.
     *
     * @param cost   as {@link JobPhrase#cost} says it
     * @param narrow whether one of them then has less than a tenth to spare
     */
    public static String repair(List<String> jobs, String cost, boolean narrow) {
        return "Must be repaired: " + String.join(" and ", jobs) + cost + ". " + AFTER_REPAIRS + " it holds"
                + (narrow ? ", with less than a tenth to spare." : ".");
    }

    /** Of another build that holds: what it takes is not said as jobs on the unit that came in. */
    public static final String OTHER_WORK = "Hours and price of building it so are not worked out here: ask the shop.";

    /**
     * What tells offers apart beside their hours.
     *
     * @param torque of the engine that it bears in every range [N·m]
     */
    public String carries(String when, double torque) {
        return when + " it carries " + Quantity.TORQUE.with(units, torque) + " of engine torque in every gear.";
    }

    /**
     * At which driving condition, whose name means nothing to who does not know the trade.
     *
     * @param range in which the selector stands
     * @param speed of the engine [rev/s]
     * @param sump  temperature of the oil [K]; empty where it is not given
     */
    public String at(String range, double speed, Optional<Double> sump) {
        return "in " + range + ", with the engine at " + Quantity.SPEED.with(units, speed)
                + sump.map(oil -> " and the oil at " + Quantity.TEMPERATURE.with(units, oil))
                        .orElse("");
    }

    /** Before why: at which driving condition, as {@link #at} says it. */
    public static String because(String at) {
        return "As it is, " + at + ":";
    }

    /** What all that is said to hold leaves open, as {@link CustomerLimitPhrase#of} says it, once a page. */
    public static String notKnown(List<String> limits) {
        return "All of this is as far as is known. NOT KNOWN, and no failure either: " + String.join("; ", limits)
                + ".";
    }

    /** Before all else that is to be done with care. */
    public static final String CAUTION =
            "An estimate, not an approval. More pressure loads case, pump, rings, shafts and converter more. Settings and tests on the"
                    + " vehicle are for the shop to do; hot oil burns. The unit maker's procedure and local codes come first.";

    /** What no word here is of. */
    public static String notJudged(boolean rated) {
        return "Not judged: strength of case, pump, rings, shafts and converter"
                + (rated ? ", but for the parts that were given a rating." : ".");
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
    public static final List<String> WORDS = List.of("set pressure", "build", "pump slip", "leaks", "not known");

    /** A word and what it means. */
    public static String word(String word, String meaning) {
        return word + ": " + meaning + ".";
    }

    /** Where all of it stands. */
    public static final String WHOLE =
            "The shop's own report has every limit, number, assumption and source behind this page.";
}
