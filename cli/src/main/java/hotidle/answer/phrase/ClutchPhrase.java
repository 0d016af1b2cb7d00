package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;

/** Clutches that may slip, and clutches that press although they should be off. */
public record ClutchPhrase(Quantity.UnitSystem units) {

    /** Too little pressure [Pa] for what it needs [Pa], at a duty. */
    public String slips(String duty, String clutch, double value, double needed) {
        return "At " + duty + " too little pressure on " + clutch + ": "
                + (Double.isNaN(value) ? "not known" : Quantity.PRESSURE.with(units, value)) + " where it needs "
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
}
