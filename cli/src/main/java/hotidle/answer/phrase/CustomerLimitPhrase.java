package hotidle.answer.phrase;

import hotidle.assess.Margin;

/** Limits in words of somebody who does not know the trade. */
public final class CustomerLimitPhrase {

    private CustomerLimitPhrase() {}

    /** Why a build does not hold, and at which driving condition, as {@link CustomerPhrase#at} says it. */
    public static String fails(Margin.Kind kind, String duty) {
        return switch (kind) {
                    case REGULATION -> "the pump does not deliver enough oil to keep the pressure up";
                    case APPLY, APPLY_SLIDING -> "a clutch or band is not pressed hard enough for the engine's torque";
                    case LOCKUP -> "the lockup clutch is not pressed hard enough for the engine's torque";
                    case LUBRICATION -> "too little oil reaches a place that must be lubricated";
                    case COOLER -> "too little oil goes through the cooler";
                    case CONVERTER_CHARGE -> "the converter gets too little oil";
                    case FILM -> "the oil film under the pump hub is too thin";
                    case FILM_OIL -> "the bushing of the pump hub gets too little oil";
                    case UNIT_LOAD -> "the pump hub presses too hard on its bushing";
                    case PUMP_INLET -> "the pump cannot draw in enough oil";
                    case RELIEF -> "the relief valve opens";
                    case OIL_TEMPERATURE -> "the oil gets too hot";
                    case CONVERTER_TEMPERATURE -> "the oil in the converter gets too hot";
                    case RATED_TORQUE -> "a shaft or another rated part carries more than it is rated for";
                    case RATED_PRESSURE -> "the pressure is higher than a part is rated for";
                }
                + " (" + duty + ").";
    }

    /** Which limit is nearest, with less than a tenth to spare. */
    public static String nearest(Margin.Kind kind, String duty) {
        return of(kind) + " (" + duty + ").";
    }

    /** What is limited. */
    public static String of(Margin.Kind kind) {
        return switch (kind) {
            case REGULATION -> "what the pump delivers";
            case APPLY, APPLY_SLIDING -> "how hard a clutch or band is pressed";
            case LOCKUP -> "how hard the lockup clutch is pressed";
            case LUBRICATION -> "oil for lubrication";
            case COOLER -> "oil through the cooler";
            case CONVERTER_CHARGE -> "oil for the converter";
            case FILM -> "the oil film under the pump hub";
            case FILM_OIL -> "oil for the bushing of the pump hub";
            case UNIT_LOAD -> "load on the bushing of the pump hub";
            case PUMP_INLET -> "the suction of the pump";
            case RELIEF -> "what is left until the relief valve opens";
            case OIL_TEMPERATURE -> "how hot the oil gets";
            case CONVERTER_TEMPERATURE -> "how hot the oil in the converter gets";
            case RATED_TORQUE -> "what a shaft or another rated part carries";
            case RATED_PRESSURE -> "the pressure that a part is rated for";
        };
    }
}
