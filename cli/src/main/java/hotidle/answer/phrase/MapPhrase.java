package hotidle.answer.phrase;

import hotidle.transmission.SetPressure;

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

    private MapPhrase() {}

    /** Why nothing is known: no steady state at a duty point. */
    public static String unsolved(String duty) {
        return "unsolved at " + duty;
    }

    /** Above a table; the size with the unit in which it is shown. */
    public static String heading(String build, String size, String unit) {
        return build + ": least headroom in % and the limit that decides, over set pressure and " + size + " [" + unit
                + "]";
    }

    /** Above a picture. */
    public static String title(String build, String size) {
        return build + ": least headroom over set pressure and " + size;
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

    /** The limit that decides at a point; a film is not known where metal touches. */
    public static String decides(String verdict, String headroom, String limit, boolean contact) {
        return verdict + ", " + headroom + "; " + limit
                + (contact ? ": metal touches, the film is not known." : " decides.");
    }

    /** How many points are not known. */
    public static String notKnownAt(long points, String why) {
        return "?  not known at " + CountPhrase.of(points, "point") + ": " + why;
    }
}
