package hotidle.result;

import hotidle.network.Conditions;
import hotidle.part.Measure;
import hotidle.part.OwnState;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A steady state: every node balanced, every own state at rest.
 *
 * @param conditions  under which it was solved
 * @param pressures   gauge pressure of each node [Pa], held nodes among them
 * @param states      own states of each part: part to state to value
 * @param streams     oil through each part
 * @param measures    what else each part gives: part to each measure of its kind, in their order, to its value, empty where this
 *                    state has none
 * @param imbalance   largest imbalance of any node [m³/s]
 * @param forceError  largest imbalance of any own state, as a share of its scale [-]
 * @param steps       evaluations with factorisation that it took
 * @param method      which method found it
 */
public record Solution(
        Conditions conditions,
        Map<String, Double> pressures,
        Map<String, Map<OwnState, Double>> states,
        List<PartStream> streams,
        Map<String, Map<Measure, OptionalDouble>> measures,
        double imbalance,
        double forceError,
        int steps,
        String method) {

    public Solution {
        pressures = java.util.Collections.unmodifiableMap(pressures);
        states = java.util.Collections.unmodifiableMap(states);
        streams = List.copyOf(streams);
        measures = java.util.Collections.unmodifiableMap(measures);
    }

    /**
     * Oil through a part.
     *
     * @param part   name of the part
     * @param name   path through it, empty where it has one only
     * @param from   node that it leaves when positive
     * @param to     node that it goes to when positive
     * @param mass   [kg/s]
     * @param volume at the part's temperature and the mean of both pressures [m³/s]
     */
    public record PartStream(String part, String name, String from, String to, double mass, double volume) {

        /** Name of part and path. */
        public String key() {
            return name.isEmpty() ? part : part + "." + name;
        }

        /** Whether that is its name, without making it. */
        private boolean has(String key) {
            return name.isEmpty()
                    ? part.equals(key)
                    : key.length() == part.length() + 1 + name.length()
                            && key.startsWith(part)
                            && key.charAt(part.length()) == '.'
                            && key.endsWith(name);
        }
    }

    /** Gauge pressure of a node [Pa]. */
    public double pressure(String node) {
        return pressures.get(node);
    }

    /**
     * A state of a part.
     *
     * @throws IllegalArgumentException where there is no such part, or its kind has no such state
     */
    public double own(String part, OwnState state) {
        Double value = states.getOrDefault(part, Map.of()).get(state);
        if (value == null) {
            throw new IllegalArgumentException("part '" + part + "' has no " + state);
        }
        return value;
    }

    /**
     * A measure of a part [SI]; empty where the part does not give it in this state.
     *
     * @throws IllegalArgumentException where there is no such part, or its kind has no such measure
     */
    public OptionalDouble measure(String part, Measure measure) {
        OptionalDouble value = measures.getOrDefault(part, Map.of()).get(measure);
        if (value == null) {
            throw new IllegalArgumentException("part '" + part + "' gives no " + measure.key());
        }
        return value;
    }

    /** What a part of a kind gives in one state: each of its measures, empty where it is not among those reported. */
    public static Map<Measure, OptionalDouble> measures(List<Measure> all, List<Measure.Reported> reported) {
        Map<Measure, OptionalDouble> measures = new LinkedHashMap<>(2 * all.size());
        int next = 0;
        for (Measure measure : all) {
            boolean there =
                    next < reported.size() && reported.get(next).measure().equals(measure);
            measures.put(measure, there ? OptionalDouble.of(reported.get(next).value()) : OptionalDouble.empty());
            next += there ? 1 : 0;
        }
        // those that are not reported in their order
        reported.subList(next, reported.size())
                .forEach(one -> measures.put(one.measure(), OptionalDouble.of(one.value())));
        return measures;
    }

    /** Volume flow of a part's path [m³/s], 0 where the path is not there in this state. */
    public double flow(String key) {
        return streams.stream()
                .filter(stream -> stream.has(key))
                .mapToDouble(PartStream::volume)
                .sum();
    }
}
