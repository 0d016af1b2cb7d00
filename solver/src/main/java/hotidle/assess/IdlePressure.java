package hotidle.assess;

import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;

/** Whether the line is held at idle: a unit whose idle pressure is low is not stall-tested (common practice). */
public final class IdlePressure {

    private IdlePressure() {}

    /**
     * Whether a duty is the unit's slowest and its line is not held there, or is not known. However little is wanting, it is low: the
     * pump has no oil to spare there, and what lies past the regulator gets none.
     *
     * @param held whether the regulator holds the line, which is known, at what is commanded ({@link Figures#regulated})
     */
    public static boolean low(Transmission unit, DutyPoint duty, boolean held) {
        boolean idle = unit.duties().stream().allMatch(other -> duty.speed() <= other.speed());
        return idle && unit.commanded().isPresent() && !held;
    }
}
