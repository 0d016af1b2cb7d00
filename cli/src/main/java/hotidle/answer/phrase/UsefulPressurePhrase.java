package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import java.util.List;

/** Up to which set pressure more torque is held; torques in [N·m], pressures in [Pa]. */
public record UsefulPressurePhrase(Quantity.UnitSystem units) {

    /** From a set pressure on something with a rating gives first. */
    public String upTo(String build, double pressure, String link, String range, double torque) {
        return build + ": more torque is held up to " + psi(pressure) + " set pressure; from there " + link
                + " gives first, in " + range + " at " + torque(torque) + ", and pressure buys leakage and heat alone.";
    }

    /** Clutches give first at every pressure tried. */
    public String everywhere(String build, double highest, String link, String range, double torque) {
        return build + ": more torque is held up to " + psi(highest)
                + ", the highest set pressure tried: clutches give first; " + link + " would bear " + torque(torque)
                + " in " + range + ".";
    }

    /** They give first at none. */
    public String nowhere(String build, double lowest, String link, String range, double torque) {
        return build + ": from " + psi(lowest) + " set pressure, the lowest tried, on " + link + " gives first, in "
                + range + " at " + torque(torque) + ": a higher one buys leakage and heat alone.";
    }

    /** The same in short, each: where builds stand side by side. */
    public String upToBrief(String build, double pressure, String link) {
        return build + ": above " + psi(pressure) + " set pressure " + link + " gives first; more buys no torque.";
    }

    public String everywhereBrief(String build, double highest) {
        return build + ": clutches give first up to " + psi(highest) + ", the highest set pressure tried.";
    }

    public static String nowhereBrief(String build, String link) {
        return build + ": " + link + " gives first at every set pressure tried.";
    }

    /** Where a state was not found, which then counts as not holding. */
    public static String notKnown(List<String> ranges) {
        return " No steady state was found at some pressures in " + String.join(", ", ranges)
                + ", which counts as not holding.";
    }

    private String psi(double pressure) {
        return Quantity.PRESSURE.with(units, pressure);
    }

    private String torque(double torque) {
        return Quantity.TORQUE.with(units, torque);
    }
}
