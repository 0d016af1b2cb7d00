package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.network.Node;
import hotidle.part.PumpChamber;
import hotidle.transmission.Transmission;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Whoever has the printed numbers can recompute the balance. */
class SweepBalanceTest {

    private static final DescribedCircuit CIRCUIT = CircuitReader.read(
                    Library.text("shuttle-five").orElseThrow(), "shuttle-five.yaml")
            .circuit()
            .orElseThrow();

    @Test
    void printedSweepIsBalancedAtEveryNodeByFormulasWrittenASecondTime() throws Exception {
        Run run = Run.of(
                "sweep",
                "shuttle-five",
                "--build",
                "worn",
                "--build",
                "restored-raised",
                "--speed",
                "400..4000/50rpm",
                "--temperature",
                "95degC",
                "--format",
                "json");
        assertEquals(0, run.code(), run.err());
        JsonNode root = new ObjectMapper().readTree(run.out());
        int states = 0;
        for (JsonNode build : root.get("builds")) {
            Transmission unit = CIRCUIT.unit(build.get("build").textValue());
            for (JsonNode state : build.get("states")) {
                assertTrue(state.get("solved").booleanValue());
                assertBalanced(unit, state);
                states++;
            }
            assertEquals(0, build.get("rising_falling_differences").size());
        }
        assertEquals(2 * 73, states);
    }

    @Test
    void printedDutyPointsAreBalancedInEveryRangeAndLockupState() throws Exception {
        Run run =
                Run.of("compare", "shuttle-five", "--build", "worn", "--speed", "1000..1001/1rpm", "--format", "json");
        assertEquals(0, run.code(), run.err());
        JsonNode build = new ObjectMapper().readTree(run.out()).get("builds").get(0);
        for (JsonNode state : build.get("states")) {
            assertBalanced(CIRCUIT.unit("worn"), state);
        }
        assertEquals(CIRCUIT.unit("worn").duties().size(), build.get("states").size());
    }

    private static void assertBalanced(Transmission unit, JsonNode state) {
        double swept = unit.network().parts().stream()
                        .filter(placed -> placed.part() instanceof PumpChamber)
                        .mapToDouble(placed -> ((PumpChamber) placed.part()).displacement())
                        .sum()
                * state.get("engine_speed_rpm").doubleValue()
                / 60;
        double scale = 780 * Math.max(swept, 1e-6);
        Map<String, Double> balance = SecondOpinion.balance(unit, state);
        for (Node node : unit.network().nodes()) {
            if (node.held().isEmpty()) {
                double left = balance.get(node.name());
                assertTrue(
                        Math.abs(left) < 1e-9 * scale,
                        () -> node.name() + " keeps " + left + " kg/s at " + state.get("engine_speed_rpm") + " rpm");
            }
        }
    }
}
