package hotidle.transmission;

import hotidle.part.Sensed;
import hotidle.part.Setting;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
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
 * @param temperatures of each region [K]; where they follow from heat, of those that are given all the same
 * @param commands     pilot pressure asked of solenoids other than the one of the line command [Pa]
 * @param sensed       what mechanical valves feel
 * @param warming      how the temperatures follow from heat; empty where they are given
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
        Map<String, Double> commands,
        Sensed sensed,
        Optional<Warming> warming) {

    public DutyPoint {
        temperatures = Map.copyOf(temperatures);
        commands = Map.copyOf(commands);
    }

    /** A point whose temperatures are given, at which mechanical valves feel nothing. */
    public DutyPoint(
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
        this(
                name,
                about,
                speed,
                range,
                lockup,
                engineTorque,
                torqueRatio,
                speedRatio,
                lubeNeed,
                temperatures,
                commands,
                Sensed.NOTHING);
    }

    /** A point whose temperatures are given. */
    public DutyPoint(
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
            Map<String, Double> commands,
            Sensed sensed) {
        this(
                name,
                about,
                speed,
                range,
                lockup,
                engineTorque,
                torqueRatio,
                speedRatio,
                lubeNeed,
                temperatures,
                commands,
                sensed,
                Optional.empty());
    }

    /** The same point at given temperatures [K] of all regions. */
    public DutyPoint at(Map<String, Double> given) {
        return with(speed, range, lockup, engineTorque, given, commands, Optional.empty());
    }

    /** The same point at the temperatures [K] of all regions that its own heat brings it to. */
    public DutyPoint settledAt(Map<String, Double> found) {
        return with(speed, range, lockup, engineTorque, found, commands, Optional.of(new Warming.OwnTemperatures()));
    }

    /** Whether its temperatures were found from its own heat. */
    public boolean settled() {
        return warming.filter(Warming.OwnTemperatures.class::isInstance).isPresent();
    }

    /** Whether it is judged: not where its own heat brings it to no temperature. */
    public boolean judged() {
        return warming.filter(Warming.NeverSettles.class::isInstance).isEmpty();
    }

    /** The same point with another range engaged, at its given temperatures. */
    public DutyPoint inRange(String other) {
        return with(speed, other, lockup, engineTorque, temperatures, commands, Optional.empty());
    }

    /** The same point with temperatures that follow from heat. */
    public DutyPoint warmedBy(Warming how) {
        return with(speed, range, lockup, engineTorque, temperatures, commands, Optional.of(how));
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
        return with(speed, range, otherLockup, engineTorque, temperatures, all, warming);
    }

    /** The same point with its sump at another temperature [K]; all other regions keep their distance from it. */
    public DutyPoint withSump(double sump) {
        double shift = sump - temperatures.getOrDefault("sump", sump);
        Map<String, Double> others = new HashMap<>();
        temperatures.forEach((region, kelvin) -> others.put(region, kelvin + shift));
        return at(others);
    }

    /** The same point at another engine speed [rev/s]. */
    public DutyPoint atSpeed(double other) {
        return with(other, range, lockup, engineTorque, temperatures, commands, warming);
    }

    /** The same point with another engine torque [N·m]. */
    public DutyPoint withTorque(double otherTorque) {
        return with(speed, range, lockup, otherTorque, temperatures, commands, warming);
    }

    private DutyPoint with(
            double otherSpeed,
            String otherRange,
            Setting.Lockup otherLockup,
            double otherTorque,
            Map<String, Double> otherTemperatures,
            Map<String, Double> otherCommands,
            Optional<Warming> otherWarming) {
        return new DutyPoint(
                name,
                about,
                otherSpeed,
                otherRange,
                otherLockup,
                otherTorque,
                torqueRatio,
                speedRatio,
                lubeNeed,
                otherTemperatures,
                otherCommands,
                sensed,
                otherWarming);
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
