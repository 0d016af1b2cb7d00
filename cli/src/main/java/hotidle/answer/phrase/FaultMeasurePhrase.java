package hotidle.answer.phrase;

import hotidle.fault.FaultKind;

/** What is measured or looked at on the bench to make sure of a fault: practice of the trade (from memory). */
public final class FaultMeasurePhrase {

    private FaultMeasurePhrase() {}

    /** What to do with a part. */
    public static String of(FaultKind kind, String part) {
        return switch (kind) {
            case BORE_WORN -> "bore and valve of " + part + " (small-hole gauge and micrometer)";
            case PLATE_WARPED -> "face of " + part + " (straightedge and feeler)";
            case HUB_WORN -> "hub and bushing at " + part + " (micrometer and bore gauge)";
            case FACE_WORN, PUMP_SLIPPING -> "faces and tips of " + part + " (straightedge and feeler)";
            case RINGS_WORN -> "rings of " + part + " (gap and side clearance; an air test of the passage)";
            case SEAL_LEAKING -> "piston seal of " + part + " (air test of the clutch)";
            case CHECK_BALL_MISSING -> "ball and seat of " + part + " (by eye; a vacuum test)";
            case VALVE_STUCK -> "whether the spool of " + part + " slides by its own weight";
            case SPRING_WEAK -> "spring of " + part + " (free length, and load at its working length)";
            case FILTER_BLOCKED -> "filter " + part + " (cut open)";
            case COOLER_BLOCKED -> "flow through " + part + " (bucket and clock at its return)";
            case OIL_AERATED -> "oil level and foam at the dipstick, and the seal of the suction side";
            case ORIFICE_WRONG -> "hole of " + part + " (a pin gauge or a drill's shank)";
            case SOLENOID_STUCK -> "solenoid " + part + " (resistance, and whether it clicks and shuts under air)";
        };
    }
}
