package hotidle.assess;

import hotidle.transmission.Command;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.OptionalDouble;

/** Whether the line is held at idle: a unit whose idle pressure is low is not stall-tested (common practice). */
public final class IdlePressure {

    private IdlePressure() {}

    /**
     * Whether a duty is the unit's slowest and its line is not held there, or is not known.
     *
     * @param line line pressure [Pa], where it is known
     * @param set  set pressure commanded [Pa], where it is known
     */
    public static boolean low(Transmission unit, DutyPoint duty, OptionalDouble line, OptionalDouble set) {
        boolean idle = unit.duties().stream().allMatch(other -> duty.speed() <= other.speed());
        boolean held = line.isPresent() && set.isPresent() && line.getAsDouble() >= set.getAsDouble() - Command.AGREE;
        return idle && unit.commanded().isPresent() && !held;
    }
}
