package hotidle.study;

import hotidle.result.Unsolved;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The highest engine torque that a build holds in one range, at the pressure that it really has there. The line is commanded for that
 * torque and then solved, so that a pump which does not bring what is commanded counts. A clutch counts with its holding friction and
 * the factor of its file, and without the head of its drum where the turbine's speed is not known; lockup is off.
 *
 * <pre>
 * Numerics  torques are tried at each row of the command, up to the first that is not held, and halved between that and the row
 *           before; beyond the last row the last command holds and the torque follows at once. Above the first that is not held
 *           nothing is looked for
 * </pre>
 *
 * @param range       the range
 * @param ratio       of the gear train [-]; empty where it is not given
 * @param at          under what it was found
 * @param held        what it holds; empty where nothing was found
 * @param unsolved    why nothing was found
 */
public record TorqueHeld(
        String range, OptionalDouble ratio, TorqueConditions at, Optional<Held> held, Optional<Unsolved> unsolved) {

    /**
     * What is held.
     *
     * @param torque    highest engine torque [N·m]
     * @param line      line pressure there [Pa]
     * @param commanded set pressure there [Pa]; empty where nothing is commanded
     * @param beyond    whether it lies beyond the last row of the command, which is held on
     * @param from      lowest engine speed from which nine tenths of it are held [rev/s]; empty where they are at the slowest duty point
     * @param links     all that carries, the first to give first
     */
    public record Held(
            double torque,
            double line,
            OptionalDouble commanded,
            boolean beyond,
            OptionalDouble from,
            List<Carrier> links) {
        public Held {
            links = List.copyOf(links);
        }
    }

    /**
     * Something that carries.
     *
     * @param name   of the clutch or link
     * @param clutch whether line pressure makes it hold
     * @param torque highest engine torque that it carries at the pressure there [N·m]
     * @param shared whether it shares its load with another in a way that is not known, and is judged alone
     */
    public record Carrier(String name, boolean clutch, double torque, boolean shared) {}

    /** What one build holds in each range in which something is applied, in the order of the file. */
    public static List<TorqueHeld> of(Transmission unit, double speed) {
        return unit.ranges().stream().filter(range -> !range.applied().isEmpty()).toList().parallelStream()
                .map(range -> new TorqueSearch(unit, range, speed).held(true))
                .toList();
    }

    /** The same without looking for the lowest speed that holds it, as {@link Held#from} then is empty. */
    public static List<TorqueHeld> atOneSpeed(Transmission unit, double speed) {
        return unit.ranges().stream().filter(range -> !range.applied().isEmpty()).toList().parallelStream()
                .map(range -> new TorqueSearch(unit, range, speed).held(false))
                .toList();
    }
}
