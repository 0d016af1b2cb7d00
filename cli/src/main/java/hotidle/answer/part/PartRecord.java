package hotidle.answer.part;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import hotidle.answer.phrase.RegimePhrase;
import hotidle.assess.PartFlow;
import hotidle.circuits.kind.LawText;
import hotidle.oil.Oil;
import hotidle.result.Solution;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * What a part does as JSON; a part without a state has neither flow nor numbers.
 *
 * @param defaults values left to the program
 */
record PartRecord(
        String part,
        boolean solved,

        @JsonInclude(JsonInclude.Include.NON_NULL) @JsonUnwrapped
        SolvedPart state,

        @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<NotFound> unsolved,
        OilUsed oil,
        String law,
        String source,
        List<DefaultTaken> defaults,
        List<String> warnings) {

    /** Why there is no state. */
    record NotFound(double residual, String culprit, List<String> tried) {}

    /** The oil at its temperature. */
    record OilUsed(
            String name,
            double temperatureC,
            @JsonProperty("viscosity_pa_s") double viscosity,
            @JsonProperty("density_kg_m3") double density,
            boolean byDefault) {}

    /** A value that was left to the program. */
    record DefaultTaken(String key, String value, String source) {}

    /**
     * The state.
     *
     * @param flow    net, into the first port
     * @param flows   by path, where there are several; Reynolds numbers and regimes too
     * @param numbers all others, by name
     */
    @JsonPropertyOrder({
        "flow_m3_s",
        "reynolds",
        "regime",
        "flows_m3_s",
        "reynolds_by_path",
        "regime_by_path",
        "pressures_pa"
    })
    record SolvedPart(
            @JsonProperty("flow_m3_s") OptionalDouble flow,
            OptionalDouble reynolds,
            Optional<String> regime,

            @JsonInclude(JsonInclude.Include.NON_ABSENT) @JsonProperty("flows_m3_s")
            Optional<Map<String, Double>> flows,

            @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<Map<String, OptionalDouble>> reynoldsByPath,
            @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<Map<String, Optional<String>>> regimeByPath,
            Map<String, Double> pressuresPa,
            @JsonAnyGetter Map<String, Double> numbers) {

        static SolvedPart of(PartState part, PartFlow flow, Solution state) {
            Optional<PartFlow.PathFlow> swiftest = flow.swiftest();
            return new SolvedPart(
                    flow.net(),
                    swiftest.map(PartFlow.PathFlow::reynolds).orElse(OptionalDouble.empty()),
                    swiftest.flatMap(PartFlow.PathFlow::regime).map(RegimePhrase::of),
                    byPath(flow, PartFlow.PathFlow::flow),
                    byPath(flow, PartFlow.PathFlow::reynolds),
                    byPath(flow, path -> path.regime().map(RegimePhrase::of)),
                    state.pressures(),
                    part.numbers());
        }

        private static <T> Optional<Map<String, T>> byPath(PartFlow flow, Function<PartFlow.PathFlow, T> what) {
            Map<String, T> all = new LinkedHashMap<>();
            flow.paths().forEach(path -> all.put(path.name(), what.apply(path)));
            return flow.paths().size() > 1 ? Optional.of(all) : Optional.empty();
        }
    }

    static PartRecord of(PartState part) {
        PartConditions asked = part.asked();
        LawText physics = part.part().kind().physics();
        return new PartRecord(
                part.part().kind().word(),
                part.outcome().state().isPresent(),
                part.outcome()
                        .state()
                        .map(state -> SolvedPart.of(part, part.flow().orElseThrow(), state))
                        .orElse(null),
                part.outcome().unsolved().map(why -> new NotFound(why.residual(), why.culprit(), why.tried())),
                new OilUsed(
                        asked.oil().name(),
                        asked.temperature() - Oil.ZERO_CELSIUS,
                        asked.oilAt().viscosity(),
                        asked.oilAt().liquidDensity(),
                        asked.oilByDefault() || asked.temperatureByDefault()),
                physics.law(),
                physics.source(),
                part.part().defaults().entrySet().stream()
                        .map(one -> new DefaultTaken(
                                one.getKey(),
                                one.getValue().text(),
                                one.getValue().source()))
                        .toList(),
                part.warnings());
    }
}
