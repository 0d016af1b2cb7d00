package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import java.util.Locale;

/** Where the oil goes that the pump displaces. */
public final class OilLostPhrase {

    private OilLostPhrase() {}

    /** Above the oil budget. */
    public static String heading(Quantity.UnitSystem units) {
        return "Where the oil goes [" + Quantity.FLOW.in(units).unit() + "], counted as the pump takes it in";
    }

    /** Above what loses most. */
    public static final String MOST = "loses most";

    /** Behind a path that brings oil back. */
    public static final String BACK = " (brings oil back)";

    /** Paths too small to be listed each. */
    public static String smaller(int paths) {
        return CountPhrase.of(paths, "smaller one");
    }

    /** All that loses less, together. */
    public static String less(int paths) {
        return paths == 1 ? "1 other that loses oil" : paths + " others that lose oil";
    }

    /** The same where some of them bring oil back, which is taken off. */
    public static String net(int paths) {
        return paths == 1 ? "1 other" : paths + " others, net";
    }

    /** All that is not lost, together. */
    public static final String NOT_LOST = "used or sent back";

    /** Fits past which oil comes back, together. */
    public static String back(int paths) {
        return paths + (paths == 1 ? " that brings oil back" : " that bring oil back");
    }

    private static final String ENDS =
            "Oil is counted once, where it ends: what has passed converter and cooler under the lubrication, what comes past the"
                    + " face of a gear under the bushing behind it. The fit to repair can lie upstream.";

    /**
     * How much of it is lost, and on which side of the pump; all flows in m³/s.
     *
     * @param slip inside the pump
     * @param leak outside it
     */
    public static String lost(double displaced, double slip, double leak, Quantity.UnitSystem units) {
        double lost = slip + leak;
        return "Of the " + Quantity.FLOW.with(units, displaced) + " that the pump displaces, "
                + Quantity.FLOW.with(units, lost) + " is lost (" + Math.round(100 * lost / displaced) + " %): "
                + Quantity.FLOW.with(units, slip) + " slips back inside the pump, "
                + Quantity.FLOW.with(units, leak) + " leaks outside it.";
    }

    /**
     * What comes back to the inlet past the regulator, behind {@link #lost}; nothing where none does.
     *
     * @param back [m³/s]
     * @param low  whether the line is not held, so that it lacks that oil
     */
    public static String back(double back, boolean low, Quantity.UnitSystem units) {
        return back > 0
                ? " Besides, " + Quantity.FLOW.with(units, back) + " comes back to its inlet past the regulator"
                        + (low ? ": its lands let oil by even when shut, and the line lacks that oil." : ".")
                : "";
    }

    /**
     * How much would be with every fit as new.
     *
     * @param lost [m³/s]
     * @param line pressure it then has, in words
     */
    public static String asNew(double lost, String line, Quantity.UnitSystem units) {
        return "With every fit as new it would lose " + Quantity.FLOW.with(units, lost) + ", with the line at " + line
                + ".";
    }

    /** What the lubrication gets and needs [m³/s]. */
    public static String lubrication(double gets, double needs, Quantity.UnitSystem units) {
        return "Lubrication gets " + Quantity.FLOW.with(units, gets) + "; it needs " + Quantity.FLOW.with(units, needs)
                + " here.";
    }

    /** Of what the pump displaces: less is rounding of numbers with sixteen digits (chosen). */
    private static final double HIDDEN = 1e-9;

    /** Beneath a budget whose sum closes but for a share of what the pump displaces. */
    public static String closes(double open) {
        return ENDS
                + (open < HIDDEN
                        ? " The shares add up to what the pump displaces."
                        : " The shares add up to what the pump displaces but for " + left(open) + ".");
    }

    /** Beneath a budget whose sum does not. */
    public static String doesNotClose(double open) {
        return "THE SHARES DO NOT ADD UP to what the pump displaces: " + left(open)
                + " is left over; do not trust them.";
    }

    private static String left(double open) {
        return String.format(Locale.ROOT, "%.1g %% of it", 100 * open);
    }
}
