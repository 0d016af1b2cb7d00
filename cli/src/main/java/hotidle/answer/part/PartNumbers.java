package hotidle.answer.part;

import hotidle.assess.PartFlow;
import hotidle.part.Bushing;
import hotidle.part.Measure;
import hotidle.result.Solution;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** The numbers of a part in SI, by their name with the unit at its end, in the order of reading. */
final class PartNumbers {

    /** Of the first port over the second. */
    static final String DROP = "pressure_drop_pa";

    /** Thickness of the one film that a part has. */
    static final String FILM = "film_m";

    private static final String POWER = "power_w";

    private PartNumbers() {}

    static Map<String, Double> of(PartState part, Solution state) {
        Map<String, Double> numbers = new LinkedHashMap<>();
        List<String> ports = part.part().ports();
        if (ports.size() == 2) {
            numbers.put(DROP, state.pressure(ports.get(0)) - state.pressure(ports.get(1)));
        }
        state.measures()
                .getOrDefault(part.part().placed().name(), Map.of())
                .forEach((measure, value) -> value.ifPresent(known -> numbers.put(named(measure), known)));
        ownStates(state, numbers);
        part.asked().holds().forEach(numbers::putIfAbsent);
        OptionalDouble net = part.flow().map(PartFlow::net).orElse(OptionalDouble.empty());
        if (ports.size() == 2 && net.isPresent() && !numbers.containsKey(Bushing.METAL_CONTACT.key())) {
            numbers.putIfAbsent(POWER, numbers.get(DROP) * net.getAsDouble());
        }
        part.part().placed().part().fits().forEach((name, fit) -> {
            String key = name.replaceAll("[^a-z0-9]+", "_");
            numbers.put(key + "_as_measured_m", fit.outer() - fit.inner());
            numbers.put(key + "_warm_m", fit.gap(part.asked().temperature()));
        });
        numbers.remove("position", numbers.get("position_m"));
        return numbers;
    }

    /** Own states that no measure shows already. */
    private static void ownStates(Solution solved, Map<String, Double> numbers) {
        solved.states()
                .forEach((owner, own) -> own.forEach((state, value) -> {
                    String name = state.name();
                    String known = name.replace('-', '_');
                    if (Stream.of("", "_m", "_k").noneMatch(unit -> numbers.containsKey(known + unit))) {
                        numbers.put(name, value);
                    }
                }));
    }

    /** A part on its own has one film and one power. */
    private static String named(Measure measure) {
        if (measure.equals(Bushing.LEAST_FILM)) {
            return FILM;
        }
        return measure.equals(Bushing.FRICTION_POWER) ? POWER : measure.key();
    }
}
