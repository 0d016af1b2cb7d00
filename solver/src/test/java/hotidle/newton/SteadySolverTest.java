package hotidle.newton;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Figures;
import hotidle.network.Conditions;
import hotidle.network.Group;
import hotidle.network.Network;
import hotidle.network.Node;
import hotidle.network.Placed;
import hotidle.network.RandomCircuit;
import hotidle.part.Filter;
import hotidle.part.Orifice;
import hotidle.part.OwnState;
import hotidle.part.Part;
import hotidle.part.PumpInlet;
import hotidle.part.Reading;
import hotidle.part.SpoolValve;
import hotidle.part.Stamp;
import hotidle.part.Stream;
import hotidle.result.Outcome;
import hotidle.result.Solution;
import hotidle.result.Unsolved;
import hotidle.study.TenNodes;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sick and healthy states of a small unit. */
class SteadySolverTest {

    private static Solution solve(Transmission unit, double rpm) {
        Conditions conditions = unit.conditions(unit.duties().get(0)).atSpeed(rpm / 60);
        return new SteadySolver(unit.network()).solve(conditions).state().orElseThrow();
    }

    private static Transmission with(Transmission unit, Placed changed) {
        return unit.with(unit.network().with(changed), unit.command());
    }

    private static Transmission blockedFilter(double share) {
        Transmission unit = TenNodes.worn(1);
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
        Solution state = solve(blockedFilter(0.98), 3000);
        double filling = state.own("pump-inlet", PumpInlet.FILLING);
        assertTrue(filling > 0 && filling < 1, "filling " + filling);
        assertEquals(7e4 - 101_325, state.pressure("suction"), 1e-3);
        assertTrue(state.pressure("line") < solve(blockedFilter(0), 3000).pressure("line"));
    }

    @Test
    void aCleanFilterFillsThePump() {
        assertEquals(1, solve(blockedFilter(0), 3000).own("pump-inlet", PumpInlet.FILLING));
    }

    @Test
    void theReliefValveIsTheCeilingWhereTheRegulatorSticksShut() {
        Transmission unit = TenNodes.worn(1);
        Placed placed = unit.network().part("regulator").orElseThrow();
        SpoolValve free = (SpoolValve) placed.part();
        SpoolValve stuck =
                new SpoolValve(free.ports(), free.openings(), free.areas(), free.spring(), OptionalDouble.of(0));
        Solution state = solve(with(unit, placed.with(stuck)), 3000);
        assertEquals(0, state.own("regulator", OwnState.POSITION));
        assertTrue(state.pressure("line") > 2.4e6 && state.pressure("line") < 3.5e6, "" + state.pressure("line"));
        assertTrue(state.flow("relief") > 0);
    }

    @Test
    void theSpoolSitsOnItsSeatWhereThePumpCannotHoldTheSetPressure() {
        Transmission unit = SetPressure.of(TenNodes.worn(3), 270 * 6894.757293168);
        Solution state = solve(unit, 650);
        assertEquals(0, state.own("regulator", OwnState.POSITION));
        assertFalse(Figures.of(unit, state).regulated());
    }

    @Test
    void aStandingEngineIsAStateWithoutPressure() {
        Solution state = solve(TenNodes.worn(1), 0);
        assertEquals(0, state.pressure("line"), 600);
    }

    @Test
    void everyStateIsFarBelowItsTolerance() {
        for (double rpm : new double[] {200, 650, 1400, 3000, 6000}) {
            Solution state = solve(TenNodes.worn(2), rpm);
            assertTrue(state.imbalance() < 1e-9 * 40e-6 * rpm / 60 && state.forceError() < 1e-9);
        }
    }

    /** The states do not depend on where the search starts: warm from above, warm from below, cold. */
    @Test
    void aStateDoesNotDependOnWhereTheSearchStarts() {
        Transmission unit = TenNodes.worn(2);
        SteadySolver solver = new SteadySolver(unit.network());
        Conditions conditions = unit.conditions(unit.duties().get(0));
        Solution cold = solver.solve(conditions).state().orElseThrow();
        for (double rpm : new double[] {300, 2000, 5000}) {
            Optional<Solution> far = solver.solve(conditions.atSpeed(rpm / 60)).state();
            Solution warm = solver.solve(conditions, far).state().orElseThrow();
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

    /** A circuit that asks for the impossible: an orifice that passes 10 mL/s at the least, whatever the pressure, and nothing to feed it. */
    @Test
    void aCircuitWithoutASteadyStateNamesItsCulpritAndWhatWasTried() {
        Network network = new Network(
                List.of(Node.held("sump", 0), Node.free("line")),
                List.of(Placed.of("thirsty", new Orifice(1e-3, 0, 0.7, 1), "sump", Group.PLATE, "line", "sump")));
        Conditions conditions =
                TenNodes.worn(1).conditions(TenNodes.worn(1).duties().get(0));
        Equations equations = new Equations(network, (placed, setting) -> new Thirsty());
        SteadySolver solver = new SteadySolver(equations);
        solver.solve(conditions);
        Outcome outcome = solver.solve(conditions);
        Unsolved unsolved = outcome.unsolved().orElseThrow();
        assertTrue(unsolved.residual() > 1e-9);
        assertEquals("node line", unsolved.culprit());
        assertEquals(8, unsolved.tried().size());
        assertTrue(
                unsolved.tried().get(0).matches("Newton from a cold start at 0.01 bar: ended .+ off at node line"),
                unsolved.tried().get(0));
    }

    private record Thirsty() implements Part.Law {
        @Override
        public void evaluate(Reading in, Stamp out) {
            double p = in.pressure(0) / 1e5;
            out.move(0, 1, 0.01 * (1 + p * p));
            out.moveSlope(0, 1, in.port(0), 0.02 * p / 1e5);
        }

        @Override
        public List<Stream> streams(Reading in) {
            return List.of();
        }
    }

    /** Circuits that did not settle once: nodes with next to no leak, and spools at the corner of their stop. */
    @ParameterizedTest
    @ValueSource(
            longs = {
                2428007301L,
                2626007895L,
                3215009662L,
                3283009866L,
                8247024758L,
                8656025985L,
                10144030449L,
                10807032438L,
                12946038855L,
                16335049022L,
                19007057038L
            })
    void aSpoolAtTheCornerOfItsStopAndANodeThatHardlyLeaksAreNoHindrance(long seed) {
        RandomCircuit circuit = RandomCircuit.any(seed);
        Outcome outcome = new SteadySolver(circuit.network()).solve(circuit.conditions());
        assertTrue(outcome.state().isPresent(), () -> outcome.unsolved().toString());
    }
}
