package hotidle.study;

import hotidle.network.Conditions;
import hotidle.network.Network;
import hotidle.network.Placed;
import hotidle.network.Signal;
import hotidle.newton.SteadySolver;
import hotidle.part.Form;
import hotidle.part.OwnState;
import hotidle.part.Part;
import hotidle.part.Reading;
import hotidle.part.Stream;
import hotidle.result.Outcome;
import hotidle.result.Solution;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** One part on a bench: its ports held at pressures, its own states solved or held as well. */
public final class SinglePart {

    private SinglePart() {}

    /**
     * The state of one part.
     *
     * @param network    the part and what it reads, nearly all nodes held
     * @param conditions what is given
     * @param part       name of the part
     * @param states     states that are held, by name; all others are solved
     */
    public static Outcome run(Network network, Conditions conditions, String part, Map<String, Double> states) {
        Placed placed = network.part(part).orElseThrow();
        Map<String, Double> pressures = new LinkedHashMap<>();
        network.nodes().forEach(node -> node.held().ifPresent(pressure -> pressures.put(node.name(), pressure)));
        List<OptionalDouble> known = known(placed, pressures, states);
        return known.stream().allMatch(OptionalDouble::isPresent)
                ? Outcome.of(read(placed, conditions, pressures, known))
                : new SteadySolver(network).solve(conditions);
    }

    /** Ports, states and signals in the order of a reading; empty where one has to be solved. */
    private static List<OptionalDouble> known(
            Placed placed, Map<String, Double> pressures, Map<String, Double> states) {
        List<OptionalDouble> known = new ArrayList<>();
        placed.nodes().forEach(node -> known.add(given(pressures, node)));
        placed.part().form().states().stream()
                .map(Form.Unknown::name)
                .forEach(state -> known.add(given(states, state)));
        for (Signal signal : placed.signals()) {
            known.add(signal.state().isEmpty() ? given(pressures, signal.owner()) : given(states, signal.state()));
        }
        return known;
    }

    private static OptionalDouble given(Map<String, Double> numbers, String name) {
        return numbers.containsKey(name) ? OptionalDouble.of(numbers.get(name)) : OptionalDouble.empty();
    }

    private static Solution read(
            Placed placed, Conditions conditions, Map<String, Double> pressures, List<OptionalDouble> known) {
        Form form = placed.part().form();
        double[] values =
                known.stream().mapToDouble(OptionalDouble::getAsDouble).toArray();
        Reading reading = Reading.of(form, values);
        Part.Law law = placed.part().law(conditions.setting(placed));
        List<Solution.PartStream> streams = new ArrayList<>();
        for (Stream stream : law.streams(reading)) {
            streams.add(new Solution.PartStream(
                    placed.name(),
                    stream.name(),
                    placed.nodes().get(stream.from()),
                    placed.nodes().get(stream.to()),
                    stream.mass(),
                    stream.volume()));
        }
        Map<OwnState, Double> own = new LinkedHashMap<>();
        for (int i = 0; i < form.states().size(); i++) {
            own.put(form.states().get(i).state(), reading.state(i));
        }
        return new Solution(
                conditions,
                pressures,
                own.isEmpty() ? Map.of() : Map.of(placed.name(), own),
                streams,
                Map.of(placed.name(), Solution.measures(placed.part().measures(), law.measures(reading))),
                0,
                0,
                0,
                "all given");
    }
}
