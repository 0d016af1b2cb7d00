package hotidle.result;

import hotidle.network.Conditions;
import java.util.List;
import java.util.Map;

/**
 * A steady state: every node balanced, every own state at rest.
 *
 * @param conditions  under which it was solved
 * @param pressures   gauge pressure of each node [Pa], held nodes among them
 * @param states      own states of each part: part to state to value
 * @param streams     oil through each part
 * @param measures    what else each part reports: part to measure to value
 * @param imbalance   largest imbalance of any node [m³/s]
 * @param forceError  largest imbalance of any own state, as a share of its scale [-]
 * @param steps       evaluations with factorisation that it took
 * @param method      which method found it
 */
public record Solution(
        Conditions conditions,
        Map<String, Double> pressures,
        Map<String, Map<String, Double>> states,
        List<PartStream> streams,
        Map<String, Map<String, Double>> measures,
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
    }

    /** Gauge pressure of a node [Pa]. */
    public double pressure(String node) {
        return pressures.get(node);
    }

    /** A state of a part. */
    public double own(String part, String state) {
        return states.get(part).get(state);
    }

    /** A measure of a part; NaN where the part does not report it in this state. */
    public double measure(String part, String name) {
        return measures.getOrDefault(part, Map.of()).getOrDefault(name, Double.NaN);
    }

    /** Volume flow of a part's path [m³/s], 0 where the path is not there in this state. */
    public double flow(String key) {
        return streams.stream()
                .filter(stream -> stream.key().equals(key))
                .mapToDouble(PartStream::volume)
                .sum();
    }
}
