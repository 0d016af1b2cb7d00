package hotidle.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hotidle.answer.StateJson;
import hotidle.result.Solution;
import java.util.List;
import java.util.Optional;

/** A part's answer as JSON: SI, every digit, the unit at the end of each key. */
final class PartJson {

    private PartJson() {}

    static ObjectNode of(PartAnswer answer) {
        ObjectNode node = StateJson.object();
        node.put("part", answer.part().kind().word());
        node.put("solved", answer.outcome().state().isPresent());
        answer.outcome().state().ifPresent(state -> solved(node, answer, state));
        answer.outcome().unsolved().ifPresent(unsolved -> {
            ObjectNode why = node.putObject("unsolved");
            why.put("residual", unsolved.residual());
            why.put("culprit", unsolved.culprit());
            unsolved.tried().forEach(why.withArray("tried")::add);
        });
        ObjectNode oil = node.putObject("oil");
        oil.put("name", answer.duty().oil().name());
        oil.put("temperature_c", PartText.celsius(answer.duty().temperature()));
        oil.put("viscosity_pa_s", answer.duty().oilAt().viscosity());
        oil.put("density_kg_m3", answer.duty().oilAt().liquidDensity());
        oil.put("by_default", !answer.duty().oilSaid().isEmpty());
        node.put("law", answer.part().kind().physics().law());
        node.put("source", answer.part().kind().physics().source());
        ArrayNode defaults = node.putArray("defaults");
        answer.part()
                .defaults()
                .forEach((key, fallback) -> defaults.addObject()
                        .put("key", key)
                        .put("value", fallback.text())
                        .put("source", fallback.source()));
        ArrayNode warnings = node.putArray("warnings");
        answer.warnings().forEach(warnings::add);
        return node;
    }

    private static void solved(ObjectNode node, PartAnswer answer, Solution state) {
        StateJson.putFinite(node, "flow_m3_s", answer.flow());
        List<PartAnswer.Path> paths = answer.paths();
        Optional<PartAnswer.Path> swiftest = answer.swiftest();
        StateJson.putFinite(
                node, "reynolds", swiftest.map(PartAnswer.Path::reynolds).orElse(Double.NaN));
        node.put("regime", swiftest.map(PartAnswer.Path::regime).orElse(null));
        if (paths.size() > 1) {
            ObjectNode flows = node.putObject("flows_m3_s");
            ObjectNode numbers = node.putObject("reynolds_by_path");
            ObjectNode regimes = node.putObject("regime_by_path");
            for (PartAnswer.Path path : paths) {
                flows.put(path.name(), path.flow());
                StateJson.putFinite(numbers, path.name(), path.reynolds());
                regimes.put(path.name(), path.regime().isEmpty() ? null : path.regime());
            }
        }
        ObjectNode pressures = node.putObject("pressures_pa");
        state.pressures().forEach(pressures::put);
        answer.numbers().forEach((name, value) -> StateJson.putFinite(node, name, value));
    }
}
