package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** What a unit holds; torques in [N·m], pressures in [Pa], speeds in [rev/s]. */
public record TorquePhrase(Quantity.UnitSystem units) {

    /** Behind a torque that lies beyond the last row of the command. */
    public static final String BEYOND = "+";

    /** Behind a link that shares its load. */
    public static final String SHARED = "*";

    /** Above the table; with the capacity factors that the torques have in hand. */
    public String heading(double speed, double leastFactor, double mostFactor) {
        return "Engine torque held at " + Quantity.SPEED.with(units, speed) + " ["
                + Quantity.TORQUE.in(units).unit()
                + "], at the line pressure that is really there, and what gives first; "
                + margin(leastFactor, mostFactor);
    }

    /** What a torque that is told leaves out and has in hand, by the capacity factors of the clutches. */
    public static String margin(double least, double most) {
        String factor = String.format(Locale.ROOT, "%.2f", least)
                + (most > least ? String.format(Locale.ROOT, " to %.2f", most) : "");
        return "lockup off; clutches with their factor of " + factor + " in hand, rated parts (" + BARE
                + ") without one";
    }

    /**
     * What a build holds, beside what is asked of it: two engine torques that are not to be taken for each other.
     *
     * @param hardest the highest engine torque of its driving conditions, 0 where none gives one
     */
    public String held(String build, double torque, double hardest) {
        return build + " holds " + Quantity.TORQUE.with(units, torque) + " of engine torque in every range"
                + (hardest > 0 ? " (driving conditions ask up to " + Quantity.TORQUE.number(units, hardest) + ")" : "");
    }

    /** The same of one that stands under another. */
    public String heldToo(String build, double torque) {
        return build + " holds " + Quantity.TORQUE.with(units, torque) + " in every range";
    }

    /**
     * The least of all ranges, in a whole sentence.
     *
     * @param held   as {@link #held} says it
     * @param line   line pressure there
     * @param set    as {@link #commanded} says it; may be empty
     * @param second what gives next in any range; empty where nothing else carries
     */
    public String least(String held, String range, String first, double line, String set, String second) {
        return held + "; " + first + " gives first, in " + range + ", at " + Quantity.PRESSURE.with(units, line)
                + " line pressure"
                + (set.isEmpty() ? "" : " (" + set + ")")
                + (second.isEmpty() ? "." : ", then " + second + ".");
    }

    /**
     * What is commanded where something gives, and the set pressure where that is another.
     *
     * @param there   commanded there [Pa]
     * @param forward set pressure, the highest in forward ranges [Pa]
     */
    public String commanded(double there, double forward) {
        String set = "set to " + Quantity.PRESSURE.number(units, forward);
        return Math.abs(there - forward) <= UNLIKE * forward
                ? set
                : Quantity.PRESSURE.number(units, there) + " commanded, " + set;
    }

    /** Pressures this share apart are told as two (chosen) [-]. */
    private static final double UNLIKE = 0.01;

    /**
     * Which of the pressures told is the one to change, and how.
     *
     * @param set    set pressure [Pa]
     * @param useful up to which more buys torque [Pa]; empty where none tried is too high
     */
    public String next(String build, double set, OptionalDouble useful) {
        String now = Quantity.PRESSURE.with(units, set);
        String upTo = useful.isEmpty()
                ? ""
                : useful.getAsDouble() > set
                        ? "; above " + Quantity.PRESSURE.with(units, useful.getAsDouble()) + " it buys no torque"
                        : "; more of it buys no torque";
        return "Next: of these the set pressure is the one to change, " + now + " in " + build + upTo
                + ". 'hotidle spring' with --set says how, 'hotidle window' which ones keep every other limit.";
    }

    /** The same where the line is not held at idle: another set pressure would not be there. */
    public static String nextJobs(String build) {
        return "Next: " + build + " is LOW at idle, so first the oil: 'hotidle leaks' with --build " + build
                + " --by job.";
    }

    /** A second link with its range and its factor: how much more engine torque it carries than the first. */
    public static String second(String name, String range, double factor) {
        return name + " in " + range + " at " + factor(factor) + " of that";
    }

    /** For example x1.23. */
    public static String factor(double factor) {
        return String.format(Locale.ROOT, "x%.2f", factor);
    }

    /** Behind a torque that ends at a bare rating. */
    public static final String BARE = "~";

    /** A torque with the signs behind it; bare where it ends at a rating, without a factor in hand. */
    public String torque(double torque, boolean beyond, boolean bare) {
        return Quantity.TORQUE.number(units, torque) + (beyond ? BEYOND : "") + (bare ? BARE : "");
    }

    /** A cell: the torque as {@link #torque} says it and what gives first. */
    public static String cell(String torque, String first, boolean shared) {
        return torque + " " + first + (shared ? SHARED : "");
    }

    /** That a range is not known in full. */
    public static String notKnown(String build, List<String> ranges) {
        return build + ": NOT KNOWN in " + String.join(", ", ranges) + ": no steady state was found there.";
    }

    /** Under what it was found. */
    public String conditions(String duty, double torqueRatio, List<String> multiplied) {
        String ratio = multiplied.isEmpty()
                ? "Converter's torque ratio 1"
                : "Converter's torque ratio " + String.format(Locale.ROOT, "%.2f", torqueRatio) + " in "
                        + String.join(", ", multiplied) + ", 1 elsewhere";
        return "Temperatures of driving condition " + duty + ". " + ratio
                + "; lockup off. Clutches count with holding friction and their factor.";
    }

    /** What the signs behind a torque mean. */
    public static String signs(boolean beyond, boolean shared) {
        return (beyond
                        ? BEYOND
                                + " = above the last engine torque of the command table; counted with the pressure of its last row. "
                        : "")
                + (shared
                        ? SHARED
                                + " = shares its load with another in a way not known, and is judged as if it carried all of it alone."
                        : "");
    }

    /** That nothing but clutches was judged. */
    public static final String CLUTCHES_ALONE =
            "Only clutches are judged: the file gives no gearsets with ratings of shafts, one-way clutches or case.";

    /** On what strength figures rest. */
    public static final String ESTIMATE =
            "An estimate from your own figures, not an approval; the rating of a part's maker comes first.";

    /** From which speed on nine tenths of it are held; below, the pump does not bring the pressure. */
    public String from(OptionalDouble speed) {
        return speed.isPresent() ? Quantity.SPEED.number(units, speed.getAsDouble()) : "any";
    }

    /** A range and the speed below which it holds less. */
    public String below(String range, double speed) {
        return range + " below " + Quantity.SPEED.with(units, speed);
    }

    /** That some ranges of a build hold less there. */
    public static String slow(String build, List<String> ranges) {
        return build + " holds less than nine tenths of it, since the pump does not bring the pressure, in "
                + String.join(", ", ranges) + ".";
    }
}
