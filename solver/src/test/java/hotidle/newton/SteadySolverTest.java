package hotidle.newton;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.duty.SetPressure;
import hotidle.duty.Unit;
import hotidle.network.Conditions;
import hotidle.network.Network;
import hotidle.network.Placed;
import hotidle.network.RandomCircuit;
import hotidle.part.Filter;
import hotidle.part.SpoolValve;
import hotidle.result.Outcome;
import hotidle.result.State;
import hotidle.result.Unsolved;
import hotidle.study.Figures;
import hotidle.study.TenNodes;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** Sick and healthy states of a small unit. */
class SteadySolverTest {

    private static State solve(Unit unit, double rpm) {
        Conditions conditions = unit.conditions(unit.duties().get(0)).atSpeed(rpm / 60);
        return new SteadySolver(unit.network()).solve(conditions).state().orElseThrow();
    }

    private static Unit with(Unit unit, Placed changed) {
        return unit.with(unit.network().with(changed), unit.command());
    }

    private static Unit blockedFilter(double share) {
        Unit unit = TenNodes.worn(1);
        Placed placed = unit.network().part("filter").orElseThrow();
        Filter clean = (Filter) placed.part();
        return with(unit, placed.with(new Filter(clean.rated(), share, clean.rise())));
    }

    @Test
    void hotIdlePressureFallsAsTheBoreWears() {
        double before = Double.POSITIVE_INFINITY;
        for (double wear = 2.5; wear <= 5; wear += 0.5) {
            double line = solve(TenNodes.worn(wear), 650).pressure("line");
            assertTrue(line < before, "wear " + wear);
            before = line;
        }
    }

    @Test
    void aBlockedFilterStarvesThePumpAtTheReleasePressureOfAir() {
        State state = solve(blockedFilter(0.98), 3000);
        double filling = state.own("pump-inlet", "filling");
        assertTrue(filling > 0 && filling < 1, "filling " + filling);
        assertEquals(7e4 - 101_325, state.pressure("suction"), 1e-3);
        assertTrue(state.pressure("line") < solve(blockedFilter(0), 3000).pressure("line"));
    }

    @Test
    void aCleanFilterFillsThePump() {
        assertEquals(1, solve(blockedFilter(0), 3000).own("pump-inlet", "filling"));
    }

    @Test
    void theReliefValveIsTheCeilingWhereTheRegulatorSticksShut() {
        Unit unit = TenNodes.worn(1);
        Placed placed = unit.network().part("regulator").orElseThrow();
        SpoolValve free = (SpoolValve) placed.part();
        SpoolValve stuck =
                new SpoolValve(free.ports(), free.openings(), free.areas(), free.spring(), OptionalDouble.of(0));
        State state = solve(with(unit, placed.with(stuck)), 3000);
        assertEquals(0, state.own("regulator", "position"));
        assertTrue(state.pressure("line") > 2.4e6 && state.pressure("line") < 3.5e6, "" + state.pressure("line"));
        assertTrue(state.flow("relief") > 0);
    }

    @Test
    void theSpoolSitsOnItsSeatWhereThePumpCannotHoldTheSetPressure() {
        Unit unit = SetPressure.of(TenNodes.worn(3), 270 * 6894.757293168);
        State state = solve(unit, 650);
        assertEquals(0, state.own("regulator", "position"));
        assertFalse(Figures.of(unit, state).regulated());
    }

    @Test
    void aStandingEngineIsAStateWithoutPressure() {
        State state = solve(TenNodes.worn(1), 0);
        assertEquals(0, state.pressure("line"), 600);
    }

    @Test
    void everyStateIsFarBelowItsTolerance() {
        for (double rpm : new double[] {200, 650, 1400, 3000, 6000}) {
            State state = solve(TenNodes.worn(2), rpm);
            assertTrue(state.imbalance() < 1e-9 * 40e-6 * rpm / 60 && state.forceError() < 1e-9);
        }
    }

    /** The states do not depend on where the search starts: warm from above, warm from below, cold. */
    @Test
    void aStateDoesNotDependOnWhereTheSearchStarts() {
        Unit unit = TenNodes.worn(2);
        SteadySolver solver = new SteadySolver(unit.network());
        Conditions conditions = unit.conditions(unit.duties().get(0));
        State cold = solver.solve(conditions).state().orElseThrow();
        for (double rpm : new double[] {300, 2000, 5000}) {
            Optional<State> far = solver.solve(conditions.atSpeed(rpm / 60)).state();
            State warm = solver.solve(conditions, far).state().orElseThrow();
            assertEquals(cold.pressure("line"), warm.pressure("line"), 1e-6 * cold.pressure("line"));
        }
    }

    @Test
    void aPartThatReadsWhatIsNotThereIsAFaultOfTheCaller() {
        Network network = TenNodes.worn(1).network();
        Network without = new Network(
                network.nodes(),
                network.parts().stream()
                        .filter(placed -> !placed.name().equals("pump-inlet"))
                        .toList());
        org.junit.jupiter.api.Assertions.assertThrows(IllegalArgumentException.class, () -> new SteadySolver(without));
    }

    /**
     * Known failure: about one random circuit in two thousand does not settle today. The first of them says which node or part, how far
     * off, and what was tried. Where none is found any more, this test has done its work.
     */
    @Test
    void aCircuitThatDoesNotSettleNamesItsCulprit() {
        Outcome outcome = LongStream.range(0, 20_000)
                .map(i -> 1_000_003 * i + 17)
                .mapToObj(RandomCircuit::any)
                .map(circuit -> new SteadySolver(circuit.network()).solve(circuit.conditions()))
                .filter(one -> one.state().isEmpty())
                .findFirst()
                .orElseThrow();
        Unsolved unsolved = outcome.unsolved().orElseThrow();
        assertTrue(unsolved.residual() > 1e-9);
        assertTrue(unsolved.culprit().matches("(node|part) .+"), unsolved.culprit());
        assertEquals(6, unsolved.tried().size());
    }
}
