package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Assessment;
import hotidle.assess.Margin;
import hotidle.network.Network;
import hotidle.network.Node;
import hotidle.newton.SteadySolver;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What ratings say of ten nodes with a brake, a clutch and a shaft. */
class RatedLimitsTest {

    private static final Transmission UNIT = TenNodesWithTrain.unit(1, 8, 500, TenNodesWithTrain.LEVEL);

    private static Assessment assessed(Transmission unit, DutyPoint duty) {
        return Assessment.of(
                unit,
                duty,
                new SteadySolver(unit.network())
                        .solve(unit.conditions(duty))
                        .state()
                        .orElseThrow());
    }

    private static Optional<Margin> limit(Transmission unit, DutyPoint duty, String part) {
        return new RatedLimits(assessed(unit, duty))
                .all().stream().filter(margin -> margin.part().equals(part)).findFirst();
    }

    private static DutyPoint duty(String name) {
        return UNIT.duty(name).orElseThrow();
    }

    /** At idle in first 40 N·m times 1.8 on the shaft and half of it on the one-way clutch; 320 N·m in second. */
    @Test
    void theShaftBearsTheTurbinesTorqueAndTheOneWayClutchItsShareInFirstAlone() {
        Margin idle = limit(UNIT, duty("hot-idle"), "input-shaft").orElseThrow();
        assertEquals(72, idle.value().orElseThrow(), 1e-9);
        assertEquals(500, idle.needed(), 1e-12);
        assertEquals(
                36,
                limit(UNIT, duty("hot-idle"), "one-way").orElseThrow().value().orElseThrow(),
                1e-9);
        assertEquals(
                320,
                limit(UNIT, duty("pull"), "input-shaft").orElseThrow().value().orElseThrow(),
                1e-9);
        assertTrue(limit(UNIT, duty("pull"), "one-way").isEmpty());
    }

    @Test
    void overrunLoadsTheShaftAsDriveDoesAndTooMuchOfItFails() {
        Margin overrun =
                limit(UNIT, duty("pull").withTorque(-501), "input-shaft").orElseThrow();
        assertEquals(501, overrun.value().orElseThrow(), 1e-9);
        assertEquals(Margin.Verdict.FAILS, overrun.verdict());
        assertEquals(
                Margin.Verdict.HOLDS,
                limit(UNIT, duty("pull"), "input-shaft").orElseThrow().verdict());
    }

    /** Power over angular speed. Two chambers of 20 cm³ a turn raise oil to the line's pressure or less, and drag comes on top. */
    @Test
    void thePumpsDriveBearsWhatThePumpTakes() {
        Assessment assessed = assessed(UNIT, duty("pull"));
        double torque =
                limit(UNIT, duty("pull"), "pump-drive").orElseThrow().value().orElseThrow();
        assertEquals(assessed.figures().pumpPower(), torque * 2 * Math.PI * TenNodesWithTrain.SPEED, 1e-9);
        double oneChamber = assessed.state().pressure("line") * 20e-6 / (2 * Math.PI);
        assertTrue(torque > oneChamber, torque + " N·m and " + oneChamber + " for one chamber alone");
    }

    @Test
    void withoutAGearTrainNothingOfItIsJudged() {
        Transmission bare = TenNodesWithTrain.withGears(UNIT, Optional.empty());
        assertEquals(List.of(), new RatedLimits(assessed(bare, duty("pull"))).all());
    }

    @Test
    void aPlaceThatIsRatedIsJudgedByItsOwnPressure() {
        List<Node> nodes = UNIT.network().nodes().stream()
                .map(node -> node.name().equals("line") ? new Node("line", node.held(), OptionalDouble.of(1e6)) : node)
                .toList();
        Transmission rated = UNIT.with(new Network(nodes, UNIT.network().parts()), UNIT.command());
        Margin line = limit(rated, duty("pull"), "line").orElseThrow();
        assertEquals(Margin.Kind.RATED_PRESSURE, line.kind());
        assertEquals(
                assessed(rated, duty("pull")).state().pressure("line"),
                line.value().orElseThrow(),
                1e-6);
        assertEquals(Margin.Verdict.FAILS, line.verdict(), "150 psi and more is over 10 bar");
    }
}
