package hotidle.part;

import hotidle.oil.OilAt;
import java.util.Map;

/**
 * What a part is given for a whole solve.
 *
 * @param speed   engine and pump speed [rev/s]
 * @param range   name of the range engaged
 * @param lockup  lockup state
 * @param oil     oil at the temperature of the part's region
 * @param command pilot pressure asked of the part, where it is a solenoid [Pa], otherwise 0
 * @param temperatures of all regions [K]
 * @param sensed  what mechanical valves feel
 */
public record Setting(
        double speed,
        String range,
        Lockup lockup,
        OilAt oil,
        double command,
        Map<String, Double> temperatures,
        Sensed sensed) {

    public Setting {
        temperatures = Map.copyOf(temperatures);
    }

    /** A setting in which mechanical valves feel nothing. */
    public Setting(
            double speed, String range, Lockup lockup, OilAt oil, double command, Map<String, Double> temperatures) {
        this(speed, range, lockup, oil, command, temperatures, Sensed.NOTHING);
    }

    /** A setting for a part that asks for no temperature but that of its own oil. */
    public Setting(double speed, String range, Lockup lockup, OilAt oil, double command) {
        this(speed, range, lockup, oil, command, Map.of());
    }

    /** State of the converter's lockup clutch. */
    public enum Lockup {
        OFF,
        SLIPPING,
        ON
    }
}
