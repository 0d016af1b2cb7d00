package hotidle.newton;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.network.Conditions;
import hotidle.network.Group;
import hotidle.network.Network;
import hotidle.network.Node;
import hotidle.network.Placed;
import hotidle.part.Orifice;
import hotidle.result.SolveCount;
import hotidle.study.TenNodes;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The equations of a network, and what changes with another of the same shape. */
class EquationsTest {

    private final Transmission unit = TenNodes.worn(1);
    private final Conditions conditions = unit.conditions(unit.duties().get(0));

    /** Two equal orifices in a row between a held line and the sump. */
    private static Network held(double line, double second) {
        return new Network(
                List.of(Node.held("sump", 0), Node.held("line", line), Node.free("between")),
                List.of(
                        Placed.of("first", new Orifice(1e-3, 0, 0.7, 1), "sump", Group.PLATE, "line", "between"),
                        Placed.of("second", new Orifice(second, 0, 0.7, 1), "sump", Group.PLATE, "between", "sump")));
    }

    private double between(Series series) {
        assertTrue(series.solve(conditions));
        return series.value(series.number("between"));
    }

    /** Equal orifices halve the pressure within a hundredth: density, viscosity and coefficient change a little with it. */
    @Test
    void aHeldPressureIsTakenFromTheNetworkThatIsGoneOnWith() {
        Series series = new Series(held(4e5, 1e-3));
        assertEquals(2e5, between(series), 2e3);
        series.use(held(10e5, 1e-3));
        assertEquals(5e5, between(series), 5e3);
        assertEquals(between(new Series(held(10e5, 1e-3))), between(series), 1e-6);
        series.use(held(10e5, 0.8e-3));
        assertTrue(between(series) > 6e5, "and the sizes with it");
    }

    @Test
    void aNetworkOfAnotherShapeIsNotAlike() {
        Equations equations = new Equations(held(4e5, 1e-3), Laws.OWN);
        assertTrue(equations.alike(held(9e5, 2e-3)));
        Network base = held(4e5, 1e-3);
        List<Node> more = new ArrayList<>(base.nodes());
        more.add(Node.held("case", 0));
        assertFalse(equations.alike(new Network(more, base.parts())));
        assertFalse(equations.alike(new Network(base.nodes(), base.parts().subList(0, 1))));
        List<Node> free = List.of(Node.held("sump", 0), Node.free("line"), Node.free("between"));
        assertFalse(equations.alike(new Network(free, base.parts())), "a line that is not held");
        Network turned = new Network(
                base.nodes(), List.of(base.parts().get(1), base.parts().get(0)));
        assertFalse(equations.alike(turned), "another part in its place");
        assertThrows(IllegalArgumentException.class, () -> equations.use(turned));
    }

    @Test
    void theDifferenceOfTwoNetworksIsThatOfTheirEquations() {
        Network one = TenNodes.worn(1).network();
        Network other = TenNodes.worn(3).network();
        SteadySolver solver = new SteadySolver(one);
        double[] unknowns = solver.unknowns(solver.solve(conditions).state().orElseThrow());
        double[] told = solver.equations().difference(one, other, unknowns);
        double[] expected = new double[told.length];
        for (boolean first : new boolean[] {true, false}) {
            Equations equations = new Equations(first ? one : other, Laws.OWN);
            equations.set(conditions);
            equations.evaluate(unknowns);
            for (int i = 0; i < expected.length; i++) {
                expected[i] += (first ? 1 : -1) * equations.value[i];
            }
        }
        assertTrue(Math.abs(expected[solver.equations().unknown("line")]) > 1e-4, "more leaks from the line");
        assertArrayEquals(expected, told, 1e-12);
    }

    /** What leaves a node into some parts, by each pressure: an orifice's flow rises with one and falls with the other. */
    @Test
    void whatLeavesANodeRisesWithItsPressure() {
        Network network = held(4e5, 1e-3);
        Equations equations = new Equations(network, Laws.OWN);
        equations.set(conditions);
        double[] at = {2.5e5};
        double[] first = equations.leaving("between", name -> name.equals("first"), at);
        double[] second = equations.leaving("between", name -> name.equals("second"), at);
        double[] all = equations.leaving("between", name -> true, at);
        equations.evaluate(at);
        double[] slope = CentralDifference.central(10, shift -> {
            equations.evaluate(new double[] {at[0] + shift});
            return new double[] {equations.value[0]};
        });
        assertTrue(first[0] > 0 && second[0] > 0);
        assertEquals(first[0] + second[0], all[0], 1e-18);
        assertEquals(slope[0], all[0], 1e-6 * slope[0]);
        assertEquals(-first[0], equations.leaving("line", name -> true, at)[0], 1e-18, "a held node gives less");
    }

    @Test
    void theImbalanceIsThatOfTheWorstNode() {
        Equations equations = new Equations(held(4e5, 1e-3), Laws.OWN);
        equations.set(conditions);
        equations.evaluate(new double[] {3.5e5});
        assertTrue(equations.imbalance() > 1e-3, "the second orifice passes more than the first");
        assertEquals(Math.abs(equations.value[0]), equations.imbalance());
    }

    @Test
    void whatASolveCostIsCounted() {
        SolveCount before = SolveCount.now();
        SteadySolver solver = new SteadySolver(unit.network());
        int steps = solver.solve(conditions).state().orElseThrow().steps();
        SolveCount cost = SolveCount.now().since(before);
        assertTrue(steps > 0 && cost.states() >= 1 && cost.steps() >= steps, cost + " for " + steps);
        Series series = new Series(unit.network());
        before = SolveCount.now();
        assertTrue(series.solve(conditions));
        assertTrue(SolveCount.now().since(before).states() >= 1);
        assertTrue(SolveCount.now().since(before).steps() >= series.steps());
    }
}
