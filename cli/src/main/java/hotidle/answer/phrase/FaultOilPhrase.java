package hotidle.answer.phrase;

import hotidle.fault.FaultKind;

/** What a fault does to the oil, without a word of what a gauge then reads. */
public final class FaultOilPhrase {

    private FaultOilPhrase() {}

    /** One sentence. */
    public static String does(FaultKind kind) {
        return switch (kind) {
            case BORE_WORN -> "Oil gets past the part in its bore, also where it should be shut off.";
            case PLATE_WARPED -> "Oil leaks between two faces that should lie flat on each other.";
            case HUB_WORN -> "Oil from behind the pump gear leaks along the hub into the case.";
            case FACE_WORN -> "Oil leaks under the faces of the gear.";
            case RINGS_WORN -> "Oil leaks past the rings on its way into a turning drum.";
            case SEAL_LEAKING -> "Oil leaks past the piston of a clutch or brake.";
            case PUMP_SLIPPING -> "Oil slips back inside the pump from its outlet to its inlet.";
            case CHECK_BALL_MISSING -> "Oil can flow both ways where it should flow one way only.";
            case VALVE_STUCK -> "The valve stands still and no longer changes its openings.";
            case SPRING_WEAK -> "Less pressure than it should take moves the valve against its spring.";
            case FILTER_BLOCKED -> "Oil gets through the filter with difficulty.";
            case COOLER_BLOCKED -> "Oil gets through the cooler with difficulty.";
            case OIL_AERATED -> "Bubbles take up room in the oil; the pump moves them instead of oil.";
            case ORIFICE_WRONG -> "The hole passes more oil, or less, than it should.";
            case SOLENOID_STUCK -> "The solenoid feeds and vents its passage always alike, whatever it is told.";
        };
    }
}
