package hotidle.circuits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.text.Problem;
import hotidle.circuits.text.ProblemCode;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A build may have another engine in front of it: its torque, by which line pressure is commanded and clutches are loaded. */
class StrongerEngineTest {

    private static final String TEXT = Library.text("shuttle-five").orElseThrow();

    private static ReadCircuit read(String duty) {
        return CircuitReader.read(
                TEXT.stripTrailing()
                        + "\n  tuned:\n    about: worn, behind a tuned engine\n    on: worn\n    duty:\n      " + duty
                        + "\n    because: the engine was tuned\n",
                "shuttle-five.yaml");
    }

    private static DutyPoint stall(Transmission unit) {
        return unit.duty("stall").orElseThrow();
    }

    @Test
    void aTunedEngineAsksForMoreLineAndLoadsTheClutchesMore() {
        DescribedCircuit circuit =
                read("stall: {engine-torque: 520 N.m}").circuit().orElseThrow();
        Transmission tuned = circuit.unit("tuned");
        assertEquals(520, stall(tuned).engineTorque());
        assertEquals(520 * stall(tuned).torqueRatio(), stall(tuned).turbineTorque(), 1e-9);
        assertEquals(circuit.unit("worn").duty("hot-idle"), tuned.duty("hot-idle"), "only that condition");
        assertEquals(stall(circuit.unit("worn")).temperatures(), stall(tuned).temperatures());
        assertEquals(
                List.of(new DescribedCircuit.ChangeLine("duty.stall", "other engine torque", "the engine was tuned")),
                circuit.builds().stream()
                        .filter(build -> build.name().equals("tuned"))
                        .findFirst()
                        .orElseThrow()
                        .changes());
    }

    @Test
    void torqueBeyondTheTableOfTheCommandIsWarnedOf() {
        List<Problem> problems = read("stall: {engine-torque: 5000 N.m}").problems();
        assertTrue(
                problems.stream()
                        .anyMatch(problem -> problem.code() == ProblemCode.TORQUE_BEYOND_COMMAND_TABLE
                                && problem.text().contains("tuned has 5000 N.m at stall")),
                problems.toString());
    }
}
