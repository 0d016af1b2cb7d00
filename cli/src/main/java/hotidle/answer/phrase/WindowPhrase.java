package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import hotidle.transmission.SetPressure;
import java.util.List;

/** Which set pressures hold every limit; pressures in [Pa], limits as {@link LimitPhrase#at} says them. */
public record WindowPhrase(Quantity.UnitSystem units) {

    /** Why, where each limit holds somewhere and no two of them exclude each other. */
    public static final String NOT_TOGETHER = "limits that hold apart do not hold together";

    /** No set pressure between two holds every limit. */
    public String none(String build, double lowest, double highest, String because) {
        return build + ": NO SET PRESSURE from " + psi(lowest) + " to " + psi(highest) + " holds every limit, because "
                + because + ".";
    }

    /** Below which pressure a unit without a solenoid cannot be set. */
    public String lowest(String build, double pressure) {
        return build + ": cannot be set below " + psi(pressure)
                + ": throttle pressure alone holds that without a spring.";
    }

    /** Behind a limit that is assumed. */
    public static final String ASSUMED = " (assumed)";

    /**
     * Before all numbers: what they say nothing of.
     *
     * @param rated whether the file rates shafts or anything else in the gear train
     */
    public static String notJudged(boolean rated) {
        return "Not judged: " + strength(rated) + ".";
    }

    private static String strength(boolean rated) {
        return rated
                ? "strength of pump, rings, converter and all to which the file gives no rating"
                : "strength of case, pump, rings, shafts and converter";
    }

    /**
     * Above all.
     *
     * @param work what was done to each build, as {@link AfterWorkPhrase#heading} says it; may be empty
     */
    public static String title(String circuit, String work) {
        return AfterWorkPhrase.named(circuit, work) + ": which set pressures keep every limit";
    }

    /** Heads the column of builds. */
    public static final String BUILD = "build";

    /** Heads the column of limits that end what can be set. */
    public static final String BINDING = "what binds";

    /** And those of the pressures. */
    public static final String FROM = "from";

    public static final String TO = "to";

    public static final String ELSE = "else fails at";

    /** In place of a pressure where a limit holds nowhere. */
    public static final String NOWHERE = "none";

    /** Limits that are not in the short table. */
    public static String others(String build, long narrower, long anywhere) {
        return build + ": " + (narrower > 0 ? narrower + " more bind less; " : "") + anywhere
                + " hold at every pressure tried.";
    }

    /** Why: these limits hold nowhere; beyond so many they are counted. */
    public static String never(List<String> limits, int named) {
        int shown = Math.min(named, limits.size());
        return String.join(", ", limits.subList(0, shown))
                + (shown < limits.size() ? " and " + (limits.size() - shown) + " more" : "")
                + (limits.size() == 1 ? " fails" : " fail") + " at every one tried";
    }

    /** Why: one limit needs more than another allows. */
    public String apart(String needing, double least, String bearing, double most) {
        return needing + " needs at least " + psi(least) + " and " + bearing + " allows at most " + psi(most);
    }

    /** Behind the name of a limit of which it is not known everywhere in its range whether it holds. */
    public static final String UNDECIDED = " *";

    /**
     * Every limit holds in some ranges, {@link #range}.
     *
     * @param now       what the build has now
     * @param undecided limits of which it is not known whether they hold there, by {@link NotKnownPhrase}; empty without any
     */
    public static String holds(String build, List<String> ranges, String now, String undecided) {
        return build + (undecided.isEmpty() ? ": every limit" : ": every limit that is known") + " holds from "
                + String.join("; and from ", ranges) + ". " + now + (undecided.isEmpty() ? "" : " " + undecided);
    }

    /**
     * What one unit may be set to, where every limit holds in some ranges, {@link #range}.
     *
     * @param conditions driving conditions that are judged
     * @param undecided  as of {@link #holds}
     */
    public static String setTo(List<String> ranges, int conditions, String undecided) {
        return "May be set from " + String.join("; and from ", ranges) + ". There the line and every limit"
                + (undecided.isEmpty() ? "" : " that is known") + " hold" + at(conditions) + "."
                + (undecided.isEmpty() ? "" : " " + undecided);
    }

    /** The same where none holds every limit. */
    public String setToNone(double lowest, double highest, int conditions, String because) {
        return "May be set to NO PRESSURE from " + psi(lowest) + " to " + psi(highest)
                + ": none holds the line and every limit" + at(conditions) + ", because " + because + ".";
    }

    private static String at(int conditions) {
        return conditions == 1
                ? " at the driving condition judged"
                : " at all " + conditions + " driving conditions judged";
    }

    /** A range, and what ends it as {@link #failsBelow} and {@link #failsAbove} say. */
    public String range(double low, double high, String below, String above) {
        return psi(low) + " to " + psi(high) + below + above;
    }

    public static String failsBelow(String limit) {
        return "; below, " + limit + " fails first";
    }

    public static String failsAbove(String limit) {
        return "; above, " + limit + " fails first";
    }

    /** In place of the limit that ends a range at the lowest pressure tried. */
    public static final String NO_LOWER = "; lower ones were not tried";

    /** And at the highest. */
    public static final String NO_HIGHER = "; higher ones were not tried";

    /** What a build has whose solenoid commands the line. */
    public String commands(double set) {
        return "The build is set to " + psi(set) + ".";
    }

    /** What a build has of which the spring alone says it. */
    public String springSets(double set) {
        return "The build's spring sets " + psi(set) + ".";
    }

    /** Where something was not found; the duties concerned, and the first of the set pressures at which it is so. */
    public String notKnown(String build, List<String> duties, int pressures, int tried, double first) {
        return build + ": NOT KNOWN in full at " + String.join(", ", duties) + " with " + pressures + " of the " + tried
                + " set pressures tried, the first " + psi(first)
                + ": a steady state was not found there. A limit that is not known counts as failing; hub film and load are"
                + " those of the speeds that were solved.";
    }

    /** Above the table of a build. */
    public static String heading(String build) {
        return build + ": set pressure that each limit allows";
    }

    /** Beneath the tables: how set pressures are reached, and between which pressures was looked. */
    public String legend(double lowest, double highest, SetPressure.By by, boolean rated) {
        return "Tried from " + psi(lowest) + " to " + psi(highest)
                + "; <= and >= say that a limit still holds at the end of that, * that somewhere between it is not known whether it"
                + " does. " + SetByPhrase.set(by) + "."
                + " " + notJudged(rated);
    }

    private String psi(double pressure) {
        return Quantity.PRESSURE.with(units, pressure);
    }
}
