package hotidle.answer.phrase;

import hotidle.assess.Margin;

/** What a limit is called, and where it binds. */
public final class LimitPhrase {

    /** What the two limits of a clutch are called that are one and the same. */
    public static final String APPLY_BOTH = "apply, holding and slipping";

    private LimitPhrase() {}

    /** What a kind of limit is called. */
    public static String label(Margin.Kind kind) {
        return switch (kind) {
            case REGULATION -> "regulation";
            case APPLY -> "apply, holding";
            case APPLY_SLIDING -> "apply, slipping";
            case LOCKUP -> "lockup";
            case LUBRICATION -> "lubrication";
            case COOLER -> "cooler";
            case CONVERTER_CHARGE -> "converter charge";
            case FILM -> "hub film";
            case FILM_OIL -> "hub film oil";
            case UNIT_LOAD -> "hub unit load";
            case PUMP_INLET -> "pump inlet";
            case RELIEF -> "relief valve";
            case OIL_TEMPERATURE -> "oil temperature";
            case CONVERTER_TEMPERATURE -> "converter temperature";
            case RATED_TORQUE -> "rated torque";
            case RATED_PRESSURE -> "rated pressure";
        };
    }

    /** In a sentence: lubrication (lube-rear) at hot-idle. */
    public static String at(Margin.Kind kind, String part, String duty) {
        return label(kind) + " (" + part + ") at " + duty;
    }

    /** In a list: lubrication (lube-rear), hot-idle. */
    public static String listed(Margin.Kind kind, String part, String duty) {
        return label(kind) + " (" + part + "), " + duty;
    }

    /** In a narrow cell: lubrication, hot-idle. */
    public static String brief(Margin.Kind kind, String duty) {
        return label(kind) + ", " + duty;
    }
}
