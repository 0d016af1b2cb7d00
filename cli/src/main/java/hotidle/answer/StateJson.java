package hotidle.answer;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.DoubtPhrase;
import hotidle.assess.Doubt;
import hotidle.assess.Figures;
import hotidle.network.Conditions;
import hotidle.oil.Oil;
import hotidle.result.Outcome;
import hotidle.result.Solution;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

/** States as JSON: SI but rpm and °C, every digit, the unit at the end of each key. */
public final class StateJson {

    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    private static final ObjectMapper MAPPER = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    private StateJson() {}

    public static ObjectNode object() {
        return JSON.objectNode();
    }

    public static String text(ObjectNode node) {
        try {
            return MAPPER.writeValueAsString(node) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a state could not be written as JSON", e);
        }
    }

    /** Revolutions a minute, or null where there is no such speed. */
    public static void putSpeed(ObjectNode node, String key, OptionalDouble speed) {
        if (speed.isPresent()) {
            node.put(key, speed.getAsDouble() * 60);
        } else {
            node.putNull(key);
        }
    }

    /** One state, solved or not. */
    public static ObjectNode state(Transmission unit, DutyPoint duty, Outcome outcome) {
        Conditions conditions = outcome.conditions();
        ObjectNode node = object();
        node.put("duty", duty.name());
        node.put("engine_speed_rpm", conditions.speed() * 60);
        node.put("range", conditions.range());
        node.put("lockup", conditions.lockup().name().toLowerCase(Locale.ROOT));
        ObjectNode temperatures = node.putObject("temperatures_c");
        sorted(conditions.temperatures())
                .forEach((region, kelvin) -> temperatures.put(region, kelvin - Oil.ZERO_CELSIUS));
        node.put("engine_torque_n_m", duty.engineTorque());
        ObjectNode commands = node.putObject("commanded_pilot_pa");
        sorted(conditions.commands()).forEach(commands::put);
        if (outcome.state().isPresent()) {
            solved(node, unit, outcome.state().get());
        } else {
            putFinite(node, "set_pressure_pa", commandedSet(unit, conditions));
            node.put("solved", false);
            ObjectNode why = node.putObject("unsolved");
            outcome.unsolved().ifPresent(unsolved -> {
                why.put("residual", unsolved.residual());
                why.put("culprit", unsolved.culprit());
                unsolved.tried().forEach(why.withArray("tried")::add);
            });
        }
        return node;
    }

    private static double commandedSet(Transmission unit, Conditions conditions) {
        return unit.commanded()
                .map(command ->
                        command.setPressure(unit.network(), conditions.range(), command.pilot(conditions.commands())))
                .orElse(Double.NaN);
    }

    private static void solved(ObjectNode node, Transmission unit, Solution state) {
        Figures figures = Figures.of(unit, state);
        putFinite(node, "set_pressure_pa", figures.set());
        putFinite(node, "set_pressure_at_actual_boost_pa", figures.setAtBoost());
        node.put("solved", true);
        node.put("largest_imbalance_m3_s", state.imbalance());
        node.put("largest_force_error", state.forceError());
        node.put("steps", state.steps());
        node.put("method", state.method());
        node.putNull("unsolved");
        ObjectNode pressures = node.putObject("pressures_pa");
        state.pressures().forEach(pressures::put);
        ObjectNode flows = node.putObject("flows_m3_s");
        ObjectNode masses = object();
        state.streams().forEach(stream -> {
            flows.put(stream.key(), stream.volume());
            masses.put(stream.key(), stream.mass());
        });
        node.set("flows_kg_s", masses);
        ObjectNode positions = node.putObject("positions_m");
        ObjectNode states = node.putObject("states");
        state.states()
                .forEach((part, own) -> own.forEach((name, value) -> {
                    if (name.equals("position")) {
                        positions.put(part, value);
                    } else {
                        states.put(part + "." + name, value);
                    }
                }));
        ObjectNode parts = node.putObject("parts");
        state.measures().forEach((part, measures) -> {
            ObjectNode one = parts.putObject(part);
            measures.forEach((name, value) -> {
                if (Double.isFinite(value)) {
                    one.put(name, value);
                } else {
                    one.putNull(name);
                }
            });
        });
        ObjectNode power = node.putObject("power_w");
        power.put("pump", figures.pumpPower());
        ObjectNode summary = node.putObject("figures");
        summary.put("secondary", figures.secondary().word());
        putFinite(summary, "override_pa", figures.line() - figures.set());
        putFinite(summary, "converter_charge_pa", figures.charge());
        putFinite(summary, "cooler_flow_m3_s", figures.cooler());
        summary.put("lube_flow_m3_s", figures.lube());
        summary.put("pump_slip_m3_s", figures.slip());
        summary.put("leak_m3_s", figures.leak());
        summary.put("recirculated_m3_s", figures.recirculated());
        summary.put("spilled_m3_s", figures.spilled());
        summary.put("swept_m3_s", figures.swept());
        summary.put("filling", figures.filling());
        ArrayNode warnings = node.putArray("warnings");
        Doubt.of(unit.network(), state).forEach(doubt -> warnings.add(DoubtPhrase.of(doubt, Quantity.UnitSystem.SI)));
    }

    public static void putFinite(ObjectNode node, String key, double value) {
        if (Double.isFinite(value)) {
            node.put(key, value);
        } else {
            node.putNull(key);
        }
    }

    private static Map<String, Double> sorted(Map<String, Double> map) {
        return new java.util.TreeMap<>(map);
    }
}
