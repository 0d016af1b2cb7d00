package hotidle.law;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Laws of flow against published worked examples; tolerances are half of the last printed digit unless a row says more. */
class LawPublishedTest {

    private static final double INCH = 0.0254;
    private static final double PSI = 6894.757293168;
    private static final double GALLON_A_MINUTE = 231 * INCH * INCH * INCH / 60;
    private static final double THIN = 1e-12;

    /** Density for an example that neglects inertia, which is 0.01 % of it [kg/m³]. */
    private static final double WITHOUT_INERTIA = 1e-3;

    /** A. Esposito, Fluid Power with Applications, Ex. 8-4: Cd 0.80, 1 in, 100 psi, specific gravity 0.9: 252 gpm. */
    @Test
    void orificePassesWhatTheHandbookExampleSays() {
        double q = Hole.loss(INCH, 0, 0.80).flow(100 * PSI, 0.9 * 998, THIN).q();
        assertEquals(252, q / GALLON_A_MINUTE, 0.5);
    }

    /** R. A. Sampson (1891) in Dagan, Weinbaum, Pfeffer, J. Fluid Mech. 115 (1982) 505 (from memory): Q = d³·Δp/(24·μ). */
    @Test
    void orificeCreepsByRadiusCubed() {
        double q = Hole.loss(1e-3, 0, 0.61).flow(1e-3, 850, 0.1).q();
        assertEquals(1e-9 * 1e-3 / (24 * 0.1), q, 1e-6 * q);
    }

    /** H. E. Merritt, Hydraulic Control Systems, 1967, §3-4: free streamline contraction 0.611. */
    @Test
    void sharpEdgeContractsByTheFreeStreamline() {
        assertEquals(0.611, Hole.SHARP_EDGE, 5e-4);
    }

    /** N. de Nevers, Fluid Mechanics for Chemical Engineers, ch. 6, gasoline past a valve stem: 0.25 in, 0.0001 in, 1 in, 100 psi, 0.6 cP. */
    @Test
    void concentricAnnulusLeaksAsTheValveStemExample() {
        double q = Slot.annular(0.25 * INCH, 0.0001 * INCH, INCH, 0)
                .flow(100 * PSI, 720, 0.6e-3)
                .q();
        assertEquals(0.270568, q / (INCH * INCH * INCH) * 3600, 1.5e-3 * 0.270568);
    }

    /** Merritt 1967 §2-5; M. G. Rabie, Fluid Power Engineering, Fig. 2.6: an annulus that touches passes 2.5 times as much. */
    @Test
    void touchingAnnulusPassesTwoAndAHalfTimesAsMuch() {
        double concentric =
                Slot.annular(0.014, 20e-6, 8e-3, 0).flow(1e3, 800, 0.006).q();
        double touching =
                Slot.annular(0.014, 20e-6, 8e-3, 1).flow(1e3, 800, 0.006).q();
        assertEquals(2.5, touching / concentric, 2.5e-4);
    }

    /** Natarajan, Principles of Fluid Mechanics, Ex. 7.1: crack of 0.15 mm, 1.5 m long, 4 m of water: mean velocity 0.049 m/s. */
    @Test
    void crackInAWallSeepsAtTheExamplesVelocity() {
        double q = Slot.flat(1, 0.15e-3, 1.5).flow(1000 * 9.81 * 4, 1000, 0.001).q();
        assertEquals(0.049, q / 0.15e-3, 5e-4);
    }

    /** B. S. Massey, J. Ward-Smith, Mechanics of Fluids, Ex. 6.2: discs, gap 1 mm, 15 kPa, 0.6 Pa·s, R2/R1 = 6: 7.31e-6 m³/s. */
    @Test
    void radialGapBetweenDiscsPassesTheExamplesFlow() {
        double q = Slot.disc(0.025, 0.150, 1e-3, 1)
                .flow(15e3, WITHOUT_INERTIA, 0.6)
                .q();
        assertEquals(7.31e-6, q, 0.005e-6);
    }

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

    /** Esposito Ex. 8-1: poppet of 0.75 in², spring 2500 lb/in, preloaded 0.20 in: cracks at 667 psi, 1000 psi at 0.10 in. */
    @Test
    void reliefCracksAndFlowsFullAtTheExamplesPressures() {
        double rate = 2500 * 4.4482216152605 / INCH;
        double seat = Math.sqrt(4 * 0.75 / Math.PI) * INCH;
        Poppet poppet = new Poppet(seat, rate, rate * 0.20 * INCH, 0.10 * INCH, 0.7, SeriesLoss.SHUT);
        assertEquals(667, poppet.crackingPressure() / PSI, 0.5);
        assertEquals(1000, poppet.fullLiftPressure() / PSI, 0.5);
        assertEquals(0, poppet.lift(660 * PSI));
        assertEquals(0.05 * INCH, poppet.lift(833.33 * PSI), 1e-6);
    }

    /** Esposito Ex. 5-1: gear pump Do 3 in, Di 2 in, 1 in wide: 3.93 in³/rev. */
    @Test
    void displacementByTwoDiametersIsTheExamples() {
        double inch3 = INCH * INCH * INCH;
        assertEquals(3.93, GearDisplacement.twoDiameters(3 * INCH, 2 * INCH, INCH) / inch3, 0.005);
    }

    /** A measured gear set: b 1.614 cm, da 5.039 cm, a 4.206 cm; the rule gives 19.52 cm³/rev, the pump is "actually 19". */
    @Test
    void displacementByTipAndCentresIsTheMeasuredSets() {
        assertEquals(19.52e-6, GearDisplacement.tipAndCentres(0.05039, 0.04206, 0.01614), 0.005e-6);
    }

    /** Worked geometry, from memory: module 3 mm, 26 and 13 teeth, OD 84 and 45 mm, 12 mm wide: 17.9 cm³ per hub turn and pinion. */
    @ParameterizedTest
    @CsvSource({"10,14.9", "12,17.9", "15,22.4"})
    void displacementByInvoluteIsTheWorkedGeometrys(double millimetres, double cubicCentimetres) {
        double v = GearDisplacement.involute(3e-3, 26, 13, 0.084, 0.045, millimetres * 1e-3);
        assertEquals(cubicCentimetres, v * 1e6, 0.05);
    }

    /** Y. A. Çengel, J. M. Cimbala, Fluid Mechanics, Ex. 8-3: Re 134 300, e/D 0.00004: f = 0.0172. */
    @Test
    void wallFrictionIsTheExamplesInTurbulentFlow() {
        assertEquals(0.0172, PipeLoss.friction(134_300, 0.00004)[0], 1.0e-4);
    }

    /** J. K. Vennard, Elementary Fluid Mechanics, Ex. 9.7: fully rough, e/d 0.002: f = 0.0234. */
    @Test
    void wallFrictionIsTheExamplesInFullyRoughFlow() {
        assertEquals(0.0234, PipeLoss.friction(1e9, 0.002)[0], 5e-5);
    }

    /** Çengel &amp; Cimbala Ex. 8-2: 0.9 m/s (3 ft/s) of water through 3 mm, 9 m, 1.519e-3 Pa·s: 43.7 kPa, laminar. */
    @Test
    void laminarPassageDropsTheExamplesPressure() {
        double area = Math.PI * 0.003 * 0.003 / 4;
        double q = new PipeLoss(0.003, 9, 0, 0).flow(43.7472e3, 1000, 1.519e-3).q();
        assertEquals(0.9, q / area, 0.005);
    }

    /** R. W. Fox, A. T. McDonald, Introduction to Fluid Mechanics, Ex. 8.4: capillary 0.5 mm, 1 m, 1 MPa, 880 mm³/s: 1.74e-3 Pa·s. */
    @Test
    void capillaryViscometerReadsTheExamplesViscosity() {
        double q = new PipeLoss(0.5e-3, 1, 0, 0).flow(1e6, 999, 1.74316e-3).q();
        assertEquals(880e-9, q, 0.5e-9);
    }

    /**
     * H. E. Merritt, Hydraulic Control Systems, 1967, in Rabie, Fluid Power Engineering, eq. 2.40 and 2.41: Cd of a short tube at
     * Re·d/l = 500 and 5. At the seam, 50, the two equations give 0.5389 and 0.5300: ours lies between them.
     */
    @ParameterizedTest
    @CsvSource({"500,0.6877,0.003", "5,0.2575,0.0005", "50,0.5345,0.0045"})
    void shortTubeHasThePublishedCoefficient(double reynolds, double coefficient, double tolerance) {
        assertEquals(coefficient, 1 / Math.sqrt(ShortTube.heads(1 / reynolds)[0]), tolerance);
        double d = 2e-3;
        double l = 4e-3;
        double mu = 0.01;
        double rho = 850;
        double q = reynolds * l / d * Math.PI * d * mu / (4 * rho);
        double area = Math.PI * d * d / 4;
        double drop = rho / 2 * Math.pow(q / area, 2) * ShortTube.heads(1 / reynolds)[0];
        assertEquals(q, new ShortTube(d, l).flow(drop, rho, mu).q(), 1e-12 * q);
    }

    /** Passages: the drop and the flow belong together from creeping to turbulent, without a jump. */
    @Test
    void passageFlowRisesWithoutAJumpThroughTheTransition() {
        PipeLoss pipe = new PipeLoss(6e-3, 0.2, 5e-6, 1.5);
        double before = 0;
        for (double drop = 1; drop < 1e7; drop *= 1.02) {
            Flow flow = pipe.flow(drop, 850, 0.01);
            assertTrue(flow.q() > before && flow.q() < 1.0201 * Math.max(before, flow.q() / 1.02));
            before = flow.q();
        }
    }
}
