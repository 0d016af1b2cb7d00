package hotidle.assess;

/** What is known of the clutch that closes in a shift. */
public enum ShiftFinding {
    FOUND,
    /** The clutch closes without slip: it holds, and makes no heat. */
    STATIC,
    /** Not one clutch closes alone. */
    NOT_ONE,
    /** It carries less than the engine's torque asks of it while it slips, and never closes. */
    NEVER,
    NO_STATE
}
