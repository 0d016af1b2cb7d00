package hotidle.study;

import hotidle.study.TorqueHeld.Carrier;
import hotidle.study.TorqueHeld.Held;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Torque held against set pressure: what each clutch and link carries in the range that loads it most.
 *
 * @param points in rising pressure
 */
public record TorqueByPressure(List<TorqueAtPressure> points) {

    /**
     * At one set pressure.
     *
     * @param pressure [Pa]
     * @param held     engine torque that every range holds [N·m]; empty where one is not known
     * @param links    the least of all ranges of each, the first to give first; empty where a range is not known
     */
    public record TorqueAtPressure(double pressure, OptionalDouble held, List<Carrier> links) {
        public TorqueAtPressure {
            links = List.copyOf(links);
        }
    }

    public TorqueByPressure {
        points = List.copyOf(points);
    }

    /**
     * Looks at each.
     *
     * @param raised    makes the unit for each set pressure
     * @param pressures [Pa], rising
     * @param speed     of the engine [rev/s]
     * @param step      called after each pressure, from any thread
     * @throws IllegalArgumentException where no duty point under load gives the temperatures of all regions
     */
    public static TorqueByPressure of(Window.Raised raised, List<Double> pressures, double speed, Runnable step) {
        return new TorqueByPressure(pressures.parallelStream()
                .map(pressure -> {
                    Transmission unit = raised.to(pressure, Set.of());
                    TorqueAtPressure point = point(pressure, TorqueHeld.atOneSpeed(unit, speed));
                    step.run();
                    return point;
                })
                .toList());
    }

    private static TorqueAtPressure point(double pressure, List<TorqueHeld> ranges) {
        if (ranges.stream().anyMatch(range -> range.held().isEmpty())) {
            return new TorqueAtPressure(pressure, OptionalDouble.empty(), List.of());
        }
        Map<String, Carrier> least = new LinkedHashMap<>();
        for (TorqueHeld range : ranges) {
            for (Carrier link : range.held().orElseThrow().links()) {
                least.merge(link.name(), link, (one, other) -> one.torque() <= other.torque() ? one : other);
            }
        }
        List<Carrier> links = new ArrayList<>(least.values());
        links.sort(Comparator.comparingDouble(Carrier::torque));
        return new TorqueAtPressure(
                pressure,
                ranges.stream()
                        .map(range -> range.held().orElseThrow())
                        .mapToDouble(Held::torque)
                        .min(),
                links);
    }
}
