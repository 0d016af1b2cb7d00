package hotidle.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import hotidle.answer.format.Json;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.Library;
import hotidle.newton.SteadySolver;
import hotidle.result.Outcome;
import hotidle.result.Unsolved;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class StateRecordTest {

    private static final Transmission UNIT = CircuitReader.read(
                    Library.text("shuttle-five").orElseThrow(), "shuttle-five.yaml")
            .circuit()
            .orElseThrow()
            .unit();
    private static final DutyPoint DUTY = UNIT.duties().get(0);
    private static final Outcome SOLVED = new SteadySolver(UNIT.network()).solve(UNIT.conditions(DUTY));
    private static final Outcome UNSOLVED =
            Outcome.of(UNIT.conditions(DUTY), new Unsolved(0.3, "node line", List.of("Newton from rest")));

    private static JsonNode json(Outcome outcome) {
        return Json.tree(StateRecord.of(UNIT, DUTY, outcome));
    }

    @Test
    void anUnsolvedStateIsAReasonAndNeverANumber() {
        JsonNode state = json(UNSOLVED);
        assertFalse(state.get("solved").booleanValue());
        assertEquals("node line", state.at("/unsolved/culprit").textValue());
        assertEquals(0.3, state.at("/unsolved/residual").doubleValue());
        assertEquals("Newton from rest", state.at("/unsolved/tried/0").textValue());
        for (String known : List.of("pressures_pa", "flows_m3_s", "figures", "parts", "power_w")) {
            assertNull(state.get(known), known);
        }
    }

    @Test
    void whatWasCommandedIsKnownOfAnUnsolvedStateToo() {
        double commanded = json(UNSOLVED).get("set_pressure_pa").doubleValue();
        assertEquals(json(SOLVED).get("set_pressure_pa").doubleValue(), commanded, 1);
        assertTrue(commanded > 1e5, commanded + " Pa");
    }

    @Test
    void whatAStateWasAskedForStandsBeforeWhatWasFound() {
        List<String> keys = new ArrayList<>();
        json(SOLVED).fieldNames().forEachRemaining(keys::add);
        assertEquals(
                List.of(
                        "duty",
                        "engine_speed_rpm",
                        "range",
                        "lockup",
                        "temperatures_c",
                        "engine_torque_n_m",
                        "commanded_pilot_pa",
                        "set_pressure_pa",
                        "set_pressure_at_actual_boost_pa",
                        "solved",
                        "largest_imbalance_m3_s",
                        "largest_force_error",
                        "steps",
                        "method",
                        "unsolved",
                        "pressures_pa",
                        "flows_m3_s",
                        "flows_kg_s",
                        "positions_m",
                        "states",
                        "parts",
                        "power_w",
                        "figures",
                        "warnings"),
                keys);
    }

    @Test
    void speedsAreRevolutionsAMinuteAndTemperaturesDegreesCelsius() {
        JsonNode state = json(SOLVED);
        assertEquals(DUTY.speed() * 60, state.get("engine_speed_rpm").doubleValue(), 1e-9);
        assertEquals(
                DUTY.temperatures().get("sump") - 273.15,
                state.at("/temperatures_c/sump").doubleValue(),
                1e-9);
    }

    @Test
    void theOilOfEachStreamIsGivenAsVolumeAndAsMass() {
        JsonNode state = json(SOLVED);
        SOLVED.state().orElseThrow().streams().forEach(stream -> {
            double volume = state.get("flows_m3_s").get(stream.key()).doubleValue();
            double mass = state.get("flows_kg_s").get(stream.key()).doubleValue();
            assertTrue(
                    volume == 0 || (mass / volume > 600 && mass / volume < 1000), stream.key() + " " + mass / volume);
        });
    }
}
