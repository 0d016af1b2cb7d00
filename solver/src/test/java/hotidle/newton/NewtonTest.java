package hotidle.newton;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.newton.MadeEquations.Share;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Single steps of Newton's method, told by hand, where a line's imbalance is a known curve over its pressure. */
class NewtonTest {

    /** Where the curves below cross zero [Pa], and what they are counted in. */
    private static final double ROOT = 1e6;

    private static final double BAR = 1e5;

    /** A spool that stands where it is. */
    private static final Share STANDS = MadeEquations.place(place -> place - 2e-3, place -> 1);

    private static Newton newton(DoubleUnaryOperator curve, DoubleUnaryOperator slope) {
        return new Newton(new MadeEquations(
                        MadeEquations.line(
                                p -> curve.applyAsDouble((p - ROOT) / BAR),
                                p -> slope.applyAsDouble((p - ROOT) / BAR) / BAR),
                        STANDS)
                .equations());
    }

    private static double[] at(double bar) {
        return new double[] {ROOT + bar * BAR, 2e-3};
    }

    private static double bar(double[] unknowns) {
        return (unknowns[0] - ROOT) / BAR;
    }

    private static final Newton ARCTANGENT = newton(Math::atan, x -> 1 / (1 + x * x));

    /** From 3 the step is −12.49; to −9.49 and to −3.25 the arctangent is larger than before, to −0.12 it is not. */
    @Test
    void aStepIsHalvedUntilWhatIsOutOfBalanceFalls() {
        double[] unknowns = at(3);
        ARCTANGENT.reset();
        assertFalse(ARCTANGENT.iterate(unknowns, 1, 1e-12, 1e-12, false));
        assertEquals(3 - Math.atan(3) * 10 / 4, bar(unknowns), 1e-12);
        assertEquals(1, ARCTANGENT.steps());
    }

    /** From 1.3 the whole step falls by 6 %: enough for the sum of flows, too little for the way to the answer, which takes half of it. */
    @Test
    void byTheNaturalLevelAStepMustComeNearerByAQuarterOfItself() {
        double step = -Math.atan(1.3) * (1 + 1.3 * 1.3);
        double[] unknowns = at(1.3);
        ARCTANGENT.iterate(unknowns, 1, 1e-12, 1e-12, false);
        assertEquals(1.3 + step, bar(unknowns), 1e-12);
        unknowns = at(1.3);
        ARCTANGENT.iterate(unknowns, 1, 1e-12, 1e-12, true);
        assertEquals(1.3 + step / 2, bar(unknowns), 1e-12);
    }

    /** From 1 the whole step leaves 0.66 of the way: enough at a whole step, for which 0.75 are. */
    @Test
    void byTheNaturalLevelAWholeStepThatLeavesLessThanThreeQuartersIsTaken() {
        double step = -Math.atan(1) * 2;
        double left = Math.abs(Math.atan(1 + step)) / Math.atan(1);
        assertTrue(left > 0.3 && left < 0.75, "left " + left);
        double[] unknowns = at(1);
        ARCTANGENT.iterate(unknowns, 1, 1e-12, 1e-12, true);
        assertEquals(1 + step, bar(unknowns), 1e-12);
    }

    /**
     * From 1.1 the whole step of the line leaves 1.409 of 1.841, too much alone. A spool half its way off goes home in the same step: of
     * both together, hypot(1.841, 0.5), less than three quarters are left; of a spool that is a tenth of its way off, more.
     */
    @Test
    void theNaturalLevelWeighsPressuresInBarAndPlacesInTheirWay() {
        double step = Math.atan(1.1) * (1 + 1.1 * 1.1);
        double[] half = {ROOT + 1.1 * BAR, MadeEquations.HIGH};
        ARCTANGENT.iterate(half, 1, 1e-12, 1e-12, true);
        assertEquals(1.1 - step, bar(half), 1e-12);
        assertEquals(2e-3, half[1], 1e-15);
        double[] tenth = {ROOT + 1.1 * BAR, 2.2e-3};
        ARCTANGENT.iterate(tenth, 1, 1e-12, 1e-12, true);
        assertEquals(1.1 - step / 2, bar(tenth), 1e-12);
        assertEquals(2.1e-3, tenth[1], 1e-15);
    }

    /** A line that next to nothing leaves would be thrown 10 000 bar: 1 MPa and twice what it has is the most. */
    @Test
    void noPressureLeaps() {
        Newton flat = newton(x -> 1e-4 * (x - 1e4), x -> 1e-4);
        double[] unknowns = at(-8);
        flat.iterate(unknowns, 1, 1e-12, 1e-12, false);
        assertEquals(2e5 + 1e6 + 2 * 2e5, unknowns[0], 1e-6);
    }

    @Test
    void aStraightLineTakesOneStepAndAnAnswerNone() {
        Newton straight = newton(x -> 0.01 * x, x -> 0.01);
        straight.reset();
        double[] unknowns = at(2);
        assertTrue(straight.solve(unknowns, Newton.POLISHED));
        assertEquals(0, bar(unknowns), 1e-9);
        int steps = straight.steps();
        assertTrue(steps >= 1 && steps <= 2, steps + " steps");
        straight.reset();
        assertEquals(0, straight.steps());
        double[] answer = at(0);
        assertTrue(straight.solve(answer, Newton.POLISHED));
        assertEquals(0, straight.steps());
        assertFalse(straight.negativeDeterminant());
    }

    /** A parabola that touches zero: each step takes half of what is left. */
    @Test
    void whatCreepsBeyondAFewStepsIsNotFinishedButSolved() {
        Newton touching = newton(x -> x * x, x -> 2 * x);
        double[] unknowns = at(1);
        assertFalse(touching.finish(unknowns), "eight halvings leave (1/256)²");
        assertEquals(Math.pow(0.5, 8), bar(unknowns), 1e-9);
        unknowns = at(1);
        assertTrue(touching.solve(unknowns, Newton.POLISHED));
        assertTrue(Math.abs(bar(unknowns)) < 1e-4);
        assertTrue(touching.finish(unknowns));
    }

    /**
     * A spool whose force falls by a tenth of its way up to an edge at 2 mm and by ten times its way past it, in balance 0.01 mm past it.
     * From 0.5 mm below it the whole step leads 1 mm past it, where the force is a hundred times what it was; up to the edge and
     * 8 µm past it the slopes hold, and from there the step leads home.
     */
    @Test
    void aStepThatFailsBeyondAnEdgeIsTakenUpToIt() {
        double edge = 2e-3;
        Share jumps = MadeEquations.place(
                place -> -1e-4 + (place - edge) * (place < edge ? 0.1 : 10), place -> place < edge ? 0.1 : 10);
        Share holds = MadeEquations.line(p -> (p - ROOT) / BAR, p -> 1 / BAR);
        double[] unknowns = {ROOT, edge - 0.5e-3};
        Newton told = new Newton(new MadeEquations(holds, jumps).equations(edge));
        told.reset();
        assertFalse(told.iterate(unknowns, 1, 1e-12, 1e-12, true));
        assertEquals(edge + 4e-3 * (MadeEquations.HIGH - MadeEquations.LOW), unknowns[1], 1e-9);
        assertTrue(told.natural(unknowns, Newton.POLISHED));
        assertEquals(edge + 1e-5, unknowns[1], 1e-9);
        assertEquals(2, told.steps());

        Newton untold = new Newton(new MadeEquations(holds, jumps).equations());
        untold.reset();
        assertTrue(untold.natural(new double[] {ROOT, edge - 0.5e-3}, Newton.POLISHED));
        assertTrue(untold.steps() > 2, "halved where nobody tells of the edge: " + untold.steps());
    }

    /** From 2.45, a start found by trying, more than six short steps follow each other. */
    @Test
    void aNearStartIsGivenUpWhereSixShortStepsFollowEachOther() {
        Newton steep = newton(x -> Math.atan(100 * x), x -> 100 / (1 + 1e4 * x * x));
        steep.reset();
        assertFalse(steep.nearByResidual(at(2.45)));
        int givenUp = steep.steps();
        steep.reset();
        assertTrue(steep.solve(at(2.45), Newton.POLISHED), "what goes all of its way arrives");
        assertTrue(givenUp >= 6 && givenUp < steep.steps(), givenUp + " of " + steep.steps());
        assertTrue(steep.nearByResidual(at(2)), "short steps, but no six in a row");
    }

    /** The same curve from 3, where the first step that descends is a fiftieth of Newton's. */
    @Test
    void homeIsNotNearWhereOneStepIsShortAndATimeStepEndsWithTheSecond() {
        Newton steep = newton(x -> Math.atan(100 * x), x -> 100 / (1 + 1e4 * x * x));
        steep.reset();
        assertFalse(steep.finish(at(3)));
        assertEquals(1, steep.steps());
        steep.reset();
        assertFalse(steep.timeStep(at(2.45), 12, 1e-12));
        assertEquals(2, steep.steps());
        steep.reset();
        assertTrue(steep.timeStep(at(0.005), 12, 1e-12), "a start without a short step arrives");
    }

    /** A line from which more is taken than it gets at any pressure: the nearest it comes to balance is the answer's place, not an answer. */
    @Test
    void whereNothingFallsAnyMoreTheUnknownsStayAndTheBalanceIsTheirs() {
        Newton thirsty = newton(x -> 1 + x * x, x -> 2 * x);
        double[] unknowns = at(1e-9);
        assertFalse(thirsty.iterate(unknowns, 5, 1e-12, 0.5, false));
        assertEquals(1e-9, bar(unknowns), 1e-9);
        assertEquals(1, thirsty.balance().worst(), 1e-12);
        assertTrue(thirsty.iterate(unknowns, 5, 1e-12, 2, false), "good enough where 2 is accepted");
        assertTrue(thirsty.iterate(unknowns, 5, 1e-12, 2, true), "and by the natural level");
        assertFalse(thirsty.natural(unknowns, Newton.POLISHED));
        assertFalse(thirsty.solve(unknowns, Newton.POLISHED));
    }

    @Test
    void byTheNaturalLevelAnAnswerIsToldAsOne() {
        double[] unknowns = at(1.3);
        assertTrue(ARCTANGENT.natural(unknowns, Newton.POLISHED));
        assertEquals(0, bar(unknowns), 1e-9);
    }

    /** Whatever was asked before, these ask for the steady state. */
    @Test
    void aTimeStepAskedForBeforeIsForgotten() {
        Newton straight = newton(x -> 0.01 * x, x -> 0.01);
        double[] far = at(5);
        straight.balance().after(far, 1e-3, 0.03);
        double[] unknowns = at(2);
        assertTrue(straight.natural(unknowns, Newton.POLISHED) && Math.abs(bar(unknowns)) < 1e-9);
        straight.balance().after(far, 1e-3, 0.03);
        unknowns = at(2);
        assertTrue(straight.natural(unknowns, Newton.POLISHED) && Math.abs(bar(unknowns)) < 1e-9);
        straight.balance().after(far, 1e-3, 0.03);
        unknowns = at(2);
        assertTrue(straight.finish(unknowns) && Math.abs(bar(unknowns)) < 1e-9);
        straight.balance().after(far, 1e-3, 0.03);
        unknowns = at(2);
        assertTrue(straight.solve(unknowns, Newton.POLISHED) && Math.abs(bar(unknowns)) < 1e-9);
    }
}
