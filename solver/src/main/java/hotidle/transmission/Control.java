package hotidle.transmission;

import hotidle.network.Conditions;
import hotidle.part.Sensed;
import java.util.HashMap;
import java.util.Map;

/**
 * What sets the pressures that valves are asked for.
 *
 * @param range    range engaged
 * @param commands pilot pressure asked of each solenoid [Pa]
 * @param sensed   what mechanical valves feel
 */
public record Control(String range, Map<String, Double> commands, Sensed sensed) {

    /** A control of which mechanical valves feel nothing. */
    public Control(String range, Map<String, Double> commands) {
        this(range, commands, Sensed.NOTHING);
    }

    public Control {
        commands = Map.copyOf(commands);
    }

    /** What does so under some conditions. */
    public static Control of(Conditions conditions) {
        return new Control(conditions.range(), conditions.commands(), conditions.sensed());
    }

    /** The same with one part asked for another pressure [Pa]. */
    Control asking(String part, double pressure) {
        Map<String, Double> all = new HashMap<>(commands);
        all.put(part, pressure);
        return new Control(range, all, sensed);
    }
}
