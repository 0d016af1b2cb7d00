package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.transmission.SetPressure;
import hotidle.transmission.SpringChange.Lever;
import hotidle.transmission.SpringChange.SpringObstacle;
import java.util.List;
import java.util.OptionalDouble;

/** How a regulator comes to another set pressure; pressures in [Pa], lengths in [m]. */
public record SpringPhrase(UnitSystem units) {

    /** Above the changes. */
    public static final String ALONE = "one change alone";

    /** Above what each change moves. */
    public static final String MOVES = "what it moves";

    /** What of a shim, of which the file does not know whether there is one. */
    public static final String AS_IT_IS = "as it is";

    /** What an answer is not, by whether the pressure is raised. */
    public static String caution(boolean raised) {
        return "An estimate, not an approval: "
                + (raised
                        ? "raised pressure loads case, pump and converter."
                        : "with less pressure clutches and lockup hold less.");
    }

    /** Where nothing is to be put in or taken out. */
    public static final String NO_SHIM = "none";

    /** What to do with shims. */
    public static String shim(boolean add, String thickness) {
        return (add ? "add " : "take out ") + thickness;
    }

    /** Where shims are to be taken out: whether there are as many nobody but who opens it knows. */
    public static String shimOut(String thickness) {
        return "Shim: take out " + thickness
                + " of shims. Where fewer are fitted the spring has to be shorter by the rest,"
                + " or another one (preload).";
    }

    /**
     * Where no spring gives so little, since signals alone hold more at full torque.
     *
     * @param least that a spring gives
     * @param now   set pressure
     * @param idle  the slowest driving condition
     * @param reads what the gauge reads there
     */
    public String tooLow(double least, double now, String idle, double reads) {
        return "Signals alone hold " + psi(least) + " at full torque. For less than the " + psi(reads)
                + " that the gauge reads at " + idle + " now, give a --set between " + psi(least) + " and " + psi(now)
                + ": a softer spring takes as much off.";
    }

    /** What is changed. */
    public static String name(Lever lever, String signal) {
        return switch (lever) {
            case PRELOAD -> "preload";
            case SHIM -> "shim";
            case RATE -> "spring rate";
            case BOOST -> "boost diameter, " + signal;
        };
    }

    /** The same above a column. */
    public static String column(Lever lever, String signal) {
        return lever == Lever.BOOST ? "boost on " + signal : name(lever, signal);
    }

    /**
     * The first line: what is asked and what is there.
     *
     * @param level whether as much is commanded without engine torque
     */
    public String asked(String build, double now, double wanted, boolean level) {
        return build + ": set pressure" + (level ? "" : " (full torque)") + " " + psi(now)
                + " now; each of these alone would make it " + psi(wanted) + ":";
    }

    /** Where the coils touch against the upper stop; empty where it is not known. */
    public String room(OptionalDouble known) {
        if (known.isEmpty()) {
            return "not known";
        }
        double overStop = known.getAsDouble();
        String far = Quantity.TRAVEL.with(units, Math.abs(overStop));
        return overStop < 0 ? "no: SOLID " + far + " before it" : "free, " + far + " left at the stop";
    }

    /** Why a change cannot be made. */
    public static String obstacle(SpringObstacle obstacle) {
        return switch (obstacle) {
            case SPRING_WOULD_PULL -> "no: signals alone hold more";
            case SPRING_LOOSE -> "no: loose on its seat";
            case COILS_TOUCH -> "no: coils touch first";
            case NO_SIGNAL -> "no: not enough signal on it";
            case LESS_THAN_NO_AREA -> "no: less than no boost";
        };
    }

    public static String commanded(String what) {
        return what + ", commanded";
    }

    public static String reads(String what) {
        return what + ", gauge reads";
    }

    public static String charge(String what) {
        return what + ", converter feed";
    }

    public static final String NO_TORQUE = "no engine torque";

    public static final String REVERSE = "reverse at most";

    /**
     * What of the ranges that drive backwards.
     *
     * @param solenoid whether a solenoid commands the line, so that the highest is known
     * @param duties   driving conditions in those ranges, whose throttle a throttle valve answers to
     */
    public static String reverse(boolean solenoid, List<String> duties) {
        if (solenoid) {
            return REVERSE;
        }
        return duties.isEmpty() ? "reverse, no throttle" : "reverse at " + String.join(", ", duties);
    }

    public static final String HIGHEST = "highest of all driving conditions, reads";

    /** Behind a pressure that the pump does not hold. */
    public static final String LOW = " LOW";

    /** Where the pump cannot hold what is asked at idle with some of the changes. */
    public static String low(String duty, List<String> changes) {
        return "At " + duty + " the pump cannot hold what is asked of it with " + String.join(", ", changes) + ": LOW.";
    }

    /**
     * Above all where no change helps, since the pump cannot hold the pressure at idle.
     *
     * @param leaks what says which jobs are needed first, as a command
     */
    public String pumpCannot(String build, String duty, double wanted, String leaks) {
        return build + ": NO SPRING DOES IT. The pump cannot hold " + psi(wanted) + " at " + duty
                + ", whatever it is set to; first the jobs: " + leaks + ".";
    }

    /**
     * A build with one of the changes, before what it comes to.
     *
     * @param column the change, as {@link #column} names it
     */
    public static String withThat(String build, String column) {
        return build + " with that " + column;
    }

    /**
     * What becomes of the command at idle, where the same option of other commands asks the same there.
     *
     * @param duty the slowest driving condition
     * @param now  commanded there now
     * @param then with another spring
     */
    public String idleAlike(String duty, double now, double then) {
        return "A spring moves the command everywhere: " + duty + " from " + psi(now) + " to " + psi(then) + ".";
    }

    /**
     * The same where other commands ask something else there, since they scale the command too.
     *
     * @param wanted the set pressure asked for
     * @param scaled what they ask there
     */
    public String idleOther(String duty, double now, double then, double wanted, double scaled) {
        return idleAlike(duty, now, then) + " compare and margins --set " + Math.round(wanted / SetPressure.PSI)
                + "psi scale the command too (" + duty + " " + psi(scaled)
                + "): give them --set-by spring for this spring.";
    }

    /** Where a relief valve of the line opens. */
    public static String relief(List<String> where) {
        return "The relief valve opens: " + String.join("; ", where) + ". There it sets the line, not the regulator.";
    }

    /** Where the regulator stands at the end of its travel. */
    public static String atEnd(List<String> where) {
        return "The regulator is at the end of its travel: " + String.join("; ", where) + ".";
    }

    /** A change and the driving conditions at which something is so. */
    public static String at(String change, List<String> duties) {
        return change + " at " + String.join(", ", duties);
    }

    /** What the changes mean, and what a spring and a boost do that differs. */
    public static final String MEANT =
            "Preload: another spring of the same rate and height; rate: one of the same free length; both raise or lower all torques"
                    + " alike. Boost: a full land, which acts with its signal.";

    /** Where more shims are asked for than are put in (common practice: up to 4 mm). */
    public static final String MANY_SHIMS =
            "More than 4 mm (0.16 in) of shims is no job for shims: take another spring.";

    /** What is missing in the file. */
    public static String noHeights(String regulator) {
        return "Coil bind not judged: " + regulator + " has no installed-height and solid-height in the file.";
    }

    /**
     * Where the rest of the answer is.
     *
     * @param window the command
     */
    public static String next(String window) {
        return "Every limit there: " + window + ".";
    }

    private String psi(double pressure) {
        return Quantity.PRESSURE.with(units, pressure);
    }
}
