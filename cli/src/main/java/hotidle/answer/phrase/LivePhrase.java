package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import java.util.List;
import java.util.OptionalDouble;

/** What is said around the live page. */
public final class LivePhrase {

    private LivePhrase() {}

    /** Of a set pressure asked of a circuit without a command. */
    public static final String NOT_COMMANDED =
            "the circuit has no command section, so that no set pressure can be asked for";

    /** Of sizes or faults that cannot be. */
    public static final String IMPOSSIBLE = "the unit cannot be made so; give smaller faults";

    /** Of costs where there is no state. */
    public static final String NO_COSTS = "no steady state was found, so that nothing is known of what each fit costs";

    /** Bounds of a sump temperature. */
    public static final String TEMPERATURES = "a sump temperature must lie between -60 and 250 degC (-76 and 482 degF)";

    /** Bounds of an engine speed. */
    public static final String SPEEDS = "an engine speed must lie between 0 and 20000 rpm";

    /** Bounds of a commanded pressure. */
    public static final String COMMANDED = "a commanded pressure must lie above nothing";

    /** Where causes are asked for and nothing was read. */
    public static final String NO_READINGS = "no reading is taken yet";

    /** In the place of the name of a sheet. */
    public static final String TYPED_IN = "this page";

    /** How it ends. */
    public static final String HOW_IT_ENDS = "Ctrl-C ends it, or 'End' on the page. Nothing leaves this machine.";

    /** Where no browser could be opened. */
    public static final String NO_OPENER = "no browser could be opened from here; open the address above in one";

    /** Reason of a change. */
    public static final String SET_HERE = "set on the live page";

    /** What a report has not: driving conditions turned at. */
    public static final String DRIVEN_AS_WRITTEN =
            "driving conditions as written; engine speed and sump temperature that were set on the page are not in it";

    /** What a written build has not: jobs that change more than sizes. */
    public static String jobsNotWritten(List<String> jobs) {
        return "after the jobs " + String.join(", ", jobs) + "; what they change besides sizes is not written here";
    }

    /** What a written build has not: faults. */
    public static String faultsNotWritten(List<String> faults) {
        return "without its faults; lay them over with --fault " + String.join(" --fault ", faults);
    }

    /** Bounds of a set pressure [Pa]. */
    public static String setPressures(double low, double high) {
        return "a set pressure must lie between " + ends(Quantity.UnitSystem.SHOP, low, high) + " ("
                + ends(Quantity.UnitSystem.METRIC, low, high) + ")";
    }

    private static String ends(Quantity.UnitSystem units, double low, double high) {
        return Quantity.PRESSURE.number(units, low) + " and " + Quantity.PRESSURE.with(units, high);
    }

    /** A build with something changed by hand. */
    public static String changed(String build) {
        return build + ", changed";
    }

    /** A driving condition that is none. */
    public static String noDuty(String circuit, String duty) {
        return circuit + " has no driving condition " + duty;
    }

    /** A job that is none. */
    public static String noJob(String build, String job) {
        return build + " has no job " + job;
    }

    /** A range that is none. */
    public static String noRange(String circuit, String range) {
        return circuit + " has no range " + range;
    }

    /**
     * How high a set pressure the line alone reaches at a speed: no leave to set it so, which {@link WindowPhrase#setTo} gives.
     *
     * @param pressure the highest [Pa]; empty where none that was tried is
     * @param all      whether it is the highest that was tried
     */
    public static String highest(Quantity.UnitSystem units, double speed, OptionalDouble pressure, boolean all) {
        String at = "At " + Quantity.SPEED.with(units, speed);
        if (pressure.isEmpty()) {
            return at + " the line holds no set pressure.";
        }
        // rounded down: what is reached is not told too high
        Quantity.Shown shown = Quantity.PRESSURE.in(units);
        double unit = Math.pow(10, -shown.decimals()) / shown.factor();
        double told = unit * Math.floor(pressure.getAsDouble() / unit + NEARLY);
        return at + " the line alone holds a set pressure of up to " + Quantity.PRESSURE.with(units, told)
                + (all ? ", the highest that was tried" : "")
                + "; what the unit may be set to, the verdict says.";
    }

    /** A number this near below a whole one is that: rounding. */
    private static final double NEARLY = 1e-6;

    /** Where nothing can be expected of gauges. */
    public static String notExpected(String build, String range, double rpm) {
        return "no steady state was found for " + build + " in " + range + " at " + Math.round(rpm)
                + " rpm, so that nothing can be expected of its gauges there; leave these readings out";
    }

    /** Where the page is. */
    public static String address(String circuit, String address) {
        return "The live page of " + circuit + ": " + address;
    }

    /** How it ended. */
    public static String ended(String circuit) {
        return "The live page of " + circuit + " has ended.";
    }
}
