package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** heat as a user meets it. */
class HeatCommandTest {

    private static JsonNode builds;

    @BeforeAll
    static void balance() throws Exception {
        Run run = Run.of(
                "heat",
                "shuttle-five",
                "--build",
                "worn",
                "--build",
                "worn-raised",
                "--build",
                "restored",
                "--build",
                "restored-raised",
                "--format",
                "json");
        builds = new ObjectMapper().readTree(run.out()).get("builds");
    }

    private static JsonNode duty(int build, String name) {
        for (JsonNode duty : builds.get(build).get("duties")) {
            if (duty.get("duty").textValue().equals(name)) {
                return duty;
            }
        }
        throw new AssertionError(name);
    }

    @Test
    void heatClosesInEveryBuildAtEveryDutyPointThatItSettles() {
        int closed = 0;
        for (JsonNode build : builds) {
            for (JsonNode duty : build.get("duties")) {
                if (!duty.get("imbalance").isNull()) {
                    assertEquals(
                            0,
                            duty.get("imbalance").doubleValue(),
                            1e-9,
                            duty.get("duty").textValue());
                    closed++;
                }
            }
        }
        assertTrue(closed >= 20, closed + " balances");
    }

    @Test
    void whatIsAtBalanceStoresNothing() {
        JsonNode climb = duty(0, "climb");
        double made = 0;
        for (JsonNode watts : climb.get("heat_w")) {
            made += Math.max(watts.doubleValue(), 0);
        }
        assertEquals(0, climb.get("stored_w").doubleValue(), 1e-9 * made);
    }

    @Test
    void raisedPressureHeatsTheWornUnitMoreThanTheRestoredOne() {
        double worn = duty(1, "climb").at("/against_the_first/sump_k").doubleValue();
        double restored = duty(3, "climb").at("/against_the_first/sump_k").doubleValue()
                - duty(2, "climb").at("/against_the_first/sump_k").doubleValue();
        assertTrue(worn > restored && restored > 0, worn + " K and " + restored + " K");
    }

    @Test
    void theHeatOfRaisedPressureTakesPressureAtHotIdle() {
        JsonNode cost = duty(1, "hot-idle").get("against_the_first");
        assertTrue(cost.get("sump_k").doubleValue() > 0, cost.toString());
        assertTrue(cost.get("line_pressure_pa").doubleValue() < 0, cost.toString());
    }

    /** The converter that gets a trickle at hot idle runs hot while the pan cools. */
    @Test
    void aStarvedConverterRunsHotWhileTheSumpStaysCool() {
        double worn = duty(0, "hot-idle").at("/state/temperatures_c/converter").doubleValue();
        double restored =
                duty(2, "hot-idle").at("/state/temperatures_c/converter").doubleValue();
        assertTrue(worn > restored + 10, worn + " and " + restored);
        assertTrue(worn > duty(0, "hot-idle").at("/state/temperatures_c/sump").doubleValue() + 20);
    }

    @Test
    void theFirstScreenIsAScreen() {
        Run run = Run.of("heat", "shuttle-five", "--build", "worn", "--build", "worn-raised");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().lines().count() <= 24, run.out());
        assertTrue(run.out().lines().allMatch(line -> line.length() <= 100), run.out());
    }

    @Test
    void aBenchSaysThatItHasNoHeat() {
        Run run = Run.of("heat", "training-rig");
        assertEquals(2, run.code());
        assertTrue(
                run.err().contains("no driving condition of training-rig has temperatures that follow from heat"),
                run.err());
    }
}
