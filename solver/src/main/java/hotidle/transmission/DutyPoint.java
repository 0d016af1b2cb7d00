package hotidle.transmission;

import hotidle.part.Setting;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A point of duty at which a unit is judged.
 *
 * @param name         for example hot-idle
 * @param about        in a few words
 * @param speed        engine speed [rev/s]
 * @param range        range engaged
 * @param lockup       lockup state
 * @param engineTorque [N·m]
 * @param torqueRatio  turbine torque over engine torque [-]
 * @param speedRatio   turbine speed over engine speed [-]; empty where it is not given
 * @param lubeNeed     share of the flow that lubrication and cooler are said to need that is needed here [-]
 * @param temperatures of each region [K]
 * @param commands     pilot pressure asked of solenoids other than the one of the line command [Pa]
 */
public record DutyPoint(
        String name,
        String about,
        double speed,
        String range,
        Setting.Lockup lockup,
        double engineTorque,
        double torqueRatio,
        OptionalDouble speedRatio,
        double lubeNeed,
        Map<String, Double> temperatures,
        Map<String, Double> commands) {

    public DutyPoint {
        temperatures = Map.copyOf(temperatures);
        commands = Map.copyOf(commands);
    }

    /**
     * The same point with the lockup and some solenoids commanded otherwise.
     *
     * @param otherLockup   lockup state
     * @param otherCommands pilot pressure [Pa] of the solenoids that are commanded otherwise
     */
    public DutyPoint with(Setting.Lockup otherLockup, Map<String, Double> otherCommands) {
        Map<String, Double> all = new HashMap<>(commands);
        all.putAll(otherCommands);
        return new DutyPoint(
                name,
                about,
                speed,
                range,
                otherLockup,
                engineTorque,
                torqueRatio,
                speedRatio,
                lubeNeed,
                temperatures,
                all);
    }

    /** Turbine speed [rev/s]: as given, the engine's with lockup on, otherwise not known. */
    public OptionalDouble turbineSpeed() {
        return speedRatio.isPresent()
                ? OptionalDouble.of(speedRatio.getAsDouble() * speed)
                : lockup == Setting.Lockup.ON ? OptionalDouble.of(speed) : OptionalDouble.empty();
    }

    /** Torque on the turbine [N·m]. */
    public double turbineTorque() {
        return engineTorque * torqueRatio;
    }
}
