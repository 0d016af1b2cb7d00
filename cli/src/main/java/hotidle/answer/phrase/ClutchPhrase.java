package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import java.util.OptionalDouble;

/** Clutches that may slip, and clutches that press although they should be off. */
public record ClutchPhrase(Quantity.UnitSystem units) {

    /** Too little pressure [Pa], where it is known, for what it needs [Pa], at a duty. */
    public String slips(String duty, String clutch, OptionalDouble value, double needed) {
        return "At " + duty + " too little pressure on " + clutch + ": "
                + (value.isEmpty() ? "not known" : Quantity.PRESSURE.with(units, value.getAsDouble()))
                + " where it needs "
                + Quantity.PRESSURE.with(units, needed) + " with its capacity factor; it may slip.";
    }

    /**
     * Pressed in a range that does not apply it.
     *
     * @param pressure at its piston [Pa]
     * @param yields   pressure at which its return spring yields [Pa]
     */
    public String drags(String clutch, double pressure, String duty, String range, double yields) {
        return clutch + " carries " + Quantity.PRESSURE.with(units, pressure) + " at " + duty + ", though " + range
                + " does not apply it: its return spring yields at " + Quantity.PRESSURE.with(units, yields)
                + ", so that it drags and burns.";
    }

    /** In front of a clutch that drags, where it stands beneath a table of limits. */
    public static String fails(String drags) {
        return "FAILS " + drags;
    }

    /** An applied clutch whose pressure lies so far below the line [Pa] that its circuit leaks. */
    public String leaks(String clutch, double below) {
        return clutch + " is " + Quantity.PRESSURE.with(units, below)
                + " below the line: more than 15 psi points to a leak in its circuit (common practice).";
    }
}
