package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import java.util.List;

/** Whether a build holds an engine torque that was asked for; torques in [N·m], pressures in [Pa]. */
public record AskedTorquePhrase(Quantity.UnitSystem units) {

    /** What is left to be asked of a set pressure. */
    public static final String OTHER_LIMITS =
            "Whether every other limit holds at that set pressure: 'hotidle window' or 'hotidle torque --stages'.";

    /** In a cell, as it is. */
    public static final String YES = "yes";

    /** In a cell, at any set pressure tried. */
    public static final String NO = "NO";

    /** In a cell that has room for what is held instead. */
    public static String no(String held) {
        return NO + ", " + held;
    }

    /** Where a build gives that is asked for more. */
    public String gives(String build, double torque, String link, String range) {
        return build + " gives at " + torque(torque) + " (" + link + " in " + range + ")";
    }

    /** Of which it is not known what it holds. */
    public static String unknown(String build) {
        return build + " is not known";
    }

    /**
     * Whether builds side by side hold it.
     *
     * @param speed of the engine [rev/s]
     * @param not   those that do not, as {@link #gives} says it; empty where all do
     */
    public String asked(double torque, double speed, List<String> not) {
        return (not.isEmpty() ? "All hold " : "NOT held: ") + torque(torque) + ", hot at "
                + Quantity.SPEED.with(units, speed)
                + (not.isEmpty()
                        ? ", in every range."
                        : ": " + String.join("; ", not)
                                + ". Whether pressure helps: 'hotidle torque' with the same --for.");
    }

    /** The row of a stage. */
    public String row(double torque) {
        return "holds " + torque(torque);
    }

    /** In a cell: it holds from a set pressure on that is not its own. */
    public String from(double pressure) {
        return "NO, from " + psi(pressure);
    }

    /** It holds as it is. */
    public String holds(String build, double torque, double set, String from, String link, String range, double least) {
        return build + " holds " + torque(torque) + " in every range as it is, set to " + psi(set) + ", and " + from
                + "; first to give is " + link + ", in " + range + ", at " + torque(least) + ".";
    }

    /** It does not as it is, and does at another set pressure. */
    public String wouldHold(
            String build, double torque, double set, String link, String range, double least, String from) {
        return build + " does NOT hold " + torque(torque) + " as it is, set to " + psi(set) + ": " + link + ", in "
                + range + ", gives at " + torque(least) + ". It would " + from + ".";
    }

    /** No set pressure helps: something has a rating that is too low. */
    public String never(String build, double torque, String link, String range, double bears) {
        return build + " does NOT hold " + torque(torque) + " at any set pressure: " + link + " bears " + torque(bears)
                + ", in " + range + ".";
    }

    /** None of the set pressures tried helps. */
    public String notTried(String build, double torque, double highest, String link, String range, double carries) {
        return build + " does NOT hold " + torque(torque) + " at any set pressure tried, up to " + psi(highest)
                + (link.isEmpty() ? "." : ", where " + link + " carries " + torque(carries) + ", in " + range + ".");
    }

    /** The set pressures at which it holds. */
    public String between(double from, double to, boolean lowestTried, boolean highestTried) {
        if (!highestTried) {
            return "from " + psi(from) + " to " + psi(to) + " set pressure";
        }
        return "from " + psi(from) + " set pressure on" + (lowestTried ? ", the lowest tried" : "");
    }

    /** Where a state was not found, which then counts as not holding. */
    public static String notKnown(List<String> ranges) {
        return " No steady state was found at some pressures in " + String.join(", ", ranges)
                + ", which counts as not holding.";
    }

    private String torque(double torque) {
        return Quantity.TORQUE.with(units, torque);
    }

    private String psi(double pressure) {
        return Quantity.PRESSURE.with(units, pressure);
    }
}
