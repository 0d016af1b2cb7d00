package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import java.util.List;
import java.util.Locale;

/** What stands over and under the table of a circuit swept over engine speed. */
public record SweepPhrase(Quantity.UnitSystem units) {

    /** In place of the speeds at which the regulator begins to do something. */
    public static final String UNCOMMANDED = "not commanded: no set pressure, no speed from which it holds";

    /** The oil and the pistons do the same, whichever way the speed was come to. */
    public static final String AGREE = "rising and falling sweeps agree";

    /** The line over the speeds at which they do not. */
    public static final String DIFFER = "rising and falling sweeps differ (two steady states):";

    /** What was swept, with the driving condition's own speed [rev/s], 0 where it has none, and the sump's temperature [K]. */
    public String heading(String circuit, String build, String duty, double speed, String range, double sump) {
        return circuit + ", " + build + ", "
                + duty(speed > 0 ? duty + " (" + Quantity.SPEED.with(units, speed) + ")" : duty, range, sump);
    }

    /** A duty in a range, with the sump's temperature [K]. */
    public String duty(String duty, String range, double sump) {
        return duty(duty, range) + ", sump " + Quantity.TEMPERATURE.with(units, sump);
    }

    /** A duty in a range at several temperatures, which are told elsewhere. */
    public static String duty(String duty, String range) {
        return duty + " in " + range;
    }

    /** Speeds at which the regulator begins to do something, each as {@link OnsetPhrase#from} says it. */
    public static String crossings(String onset, List<String> others) {
        return "line holds from: " + onset
                + String.join("", others.stream().map(one -> "; " + one).toList());
    }

    /** Speeds [rev/s] without a steady state. */
    public String notKnown(List<Double> speeds) {
        return "NOT KNOWN " + over(speeds) + ": no steady state was found.";
    }

    /** Speeds [rev/s] at which the line stands below the set pressure. */
    public String low(List<Double> speeds) {
        return "LINE LOW " + over(speeds) + ".";
    }

    /** Speeds [rev/s] at which it stands far above it. */
    public String high(List<Double> speeds) {
        return "LINE HIGH, far above its set pressure, " + over(speeds) + ".";
    }

    public String inletStarved(List<Double> speeds) {
        return "Pump inlet starved " + over(speeds) + ".";
    }

    private String over(List<Double> speeds) {
        String last = Quantity.SPEED.with(units, speeds.get(speeds.size() - 1));
        return speeds.size() == 1
                ? "at " + last
                : "at " + speeds.size() + " speeds from " + Quantity.SPEED.number(units, speeds.get(0)) + " to " + last;
    }

    /** Sweeps that found no room. */
    public static String more(int sweeps, long failing) {
        return CountPhrase.of(sweeps, "more sweep") + (failing == 0 ? "" : ", something fails in " + failing)
                + " (--full).";
    }

    /** Speeds or figures of one line, from the least to the largest. */
    public static String range(String least, String most) {
        return least + " to " + most;
    }

    public static String unloads(String speed) {
        return "secondary unloads from: " + speed;
    }

    public static String bypasses(String speed) {
        return "primary bypasses from: " + speed;
    }

    /** The same where a second chamber is unloaded from there on: charts mark it so. */
    public static String unloaded(String speed) {
        return "secondary unloaded from: " + speed;
    }

    /**
     * A part that stands elsewhere rising and falling.
     *
     * @param speed   [rev/s]
     * @param rising  where it stands [SI]
     * @param falling where it stands [SI]
     */
    public String difference(double speed, String part, double rising, double falling) {
        return String.format(
                Locale.ROOT,
                "  %s: %s stands at %.4g rising and at %.4g falling (SI)",
                Quantity.SPEED.with(units, speed),
                part,
                rising,
                falling);
    }

    /** A speed [rev/s] with why there is no state. */
    public String unsolved(double speed, String why) {
        return Quantity.SPEED.with(units, speed) + ": " + why;
    }
}
