package hotidle.answer.phrase;

import hotidle.transmission.SetPressure;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What is said of a map of headroom over set pressure and a size. */
public final class MapPhrase {

    /** What is changed, and what is not. */
    private static String assumed(SetPressure.By by) {
        return SetByPhrase.set(by) + "; all other sizes stay as the build has them.";
    }

    /** Beneath the tables. */
    public static String legend(SetPressure.By by) {
        return "Headroom is the worst of all limits at all driving conditions; 0 % and less fails, up to 10 % is narrow. "
                + assumed(by) + " The film allowed is an assumption from roughness.";
    }

    /** Why nothing is known: the size cannot be made. */
    public static final String IMPOSSIBLE = "the size is impossible";

    /** Why nothing is known: no limit has a need. */
    public static final String NOTHING_JUDGED = "no limit is judged";

    /** Behind the headroom of a point at which a limit is left out because it is not known whether it holds. */
    public static final String UNDECIDED = "*";

    /** Behind a limit whose need is assumed, in a narrow cell, as files mark a number. */
    public static final String ASSUMED_MARK = " ~";

    /** What the mark means. */
    public static final String ASSUMED_NOTE = "~  what this limit needs is assumed";

    /** The same in a sentence. */
    private static final String ASSUMED = " (assumed)";

    /** Heads the set pressures at which every limit holds. */
    public static final String HOLDS = "every limit holds";

    /** Heads the limit that fails below them, and above. */
    public static final String BELOW = "fails below";

    public static final String ABOVE = "fails above";

    /** Heads the most headroom at a size. */
    public static final String MOST = "most";

    /** Heads a column that ends in a set pressure in brackets. */
    public static String at(String heading, String unit) {
        return heading + " (" + unit + ")";
    }

    /** Heads the sizes. */
    public static String sized(String name, String unit) {
        return name + ", " + unit;
    }

    /** In place of set pressures where no point holds. */
    public static final String NOWHERE = "nowhere";

    /** In place of a limit where no further pressure was tried. */
    public static final String NOT_TRIED = "not tried";

    private MapPhrase() {}

    /**
     * Above the first screen.
     *
     * @param work what was done to each build, as {@link AfterWorkPhrase#heading} says it; may be empty
     */
    public static String title(String circuit, String work) {
        return AfterWorkPhrase.named(circuit, work) + ": over set pressure and one size, where does every limit hold?";
    }

    /** Set pressures without a gap, the first and the last that hold, in the same unit. */
    public static String range(String low, String high) {
        return low.equals(high) ? low : low + " to " + high;
    }

    /** More of them than are shown. */
    public static String andMore(int more) {
        return more == 0 ? "" : " and " + more + " more";
    }

    /**
     * How many points hold and fail.
     *
     * @param known   whether of every limit it is known whether it holds
     * @param failing points that fail, by driving condition
     * @param best    the best point in words; empty where none holds
     */
    public static String counted(
            String build, int points, int holding, boolean known, Map<String, Integer> failing, String best) {
        int fail = failing.values().stream().mapToInt(count -> count).sum();
        String limits = " every limit" + knownOnly(known);
        String head = holding == 0
                ? "NO POINT of " + points + " holds" + limits
                : holding + " of " + CountPhrase.of(points, "point") + (holding == 1 ? " holds" : " hold") + limits;
        return build + ": " + head
                + (best.isEmpty() ? "" : ", with most to spare at " + best)
                + (fail == 0
                        ? "."
                        : "; " + fail + (fail == 1 ? " fails, worst at " : " fail, worst at ")
                                + failing.entrySet().stream()
                                        .map(one -> one.getKey() + " (" + one.getValue() + ")")
                                        .collect(Collectors.joining(", "))
                                + ".");
    }

    /** The point with the most headroom; size, pressure and headroom with their units. */
    public static String best(String size, String pressure, String headroom) {
        return size + " and " + pressure + " (" + headroom + ")";
    }

    /** Rows of sizes that are not shown. */
    public static String moreSizes(int more) {
        return CountPhrase.of(more, "more size") + " between them, and each point: --full.";
    }

    /** Builds that are not shown for lack of room. */
    public static String moreBuilds(int builds, int nowhere) {
        return CountPhrase.of(builds, "more build") + ", of which " + nowhere + (nowhere == 1 ? " holds" : " hold")
                + " every limit nowhere: --full.";
    }

    /** Why nothing is known: no steady state at a duty point. */
    public static String unsolved(String duty) {
        return "unsolved at " + duty;
    }

    /** Above a table; the size with the unit in which it is shown. */
    public static String heading(String build, String size, String unit) {
        return build + ": least headroom in % and the limit that decides, over set pressure and " + size + " [" + unit
                + "]";
    }

    /**
     * Above a picture in which something holds.
     *
     * @param known   whether of every limit it is known whether it holds
     * @param widest  the widest set pressures without a gap, with their unit
     * @param size    its name
     * @param sizes   from the least to the largest at which some set pressure holds, with their unit
     */
    public static String holds(String build, boolean known, String widest, String size, String sizes) {
        return build + ": every limit" + knownOnly(known) + " holds with " + size + " " + sizes + ", at the widest at "
                + widest;
    }

    /**
     * Above one in which nothing does.
     *
     * @param tried the set pressures tried, with their unit
     * @param duty  driving condition that is worst at most points; empty where nothing is known
     */
    public static String holdsNowhere(String build, boolean known, String tried, String size, Optional<String> duty) {
        return build + ": no set pressure from " + tried + " keeps every limit" + knownOnly(known) + ", whatever "
                + size + duty.map(at -> "; worst at " + at).orElse("; nothing is known");
    }

    private static String knownOnly(boolean known) {
        return known ? "" : " that is known";
    }

    /** Beneath a picture. */
    public static String subtitle(String circuit, SetPressure.By by) {
        return circuit + ": worst of all limits at all driving conditions. " + assumed(by)
                + " An estimate, not an approval.";
    }

    /** A point with a name: the build's own by that name, another one as that size in the build. */
    public static String point(String build, String name, String size, String value, String pressure) {
        return (name.startsWith(build) ? name : build + " with that size " + name) + ", " + size + " " + value + " at "
                + pressure + ": ";
    }

    /** Nothing is known at a point. */
    public static String notKnown(String why) {
        return "NOT KNOWN, " + why + ".";
    }

    /** The limit that decides at a point, and whether its need is assumed; a film is not known where metal touches. */
    public static String decides(String verdict, String headroom, String limit, boolean assumed, boolean contact) {
        return verdict + ", " + headroom + "; " + limit + (assumed ? ASSUMED : "")
                + (contact ? ": metal touches, the film is not known." : " decides.");
    }

    /** How many points are not known. */
    public static String notKnownAt(long points, String why) {
        return "?  not known at " + CountPhrase.of(points, "point") + ": " + why;
    }

    /** The most headroom and the pressure, without its unit, at which it is found. */
    public static String mostAt(String headroom, String pressure) {
        return headroom + " (" + pressure + ")";
    }

    /** A limit and the pressure, without its unit, at which it was found to fail. */
    public static String foundAt(String limit, String pressure) {
        return limit + " (" + pressure + ")";
    }
}
