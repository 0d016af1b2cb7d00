package hotidle.answer.part;

import hotidle.oil.Oil;
import hotidle.oil.OilAt;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What a part on its own is put under.
 *
 * @param oil                  that fills it
 * @param oilByDefault         whether the oil was left to the program
 * @param temperature          of the oil [K]
 * @param temperatureByDefault whether that was left to the program
 * @param pressures            at the ports that are held [Pa]
 * @param holds                own states that are held, by name
 */
public record PartConditions(
        Oil oil,
        boolean oilByDefault,
        double temperature,
        boolean temperatureByDefault,
        Map<String, Double> pressures,
        Map<String, Double> holds) {

    public PartConditions {
        pressures = Collections.unmodifiableMap(new LinkedHashMap<>(pressures));
        holds = Collections.unmodifiableMap(new LinkedHashMap<>(holds));
    }

    /** The oil at its temperature. */
    public OilAt oilAt() {
        return oil.at(temperature, OilAt.STANDARD_ATMOSPHERE);
    }
}
