package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import java.util.OptionalDouble;

/** Whether the line stands at the pressure commanded: held, not held, far above it, or nothing commanded. */
public record HeldLinePhrase(Quantity.UnitSystem units) {

    /** Nothing is commanded; the line pressure [Pa] all the same. */
    public String uncommanded(String build, String duty, double line) {
        return build + ": nothing is commanded; at " + duty + " the line stands at "
                + Quantity.PRESSURE.with(units, line) + ".";
    }

    /**
     * The line is regulated.
     *
     * @param farAbove   whether it stands far above the set pressure all the same
     * @param set        [Pa]
     * @param line       [Pa]
     * @param lube       flow of the lubrication [m³/s], empty without one
     * @param shortOfOil what gets less than it needs, as {@link ShortOfOilPhrase} lists it; empty where nothing does
     */
    public String held(
            String build,
            boolean farAbove,
            double set,
            String duty,
            double line,
            OptionalDouble lube,
            String shortOfOil) {
        return build + (farAbove ? " overshoots its " : " holds its ") + at(set, duty, line) + lube(lube) + "."
                + (shortOfOil.isEmpty() ? "" : " Even so too little (is, of needed) for " + shortOfOil + ".");
    }

    /**
     * The line stands below the set pressure; arguments as of {@link #held}.
     *
     * @param onSeat     whether the regulator lets nothing go
     * @param reliefOpen whether a relief valve lets oil of the line go
     */
    public String notHeld(
            String build,
            double set,
            String duty,
            double line,
            boolean onSeat,
            boolean reliefOpen,
            OptionalDouble lube,
            String shortOfOil) {
        return build + " cannot hold its " + at(set, duty, line) + (onSeat ? ", regulator on its seat" : "")
                + (reliefOpen ? ", relief valve open" : "") + lube(lube) + "."
                + (shortOfOil.isEmpty() ? "" : " Too little (is, of needed) for " + shortOfOil + ".");
    }

    /** A line [Pa] far above the set pressure [Pa]; a part of a sentence that begins with where it is so. */
    public String farAbove(double line, double set, boolean reliefOpen) {
        return "the line stands at " + Quantity.PRESSURE.with(units, line) + ", far above the "
                + Quantity.PRESSURE.with(units, set) + " commanded: the regulator cannot let go of the oil, or sticks"
                + (reliefOpen ? "; the relief valve holds the line." : ".");
    }

    /** The same in a sentence of its own, beneath a heading that says where. */
    public String farAboveHere(double line, double set, boolean reliefOpen) {
        return "Here " + farAbove(line, set, reliefOpen);
    }

    /** A duty in front of what is said of it. */
    public static String at(String duty, String said) {
        return "At " + duty + " " + said;
    }

    private String at(double set, String duty, double line) {
        return Quantity.PRESSURE.with(units, set) + " at " + duty + ": line " + Quantity.PRESSURE.with(units, line);
    }

    private String lube(OptionalDouble lube) {
        return lube.isPresent() ? ", lubrication " + Quantity.FLOW.with(units, lube.getAsDouble()) : "";
    }
}
