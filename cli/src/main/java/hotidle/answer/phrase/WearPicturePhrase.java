package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.Quantity.UnitSystem;

/** Words in the picture of wear; lengths in [m], areas in [m²]. */
public record WearPicturePhrase(UnitSystem units) {

    public static final String ACROSS = "wear, from new (0) to the limit in the file (100) [%]";
    public static final String WORN = "worn as it is";
    public static final String LEFT = "left to wear";
    public static final String GONE = "the first limit is gone";
    public static final String LIMIT = "limit in the file";

    /** What is found: the fit with least wear left, and how many written limits are too loose. */
    public static String title(String build, String fit, String left, int loose, long written) {
        return build + ": " + fit + " has least wear left, " + left + "; "
                + (loose == 0 ? "no" : loose + " of " + written) + " written "
                + (loose == 0 ? "limit is" : loose == 1 ? "limits is" : "limits are") + " too loose";
    }

    /** The same where no fit alone takes a limit away. */
    public static String none(String build) {
        return build + ": no fit takes a limit away alone, even worn eight times its allowance further";
    }

    /** Beneath it. */
    public static String subtitle(String circuit) {
        return circuit + ": the tightest fits first, each worn alone; an estimate, not a maker's limit";
    }

    /** A fit whose file gives no limit: the scale ends at what it has. */
    public static String noLimit(String fit) {
        return fit + " (no limit in file; 100 % as it is)";
    }

    /** Wear that is left, in both systems of units. */
    public String left(double left, boolean area) {
        Quantity quantity = area ? Quantity.AREA : Quantity.FILM;
        UnitSystem other = units == UnitSystem.SHOP ? UnitSystem.METRIC : UnitSystem.SHOP;
        return quantity.with(units, left) + " (" + quantity.with(other, left) + ")";
    }

    /** The same beside a bar. */
    public String leftBeside(double left, boolean area) {
        return "left " + left(left, area);
    }
}
