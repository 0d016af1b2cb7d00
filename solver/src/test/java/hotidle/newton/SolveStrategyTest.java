package hotidle.newton;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.newton.MadeEquations.Share;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Which method has the answer, where a line's imbalance and a spool's force are known curves. */
class SolveStrategyTest {

    private static final double BAR = 1e5;
    private static final double MIDDLE = 2e-3;
    private static final Share STANDS = MadeEquations.place(place -> place - MIDDLE, place -> 1);

    /** A line whose imbalance is a curve over its pressure [bar]. */
    private static SolveStrategy line(DoubleUnaryOperator curve, DoubleUnaryOperator slope) {
        return new SolveStrategy(new MadeEquations(
                        MadeEquations.line(p -> curve.applyAsDouble(p / BAR), p -> slope.applyAsDouble(p / BAR) / BAR),
                        STANDS)
                .equations());
    }

    private static double[] at(double bar) {
        return new double[] {bar * BAR, MIDDLE};
    }

    /** Runs out as long as there is pressure; between 2 and 4 bar hardly, least at about 3. */
    private static SolveStrategy dip() {
        return line(
                x -> (x - 0.5) * ((x - 3) * (x - 3) + 0.03), x -> (x - 3) * (x - 3) + 0.03 + (x - 0.5) * 2 * (x - 3));
    }

    /** Newton stays above the dip; the circuit itself runs through it. */
    @Test
    void whereNewtonIsCaughtTimeStepsGoOn() {
        SolveStrategy strategy = dip();
        double[] unknowns = at(4);
        strategy.reset();
        assertFalse(strategy.quick(at(4), Newton.POLISHED));
        assertTrue(strategy.climb(unknowns, "above the dip"));
        assertEquals(0.5 * BAR, unknowns[0], 1e-6 * BAR);
        assertEquals("pseudo-transient continuation", strategy.method());
        assertEquals(2, strategy.tried().size(), strategy.tried().toString());
        assertTrue(
                strategy.tried().get(0).matches("Newton from above the dip: ended .+ off at node line"),
                strategy.tried().get(0));
        assertTrue(strategy.tried().get(1).startsWith("Newton by the natural level from above the dip"));
        strategy.reset();
        assertTrue(strategy.tried().isEmpty());
        assertEquals(0, strategy.newton().steps());
    }

    @Test
    void whatIsNearIsNewtonsAndSaysSo() {
        SolveStrategy strategy = dip();
        double[] unknowns = at(0.7);
        strategy.reset();
        assertTrue(strategy.quick(unknowns, Newton.POLISHED));
        assertEquals(0.5 * BAR, unknowns[0], 1e-6 * BAR);
        assertEquals("Newton", strategy.method());
        strategy.reset();
        assertTrue(strategy.quick(unknowns, 1e-9), "an answer takes no step");
        assertEquals(0, strategy.newton().steps());
        assertTrue(strategy.climb(at(0.7), "nearby"));
        assertEquals("Newton", strategy.method());
        assertTrue(strategy.tried().isEmpty());
    }

    /** From 1.37 bar off the residual's level takes three short steps in a row; a near start goes by the natural level at once. */
    @Test
    void whereTheResidualWouldCreepANearStartDoesNot() {
        SolveStrategy strategy = line(x -> Math.atan(100 * (x - 10)), x -> 100 / (1 + 1e4 * (x - 10) * (x - 10)));
        double[] unknowns = at(11.37);
        strategy.reset();
        assertTrue(strategy.quick(unknowns, Newton.POLISHED));
        assertEquals(10 * BAR, unknowns[0], 1);
    }

    @Test
    void whatHasNoAnswerIsNotFoundByAnyMethodAndEachIsNamed() {
        SolveStrategy thirsty = line(x -> 1 + x * x, x -> 2 * x);
        thirsty.reset();
        assertFalse(thirsty.quick(at(1), Newton.POLISHED));
        assertFalse(thirsty.climb(at(1), "one bar"));
        assertEquals(4, thirsty.tried().size(), thirsty.tried().toString());
        assertTrue(thirsty.tried()
                .get(2)
                .startsWith("pseudo-transient continuation from one bar, spools settling in 0.03 s: "));
        assertTrue(thirsty.tried()
                .get(3)
                .startsWith("pseudo-transient continuation from one bar, spools settling in 3.0 s: "));
        thirsty.reset();
        assertFalse(thirsty.cold(at(1)));
        assertEquals(8, thirsty.tried().size());
        assertTrue(
                thirsty.tried().get(4).startsWith("Newton from a cold start at 1.0 bar"),
                "after time steps from the first");
    }

    /** Pushed on by what it opens, a spool is in balance in the middle and stays at neither side of it. */
    private static SolveStrategy pushedOn() {
        return new SolveStrategy(new MadeEquations(
                        MadeEquations.line(p -> 0.1 * (p / BAR - 1), p -> 0.1 / BAR),
                        MadeEquations.place(place -> MIDDLE - place, place -> -1))
                .equations());
    }

    @Test
    void aSpoolInABalanceThatItWouldNotKeepIsLetGoToItsUpperStop() {
        SolveStrategy strategy = pushedOn();
        double[] unknowns = {1.2 * BAR, MIDDLE + 1e-9};
        strategy.reset();
        assertFalse(strategy.quick(unknowns.clone(), Newton.POLISHED), "a balance, but no state that it stays in");
        strategy.reset();
        assertTrue(strategy.climb(unknowns, "the middle"));
        assertEquals(MadeEquations.HIGH, unknowns[1], 1e-12);
        assertEquals(1e5, unknowns[0], 1e-3);
        assertEquals("pseudo-transient continuation, away from an unstable state", strategy.method());
    }

    /** What leads away from a balance is a spool beside its place; where none reads the line, the line stays. */
    @Test
    void aBalanceThatNothingLeadsAwayFromIsToldAsUnstable() {
        SolveStrategy strategy = line(x -> -0.1 * (x - 2), x -> -0.1);
        double[] unknowns = at(2.01);
        strategy.reset();
        assertTrue(strategy.climb(unknowns, "beside the edge"));
        assertEquals(2 * BAR, unknowns[0], 1e-3);
        assertEquals(MIDDLE, unknowns[1], 1e-9);
        assertEquals("Newton, an unstable state", strategy.method());
    }

    /** A cold start has one pressure everywhere, and each spool where its spring puts it. */
    @Test
    void aColdStartIsNearlyWithoutPressure() {
        double[] unknowns = at(7);
        dip().chill(unknowns);
        assertEquals(1e3, unknowns[0]);
        assertEquals(MadeEquations.LOW, unknowns[1]);
    }

    /** Caught above the dip from 1 bar on either side: the dip lies where no cold start gets past it but by time steps. */
    @Test
    void coldStartsTryNewtonFirstAndThenTimeSteps() {
        SolveStrategy above =
                line(x -> (x - 9) * ((x - 3) * (x - 3) + 0.03), x -> (x - 3) * (x - 3) + 0.03 + (x - 9) * 2 * (x - 3));
        double[] unknowns = at(0);
        above.reset();
        assertTrue(above.cold(unknowns));
        assertEquals(9 * BAR, unknowns[0], 1);
    }
}
