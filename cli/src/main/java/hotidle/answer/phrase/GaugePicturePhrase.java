package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import java.util.Locale;

/** Words in the picture of gauge readings; values in [Pa] or [m³/s]. */
public record GaugePicturePhrase(Quantity.UnitSystem units) {

    public static final String SOUND = "what a sound build reads, gauge and tolerances allowed for";
    public static final String READ = "read";
    public static final String CAUSES_ACROSS = "share of what is believed to be the cause [%]";
    public static final String NONE = "none of these";
    public static final String REST = "others, not named";

    /** Beside two faults at once. */
    public static final String TOGETHER = "both at once";

    /** Two faults at once, by their parts. */
    public static String pair(String one, String other) {
        return one + " + " + other;
    }

    /** A title where even what leads explains the readings poorly. */
    public static String poorly(String title) {
        return title + "; NOTHING FITS WELL";
    }

    /** Whether readings agree, and how many stand out. */
    public static String title(String build, int readings, boolean agrees, long standOut) {
        return build + ": " + CountPhrase.of(readings, "reading") + (agrees ? " agree" : " DO NOT AGREE")
                + " with a sound build; " + (standOut == 0 ? "none" : standOut) + " stand" + (standOut == 1 ? "s" : "")
                + " out";
    }

    /** Where they were read. */
    public static String subtitle(String circuit, String file) {
        return circuit + ", " + file;
    }

    /** Title of the level axis. */
    public String across(boolean pressure) {
        Quantity quantity = pressure ? Quantity.PRESSURE : Quantity.FLOW;
        return (pressure ? "pressure [" : "flow [") + quantity.in(units).unit() + "]";
    }

    /**
     * Beside a reading.
     *
     * @param sense empty, below or above
     */
    public String reading(String sense, boolean pressure, double value, boolean standsOut) {
        return (sense + " " + (pressure ? Quantity.PRESSURE : Quantity.FLOW).with(units, value)).strip()
                + (standsOut ? ", STANDS OUT" : "");
    }

    /** The most likely cause, or how many read alike, and how likely. */
    public static String causes(String cause, double share, int alike) {
        return "Most likely: " + (alike == 0 ? cause : "one of " + (alike + 1) + " that read alike") + ", "
                + percent(share);
    }

    /** No cause is as likely as none. */
    public static String noCause(double none) {
        return "No single fault explains them: none of these, " + percent(none);
    }

    /** Beside a cause that these readings cannot tell from others: no size, since which of them it is is not known. */
    public static final String ALIKE = "reads alike";

    /** A share beside its bar, and the size that explains most. */
    public static String share(double share, String size) {
        return percent(share) + (size.isEmpty() ? "" : ": " + size);
    }

    private static String percent(double share) {
        return share < 0.01 ? "below 1 %" : String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }
}
