package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import hotidle.assess.ShiftFinding;
import java.util.Locale;

/** Heat of a shift; torques in [N·m], pressures in [Pa], inertia in [kg·m²], heat in [J] and [J/m²]. */
public record ShiftPhrase(Quantity.UnitSystem units) {

    /** Heat over rubbing area that oiled paper linings bear in one shift [J/m²]: common practice, some 0.5 to 1 J/mm². */
    public static final double LIMIT = 1e6;

    /** Power over rubbing area at the start [W/m²]: common practice, some 2 to 4 W/mm². */
    public static final double POWER_LIMIT = 3e6;

    private static final double PER_MM2 = 1e6;

    /** Behind a figure above its limit. */
    public static final String OVER = "!";

    /** Above the table. */
    public String heading(String circuit, String build, double speed, double torque, double inertia) {
        return circuit + ", " + build + ": each shift up at " + Quantity.SPEED.with(units, speed)
                + " of the turbine with " + Quantity.TORQUE.with(units, torque) + " on it, kept, and "
                + String.format(Locale.ROOT, "%.2f kg.m2", inertia) + " on its side";
    }

    /** Heat over area, in J/mm2. */
    public static String overArea(double heat) {
        return String.format(Locale.ROOT, "%.2f", heat / PER_MM2) + (heat > LIMIT ? OVER : "");
    }

    /** Power over area, in W/mm2. */
    public static String powerOverArea(double power) {
        return String.format(Locale.ROOT, "%.2f", power / PER_MM2) + (power > POWER_LIMIT ? OVER : "");
    }

    /** Heat in kJ. */
    public static String kilojoule(double heat) {
        return String.format(Locale.ROOT, "%.2f", heat / 1e3);
    }

    /** A time in seconds. */
    public static String seconds(double time) {
        return String.format(Locale.ROOT, "%.2f", time);
    }

    /** Why a shift has no figures. */
    public static String why(ShiftFinding why) {
        return switch (why) {
            case FOUND -> "slides";
            case STATIC -> "closes without slip";
            case NOT_ONE -> "not one clutch closes";
            case NEVER -> "NEVER CLOSES";
            case NO_STATE -> UnsolvedPhrase.CELL;
        };
    }

    /** Clutches that never slide under load in a shift up. */
    public static String still(String names) {
        return "Close at rest or hold alone, and are judged by 'margins': " + names + ".";
    }

    /** A file without a gear train. */
    public static final String NO_TRAIN =
            "No shift: the file gives no gearsets from which ratios and slip would follow.";

    /** What is limited, and by whom. */
    public static final String LIMITS =
            OVER + " above 1 J/mm2 in a shift or 3 W/mm2 at its start, which oiled paper linings bear"
                    + " (common practice): your lining maker's figures come first.";

    /** What is not counted. */
    public static final String NOT_COUNTED =
            "At the full pressure of the new range: no ramp, no accumulator, no torque reduction."
                    + " Steel: rise when none of the heat leaves the plates. Wear is not computed.";

    /** Above the lockup's rows. */
    public static String lockup(double time) {
        return String.format(
                Locale.ROOT,
                "Lockup applied over %.2f s, the slip falling evenly, against held slipping as it is there",
                time);
    }

    /** On what the figures rest. */
    public static final String ESTIMATE = "An estimate from your own figures, not an approval.";
}
