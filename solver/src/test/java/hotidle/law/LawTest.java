package hotidle.law;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Laws of flow where no published value stands for them; those are in the validation sheet. */
class LawTest {

    /** Straight taper: the closed form equals the integral of 1/h³ along the gap, done numerically by Simpson's rule. */
    @Test
    void taperedGapIsTheIntegralOverItsHeight() {
        double sum = 0;
        int n = 2000;
        for (int i = 0; i <= n; i++) {
            double h = 20e-6 + (10e-6 - 20e-6) * i / n;
            sum += (i == 0 || i == n ? 1 : i % 2 == 1 ? 4 : 2) / (h * h * h);
        }
        double equivalent = 1 / (sum / (3 * n));
        assertEquals(2666.67e-18, equivalent, 0.005e-18);
        double viscous = Slot.tapered(0.05, 20e-6, 10e-6, 4e-3).viscous();
        assertEquals(12 * 4e-3 / (0.05 * equivalent), viscous, 1e-9 * viscous);
    }

    /** A poppet on its spring: shut below its cracking pressure, in proportion above it, at its stop from full lift on. */
    @Test
    void aPoppetLiftsInProportionBetweenSeatAndStop() {
        Poppet poppet = new Poppet(8e-3, 4000, 20, 1e-3, 0.7, SeriesLoss.SHUT);
        double cracking = poppet.cracking();
        double full = poppet.fullLiftPressure();
        assertEquals(0, poppet.lift(0.99 * cracking));
        assertEquals(0.5e-3, poppet.lift((cracking + full) / 2), 1e-12);
        assertEquals(1e-3, poppet.lift(1.5 * full));
    }

    /** Worked geometry, from memory: module 3 mm, 26 and 13 teeth, OD 84 and 45 mm, 12 mm wide: 17.9 cm³ per hub turn and pinion. */
    @ParameterizedTest
    @CsvSource({"10,14.9", "12,17.9", "15,22.4"})
    void displacementByInvoluteIsTheWorkedGeometrys(double millimetres, double cubicCentimetres) {
        double v = GearDisplacement.involute(3e-3, 26, 13, 0.084, 0.045, millimetres * 1e-3);
        assertEquals(cubicCentimetres, v * 1e6, 0.05);
    }

    /** Passages: the drop and the flow belong together from creeping to turbulent, without a jump. */
    @Test
    void passageFlowRisesWithoutAJumpThroughTheTransition() {
        PipeLoss pipe = new PipeLoss(6e-3, 0.2, 5e-6, 1.5);
        double before = 0;
        for (double drop = 1; drop < 1e7; drop *= 1.02) {
            Flow flow = pipe.flow(drop, 850, 0.01);
            // the drop rises at least as the flow, so 2 % more drop is at most 2 % more flow
            assertTrue(flow.q() > before && (before == 0 || flow.q() <= 1.0201 * before), "at " + drop + " Pa");
            before = flow.q();
        }
    }

    /** Short tube at the seam of Merritt's two branches, Re·d/l = 50: they give 0.5300 and 0.5389, ours lies between them. */
    @Test
    void shortTubeLiesBetweenItsTwoBranchesAtTheSeam() {
        double lower = 1 / Math.sqrt(2.28 + 64.0 / 50);
        double upper = 1 / Math.sqrt(1.5 + 13.74 / Math.sqrt(50));
        double ours = 1 / Math.sqrt(ShortTube.heads(1.0 / 50)[0]);
        assertTrue(ours > lower && ours < upper, lower + " " + ours + " " + upper);
    }

    /** A vented passage may be left with a drop that no gauge could show; its slope is Poiseuille's even so. */
    @Test
    void aShortTubeHasASlopeAtTheFaintestDrop() {
        ShortTube tube = new ShortTube(2e-3, 1.2e-3);
        Flow whole = new Flow();
        tube.flow(1e-6, 800, 6e-3, whole);
        for (double drop : new double[] {1e-20, 1e-29, 1e-31, 1e-159, -1e-159, Double.MIN_VALUE, 0}) {
            Flow faint = new Flow();
            tube.flow(drop, 800, 6e-3, faint);
            assertEquals(whole.byDrop(), faint.byDrop(), 1e-3 * whole.byDrop(), drop + " Pa");
            assertEquals(faint.byDrop() * drop, faint.q(), 1e-6 * Math.abs(faint.q()), drop + " Pa");
        }
    }
}
