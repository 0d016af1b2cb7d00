package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.Locale;

/** How much a size moves a limit. */
public final class SensitivityPhrase {

    /** What the numbers mean. */
    public static final String LEGEND =
            "Headroom is what is there over what is needed, less 1; a point is one per cent of it. Effects are slopes at the"
                    + " present size: they hold for changes that are small against the clearance, since leaks grow with its cube;"
                    + " 'hotidle wear' solves larger ones. Film and unit load are taken at the engine speed at which they bind now."
                    + " The set pressure stays; all sizes are diameters or gaps as measured cold.";

    /** Where no size is worth a row. */
    public static final String NONE_MOVES_IT = "No size moves it by as much as 0.05 points.";

    /** A larger size that leaves more headroom. */
    public static final String PLUS_IS_NO_REPAIR =
            "A plus is no reason to leave a worn fit: what leaks there feeds this one limit and costs others, see"
                    + " the last two columns. For the order of repairs ask leaks.";

    /** What the star means. */
    public static final String ONE_SIDED =
            "* a stop or valve takes hold or lets go next to this state: the slope holds to one side only.";

    private SensitivityPhrase() {}

    /** Where no limit is known. */
    public static String nothingRanked(String build) {
        return build + ": no limit is judged or known, so nothing can be ranked.";
    }

    /**
     * What the table ranks by.
     *
     * @param headroom of the limit with the least
     * @param limit    in a sentence, as {@link LimitPhrase#at}
     * @param speed    at which it binds, empty where that is the duty's own
     */
    public static String ranked(String build, String headroom, String limit, String speed, Quantity.UnitSystem units) {
        return build + ": least headroom " + headroom + ", " + limit + (speed.isEmpty() ? "" : ", at " + speed)
                + ". A size made larger by " + step(WearSize.SizeKind.LENGTH, units) + " (an area by "
                + step(WearSize.SizeKind.AREA, units) + ") changes it by so many points of headroom:";
    }

    /** The change of a size for which effects are told. */
    public static String step(WearSize.SizeKind kind, Quantity.UnitSystem units) {
        boolean shop = units == Quantity.UnitSystem.SHOP;
        return kind == WearSize.SizeKind.AREA ? shop ? "0.0001 in2" : "0.1 mm2" : shop ? "0.001 in" : "0.01 mm";
    }

    /** An effect in points of headroom [-]. */
    public static String points(double effect, boolean oneSided) {
        return String.format(Locale.ROOT, "%+.2f", 100 * effect) + (oneSided ? " *" : "");
    }

    /** Sizes that are not shown; the largest effect among them is given as at least a bound. */
    public static String more(int sizes, double bound) {
        String points = digits(100 * bound);
        return sizes == 1
                ? "1 more size moves it by " + points + " points or less."
                : sizes + " more sizes move it by " + points + " points or less each.";
    }

    private static String digits(double points) {
        return String.format(Locale.ROOT, "%.2f", points);
    }

    /** Regulation is not counted. */
    public static String heldLineUnsolved(String margin, String duty) {
        return margin + " at " + duty + ": no steady state was found with the line held";
    }

    /** A margin is not counted. */
    public static String valueNotKnown(String margin, String part, String duty) {
        return margin + " (" + part + ") at " + duty + ": its value is not known";
    }

    /** A margin is not counted. */
    public static String nothingNeeded(String margin, String part, String duty) {
        return margin + " (" + part + ") at " + duty + ": nothing is needed";
    }

    /** A size is not counted. */
    public static String nil(String size) {
        return size + ": is nil here";
    }

    /** A size is not counted. */
    public static String fixed(String size) {
        return size + ": cannot be made a little larger and smaller";
    }

    /** What could not be told, and why. */
    public static String leftOut(List<String> notCounted, List<String> unsolved) {
        return (notCounted.isEmpty() ? "" : " Not counted: " + String.join("; ", notCounted) + ".")
                + (unsolved.isEmpty()
                        ? ""
                        : " Not known at " + String.join(", ", unsolved) + ": no steady state was found.");
    }
}
