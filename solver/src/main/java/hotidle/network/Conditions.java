package hotidle.network;

import hotidle.oil.Oil;
import hotidle.oil.OilAt;
import hotidle.part.Sensed;
import hotidle.part.Setting;
import java.util.Map;
import java.util.Objects;

/**
 * What is given for one solve.
 *
 * @param speed        engine and pump speed [rev/s], 0 or more
 * @param range        range engaged
 * @param lockup       lockup state
 * @param oil          the oil
 * @param ambient      absolute ambient pressure [Pa]
 * @param temperatures of each region [K]
 * @param commands     pilot pressure asked of each solenoid [Pa]
 * @param sensed       what mechanical valves feel
 */
public record Conditions(
        double speed,
        String range,
        Setting.Lockup lockup,
        Oil oil,
        double ambient,
        Map<String, Double> temperatures,
        Map<String, Double> commands,
        Sensed sensed) {

    /** Conditions under which mechanical valves feel nothing. */
    public Conditions(
            double speed,
            String range,
            Setting.Lockup lockup,
            Oil oil,
            double ambient,
            Map<String, Double> temperatures,
            Map<String, Double> commands) {
        this(speed, range, lockup, oil, ambient, temperatures, commands, Sensed.NOTHING);
    }

    public Conditions {
        temperatures = Map.copyOf(temperatures);
        commands = Map.copyOf(commands);
        if (!(speed >= 0)) {
            throw new IllegalArgumentException("speed is " + speed + " rev/s and must not be below zero");
        }
    }

    /** The same at another speed [rev/s]. */
    public Conditions atSpeed(double other) {
        return new Conditions(other, range, lockup, oil, ambient, temperatures, commands, sensed);
    }

    /** The same with another pilot pressure asked of each solenoid [Pa]. */
    public Conditions commanding(Map<String, Double> others) {
        return new Conditions(speed, range, lockup, oil, ambient, temperatures, others, sensed);
    }

    /** Whether nothing but the speed differs. */
    public boolean differsInSpeedOnly(Conditions other) {
        return differsInSpeedAndCommandsOnly(other) && commands.equals(other.commands);
    }

    /** Whether nothing but the speed and what solenoids are asked for differs. Mostly oil and sensed are the very same, seen at once. */
    public boolean differsInSpeedAndCommandsOnly(Conditions other) {
        return range.equals(other.range)
                && lockup == other.lockup
                && ambient == other.ambient
                && Objects.equals(oil, other.oil)
                && temperatures.equals(other.temperatures)
                && Objects.equals(sensed, other.sensed);
    }

    /** Whether a part is asked for the same under other conditions. */
    public boolean commandsAlike(Placed placed, Conditions other) {
        return command(placed) == other.command(placed);
    }

    private double command(Placed placed) {
        return commands.getOrDefault(placed.name(), 0.0);
    }

    /** What one part is given. */
    public Setting setting(Placed placed) {
        return setting(placed, oil(placed));
    }

    /** What one part is given, its oil being known. */
    public Setting setting(Placed placed, OilAt known) {
        return new Setting(speed, range, lockup, known, command(placed), temperatures, sensed);
    }

    /** The oil that one part sees. */
    public OilAt oil(Placed placed) {
        Double temperature = temperatures.get(placed.region());
        if (temperature == null) {
            throw new IllegalArgumentException(
                    placed.name() + " is in region " + placed.region() + ", which has no temperature");
        }
        return oil.at(temperature, ambient);
    }
}
