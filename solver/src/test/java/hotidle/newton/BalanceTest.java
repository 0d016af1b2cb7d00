package hotidle.newton;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.result.Solution;
import hotidle.study.TenNodes;
import hotidle.transmission.Transmission;
import org.junit.jupiter.api.Test;

/** The equations of the ten nodes as Newton sees them, at and near a steady state. */
class BalanceTest {

    private final Transmission unit = TenNodes.worn(1);
    private final SteadySolver solver = new SteadySolver(unit.network());
    private final Solution state =
            solver.solve(unit.conditions(unit.duties().get(0))).state().orElseThrow();
    private final Equations equations = solver.equations();
    private final Balance balance = solver.ladder().newton().balance();
    private final double[] solved = solver.unknowns(state);

    private double[] moved() {
        double[] moved = solved.clone();
        for (int i = 0; i < moved.length; i++) {
            moved[i] += i < balance.nodes() ? 1e3 * (i + 1) : 1e-3 * balance.span(i);
        }
        return moved;
    }

    private int number(String name) {
        return equations.unknown(name);
    }

    @Test
    void aSteadyStateIsInBalanceAndOneNearItIsNot() {
        balance.still();
        double level = balance.evaluate(solved);
        assertTrue(balance.worst() < 5e-10 && level < 1e-17, balance.worst() + " and " + level);
        assertTrue(balance.forceError() <= balance.worst());
        assertTrue(balance.evaluate(moved()) > 1e-6);
        double sum = 0;
        double worst = 0;
        for (int i = 0; i < balance.size(); i++) {
            sum += balance.residual[i] * balance.residual[i];
            worst = Math.max(worst, balance.share(i));
        }
        assertEquals(sum / 2, balance.evaluate(moved()), 1e-15 * sum);
        assertEquals(worst, balance.worst());
        assertEquals(worst, balance.share(balance.culprit()));
    }

    /** A film carries as the inverse square of the way to the wall: twice ln of it is what Newton's step on that law is exact in. */
    @Test
    void aStepOfTheHubGoesAlongTheLogarithmOfItsWayToTheWallAndNeverPastIt() {
        int hub = number("hub.eccentricity");
        double[] from = solved.clone();
        from[hub] = 0.9;
        double[] direction = new double[from.length];
        double[] to = new double[from.length];
        // the load is nine times as large: 2·ln(0.1/left) = ln 9, and the slope of the left side at 0.9 is 20
        direction[hub] = Math.log(9) / 20;
        direction[0] = 1e3;
        balance.step(from, direction, 1, to);
        assertEquals(1 - 0.1 / 3, to[hub], 1e-12);
        assertEquals(from[0] + 1e3, to[0], 1e-9);
        direction[hub] = 5;
        balance.step(from, direction, 1, to);
        assertTrue(to[hub] <= 1 && to[hub] > 0.999, "" + to[hub]);
    }

    /** Each column of the matrix is the slope of the residual by its unknown. */
    @Test
    void slopesAreThoseOfTheEquationsInTheSteadyStateAndWithinATimeStep() {
        for (boolean within : new boolean[] {false, true}) {
            balance.still();
            if (within) {
                balance.after(solved, 0.05, 0.02);
            }
            double[] at = moved();
            balance.evaluate(at);
            balance.differentiate();
            double[] matrix = balance.matrix.clone();
            Pattern pattern = equations.pattern();
            for (int j = 0; j < balance.size(); j++) {
                double step = j < balance.nodes() ? 10 : 1e-6 * balance.span(j);
                int unknown = j;
                double[] slopes = CentralDifference.central(step, shift -> {
                    double[] there = at.clone();
                    there[unknown] += shift;
                    balance.evaluate(there);
                    return balance.residual.clone();
                });
                for (int k = pattern.columnStarts()[j]; k < pattern.columnStarts()[j + 1]; k++) {
                    int i = pattern.rows()[k];
                    double size = Math.max(Math.abs(slopes[i]), 1e-6 / step);
                    assertEquals(slopes[i], matrix[k], 1e-4 * size, equations.name(i) + " by " + equations.name(j));
                }
            }
        }
    }

    @Test
    void theGradientIsTheSlopeOfTheLevel() {
        balance.still();
        double[] at = moved();
        balance.evaluate(at);
        balance.differentiate();
        double[] gradient = new double[balance.size()];
        balance.gradient(gradient);
        for (int j = 0; j < balance.size(); j++) {
            double step = j < balance.nodes() ? 10 : 1e-6 * balance.span(j);
            int unknown = j;
            double slope = CentralDifference.central(step, shift -> {
                double[] there = at.clone();
                there[unknown] += shift;
                return new double[] {balance.evaluate(there)};
            })[0];
            assertEquals(slope, gradient[j], 1e-4 * Math.max(Math.abs(slope), 1e-7 / step), equations.name(j));
        }
    }

    /** A step from the anchor itself changes nothing; away from it compliance and damping hold back. */
    @Test
    void aTimeStepHoldsBackWhatMovesAwayFromItsAnchor() {
        double[] at = moved();
        balance.still();
        balance.evaluate(at);
        double[] still = balance.residual.clone();
        balance.after(at, 0.1, 0.02);
        balance.evaluate(at);
        for (int i = 0; i < balance.nodes(); i++) {
            assertEquals(still[i], balance.residual[i], 1e-15, equations.name(i));
        }
        balance.after(solved, 0.1, 0.02);
        balance.evaluate(at);
        for (int i = 0; i < balance.nodes(); i++) {
            double held = Balance.COMPLIANCE / 0.1 * (at[i] - solved[i]);
            assertEquals(still[i] + held, balance.residual[i], 1e-12, equations.name(i));
        }
        int spool = number("regulator.position");
        double free = balance.free(spool) * balance.span(spool);
        double damped = (free + (at[spool] - solved[spool]) * 0.2) / 1.2;
        assertEquals(damped / balance.span(spool), balance.residual[spool], 1e-12);
        balance.still();
        balance.evaluate(at);
        assertArrayEquals(still, balance.residual);
    }

    /** The filling of a pump's inlet has no slope of its own: it waits for the pressure that it reads. */
    @Test
    void onlyTheFillingOfThePumpWaitsForWhatItReads() {
        balance.still();
        balance.evaluate(solved);
        assertTrue(balance.waiting().get(number("pump-inlet.filling")));
        assertFalse(balance.waiting().get(number("regulator.position")));
        assertEquals(-1, balance.waiting().previousSetBit(balance.nodes() - 1), "no node waits");
    }

    @Test
    void aStateBeyondItsStopIsPutBackOnItAndAPressureNextToVacuum() {
        double[] far = solved.clone();
        int spool = number("regulator.position");
        far[spool] = 1;
        far[0] = -3e5;
        far[1] = 7e5;
        balance.project(far, Newton.LOWEST);
        assertEquals(4e-3, far[spool]);
        assertEquals(Newton.LOWEST, far[0]);
        assertEquals(7e5, far[1]);
        far[spool] = -1;
        balance.project(far, Newton.LOWEST);
        assertEquals(0, far[spool]);
        assertEquals(4e-3, balance.span(spool));
    }

    /** A line without pressure leaves the spring to press the spool on its seat: its equation is the way back to it. */
    @Test
    void aSpoolThatItsSpringHoldsDownIsStopped() {
        double[] low = solved.clone();
        low[number("line")] = 1e4;
        int spool = number("regulator.position");
        low[spool] = 1e-3;
        balance.still();
        balance.evaluate(low);
        assertTrue(balance.stopped(spool));
        assertEquals(0.25, balance.residual[spool], 1e-15, "1 of 4 mm");
        assertEquals(0.25, balance.share(spool), 1e-15);
        assertEquals(0.25, balance.toStop(low, spool), 1e-15);
        low[spool] = 3e-3;
        balance.evaluate(low);
        assertEquals(-0.25, balance.toStop(low, spool), 1e-15, "the upper stop is nearer");
        balance.evaluate(solved);
        assertFalse(balance.stopped(spool), "regulating");
        double moved = solved[spool];
        assertEquals(Math.min(moved, 4e-3 - moved) / 4e-3, balance.edge(solved, spool), 1e-6);
    }

    @Test
    void aSingularMatrixIsHelpedByALittleOnItsDiagonal() {
        balance.still();
        balance.evaluate(solved);
        balance.differentiate();
        double[] before = balance.matrix.clone();
        balance.regularise();
        Pattern pattern = equations.pattern();
        double added = 0;
        for (int k = 0; k < before.length; k++) {
            added += balance.matrix[k] - before[k];
        }
        int states = balance.size() - balance.nodes();
        assertEquals(1e-9 * balance.nodes() + 1e-6 * states, added, 1e-8);
        int spool = number("regulator.position");
        int at = pattern.place(spool, spool);
        assertEquals(1e-6, balance.matrix[at] - before[at], 1e-9);
        assertEquals(1e-9, balance.matrix[pattern.place(0, 0)] - before[pattern.place(0, 0)], 1e-12);
    }
}
