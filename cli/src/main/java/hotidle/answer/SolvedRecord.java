package hotidle.answer;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.DoubtPhrase;
import hotidle.assess.Assessment;
import hotidle.assess.Figures;
import hotidle.part.OwnState;
import hotidle.result.Solution;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A state that was found, as JSON.
 *
 * @param largestForceError as a share of the largest force on that piece
 * @param method            the way of solving that found it
 * @param unsolved          always empty, so that the key is there in every state
 * @param positionsM        of spools, slides and other moving pieces
 * @param states            all other inner states, by part and name
 * @param parts             what the laws of each part say besides, by part and key
 * @param powerW            taken from the engine, by what takes it
 * @param warnings          what lies outside the range of the laws
 */
record SolvedRecord(
        @JsonUnwrapped ConditionsRecord conditions,
        OptionalDouble setPressurePa,
        OptionalDouble setPressureAtActualBoostPa,
        boolean solved,
        @JsonProperty("largest_imbalance_m3_s") double largestImbalance,
        double largestForceError,
        int steps,
        String method,
        Optional<UnsolvedRecord.Reason> unsolved,
        Map<String, Double> pressuresPa,
        @JsonProperty("flows_m3_s") Map<String, Double> volumeFlows,
        @JsonProperty("flows_kg_s") Map<String, Double> massFlows,
        Map<String, Double> positionsM,
        Map<String, Double> states,
        Map<String, Map<String, Double>> parts,
        Map<String, Double> powerW,
        FiguresRecord figures,
        List<String> warnings)
        implements StateRecord {

    static SolvedRecord of(ConditionsRecord conditions, Assessment assessed) {
        Solution state = assessed.state();
        Figures figures = assessed.figures();
        Map<String, Double> volumes = new LinkedHashMap<>();
        Map<String, Double> masses = new LinkedHashMap<>();
        state.streams().forEach(stream -> {
            volumes.put(stream.key(), stream.volume());
            masses.put(stream.key(), stream.mass());
        });
        return new SolvedRecord(
                conditions,
                figures.set(),
                figures.setAtBoost(),
                true,
                state.imbalance(),
                state.forceError(),
                state.steps(),
                state.method(),
                Optional.empty(),
                state.pressures(),
                volumes,
                masses,
                positions(state),
                otherStates(state),
                parts(state),
                Map.of("pump", figures.pumpPower()),
                FiguresRecord.of(figures),
                assessed.doubts().stream()
                        .map(doubt -> DoubtPhrase.of(doubt, Quantity.UnitSystem.SI))
                        .toList());
    }

    /** What each part gives in this state, under the keys of its measures. */
    private static Map<String, Map<String, Double>> parts(Solution state) {
        Map<String, Map<String, Double>> parts = new LinkedHashMap<>();
        state.measures().forEach((part, measures) -> {
            Map<String, Double> given = new LinkedHashMap<>();
            measures.forEach((measure, value) -> value.ifPresent(known -> given.put(measure.key(), known)));
            if (!given.isEmpty()) {
                parts.put(part, given);
            }
        });
        return parts;
    }

    private static Map<String, Double> positions(Solution state) {
        Map<String, Double> positions = new LinkedHashMap<>();
        state.states()
                .forEach((part, own) -> own.entrySet().stream()
                        .filter(one -> one.getKey().equals(OwnState.POSITION))
                        .forEach(one -> positions.put(part, one.getValue())));
        return positions;
    }

    private static Map<String, Double> otherStates(Solution state) {
        Map<String, Double> others = new LinkedHashMap<>();
        state.states()
                .forEach((part, own) -> own.entrySet().stream()
                        .filter(one -> !one.getKey().equals(OwnState.POSITION))
                        .forEach(one -> others.put(part + "." + one.getKey().name(), one.getValue())));
        return others;
    }
}
