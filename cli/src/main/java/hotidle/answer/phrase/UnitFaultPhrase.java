package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import hotidle.fault.FaultKind;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * A fault of a unit in words.
 *
 * @param units of the user
 */
public record UnitFaultPhrase(Quantity.UnitSystem units) {

    /** Worn by more wear allowances than this, a fit is torn and not worn (chosen) [-]. */
    private static final double TORN = 2;

    /** A part and what is wrong with it. */
    public static String named(FaultKind kind, String part) {
        return part.isEmpty() ? kind.about() : part + ": " + kind.about();
    }

    /** The same in a list of others. */
    public static String brief(FaultKind kind, String part) {
        return part.isEmpty() ? kind.about() : part + " (" + kind.about() + ")";
    }

    /**
     * How far a single size is worn.
     *
     * @param key   of the size
     * @param size  [m]
     * @param limit wear limit [m]
     * @param worn  share of the way from new to the limit [-]
     */
    public String worn(String key, double size, OptionalDouble limit, double worn) {
        String wear = limit.isPresent() ? ", wear limit " + Quantity.SIZE.with(units, limit.getAsDouble()) : "";
        return key + " " + Quantity.SIZE.with(units, size) + wear + "; " + judged(worn);
    }

    /** How far several sizes of a part are worn together, as a share of the way from new to their limits [-]. */
    public static String worn(double worn) {
        return "all its sizes at " + percent(worn) + " of their wear allowance; " + judged(worn);
    }

    private static String judged(double worn) {
        if (worn <= 1) {
            return "within wear";
        }
        return worn <= TORN ? "past its limit" : "far past its limit, as torn or blown";
    }

    /** A size of any other kind; {@code usual} is that of the sound part, where it has one. */
    public String other(FaultKind kind, double size, double usual) {
        return switch (kind) {
            // not "open": far from its rest a valve that limits has shut
            case VALVE_STUCK -> Quantity.TRAVEL.with(units, size) + " off its rest";
            case SPRING_WEAK -> percent(size) + " weaker";
            case FILTER_BLOCKED, COOLER_BLOCKED -> String.format(Locale.ROOT, "%.1f %% blocked", 100 * size);
            case OIL_AERATED -> percent(size) + " air";
            case ORIFICE_WRONG -> Quantity.SIZE.with(units, size) + " in place of " + Quantity.SIZE.with(units, usual);
            case SOLENOID_STUCK -> percent(size) + " open";
            default -> "";
        };
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }
}
