package hotidle.newton;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.network.Conditions;
import hotidle.network.Network;
import hotidle.part.OwnState;
import hotidle.result.Solution;
import hotidle.study.TenNodes;
import hotidle.transmission.Transmission;
import org.junit.jupiter.api.Test;

/** Slopes of the ten nodes about a steady state, against new solves. */
class LinearisedTest {

    private final Transmission unit = TenNodes.worn(2);
    private final Conditions conditions = unit.conditions(unit.duties().get(0));
    private final Network network = unit.network();
    private final Solution state =
            new SteadySolver(network).solve(conditions).state().orElseThrow();
    private final Linearised about = new Linearised(network, state);

    private static double line(Network network, Conditions conditions) {
        return new SteadySolver(network).solve(conditions).state().orElseThrow().pressure("line");
    }

    private double[] weightsOfLine() {
        double[] slopes = new double[about.size()];
        slopes[about.number("line")] = 1;
        return about.weights(slopes);
    }

    private static double product(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }

    /** The line falls by −λ times what the equations have become more. */
    @Test
    void aSlopeByASizeIsThatOfTwoSolves() {
        Network more = TenNodes.worn(2.001).network();
        double told = -product(weightsOfLine(), about.difference(more, network));
        assertEquals(line(more, conditions) - line(network, conditions), told, 2e-3 * Math.abs(told));
        assertTrue(told < -1, "a worn bore costs pressure: " + told);
        assertArrayEquals(about.residual(more), about.difference(more, network), 1e-9);
    }

    @Test
    void aSlopeBySpeedIsThatOfTwoSolves() {
        Conditions faster = conditions.atSpeed(1.0001 * conditions.speed());
        double[] under = about.under(faster);
        double[] here = about.under(conditions);
        double[] weights = weightsOfLine();
        double told = -(product(weights, under) - product(weights, here));
        assertEquals(line(network, faster) - line(network, conditions), told, 2e-3 * Math.abs(told));
        assertTrue(told > 0.1, "a faster pump holds more: " + told);
        for (double off : here) {
            assertEquals(0, off, 1e-9, "the state itself is in balance, again after the question");
        }
        Network more = TenNodes.worn(2.5).network();
        double[] before = about.difference(more, network);
        about.under(conditions.atSpeed(2 * conditions.speed()));
        assertArrayEquals(before, about.difference(more, network), 1e-15, "the question leaves nothing behind");
    }

    /** Figures are read at states moved by hand: here the flow over the relief valve's port and the line itself. */
    @Test
    void slopesOfFiguresAreReadOffTheState() {
        double[][] slopes =
                about.slopes(at -> new double[] {at.pressure("line"), at.own("regulator", OwnState.POSITION) * 1e3, 7});
        int line = about.number("line");
        int spool = about.number("regulator", OwnState.POSITION);
        assertEquals(1, slopes[0][line], 1e-6);
        assertEquals(0, slopes[2][line], 1e-9);
        boolean stopped = state.own("regulator", OwnState.POSITION) == 0;
        assertEquals(stopped ? 0 : 1e3, slopes[1][spool], 1e-3);
        assertEquals(0, slopes[0][spool], 1e-3);
    }

    /** At the set pressure the spool stands off its seat, and its slope counts. */
    @Test
    void aSpoolThatRegulatesMovesWhatItsOpeningMoves() {
        Conditions fast = conditions.atSpeed(3000 / 60.0);
        Solution regulated = new SteadySolver(network).solve(fast).state().orElseThrow();
        Linearised there = new Linearised(network, regulated);
        int spool = there.number("regulator", OwnState.POSITION);
        double[][] slopes = there.slopes(at -> new double[] {at.own("regulator", OwnState.POSITION) * 1e3});
        assertEquals(1e3, slopes[0][spool], 1e-3);
        double position = regulated.own("regulator", OwnState.POSITION);
        assertTrue(there.edge() > 0 && there.edge() <= position / 4e-3 + 1e-9, there.edge() + " of its way");
        assertEquals(regulated.pressures(), there.in(network).pressures());
    }
}
