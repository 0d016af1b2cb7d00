package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import hotidle.assess.LineVerdict;
import hotidle.study.LineNeeded;
import java.util.List;
import java.util.Locale;

/** What line pressure an engine torque needs; torques in [N·m], pressures in [Pa]. */
public record LineNeededPhrase(Quantity.UnitSystem units) {

    /** Above the table. */
    public static final String HEADING =
            "Line pressure that each range needs to hold an engine torque, with the factor of each clutch";

    /** Below it: what is not counted, and which row wastes. */
    public static final String NOTES =
            "For clutches alone: converter, lubrication and lockup may need more line. A row wastes"
                    + " where the line is more than " + Math.round(100 * LineNeeded.AMPLE)
                    + " % above what it needs (chosen). Hot; commanded: the set pressure, in reverse by its areas; idle: the speed of"
                    + " the slowest driving condition.";

    /** In a cell. */
    public static String verdict(LineVerdict verdict) {
        return switch (verdict) {
            case SHORT -> "SHORT";
            case FITS -> "fits";
            case WASTES -> "wastes";
            case NOT_KNOWN -> UnsolvedPhrase.CELL;
        };
    }

    /** The lowest torque tried for which a range is short. */
    public String isShort(String range, double torque, double needed, double line) {
        return Quantity.TORQUE.with(units, torque) + " in " + range + " (needs " + Quantity.PRESSURE.with(units, needed)
                + ", has " + Quantity.PRESSURE.number(units, line) + ")";
    }

    /**
     * Where the line of a build is short and where it wastes pressure; said to be of torques tried, since what is held exactly lies
     * between two of them.
     */
    public String summary(String build, List<String> shorts, long wasting, int rows) {
        return build + ": "
                + (shorts.isEmpty()
                        ? "its line is enough for every engine torque tried in steps."
                        : "of the engine torques tried in steps, the first that its line is too low for is "
                                + String.join("; ", shorts)
                                + ". The most that it holds lies between that step and the one before.")
                + (wasting == 0
                        ? ""
                        : String.format(
                                Locale.ROOT,
                                " At %d of the %d steps of all ranges the line is more than %d %% above what the torque needs.",
                                wasting,
                                rows,
                                Math.round(100 * LineNeeded.AMPLE)));
    }
}
