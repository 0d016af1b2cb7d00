package hotidle.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.law.RectangularDuct;
import hotidle.law.Slot;
import hotidle.oil.Oil;
import hotidle.oil.OilAt;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What leaks past a sealing ring: the four walls of its joint, and what warming does to joint and clearance. */
class SealingRingTest {

    private static final double STEEL = 12e-6;
    private static final double IRON = 11e-6;
    private static final double ALUMINIUM = 24e-6;
    private static final double BORE = 0.060;
    private static final double END_GAP = 0.20e-3;
    private static final double CLEARANCE = 0.10e-3;
    private static final double WIDTH = 2.4e-3;

    private static SealingRing ring(double bore, double shaft, double ring) {
        return new SealingRing(
                new Fit(BORE, BORE - 2 * CLEARANCE, bore, shaft, Fit.REFERENCE_TEMPERATURE),
                new Fit(Math.PI * BORE, Math.PI * BORE - END_GAP, bore, ring, Fit.REFERENCE_TEMPERATURE),
                WIDTH,
                0.01e-6,
                2e-3,
                1);
    }

    /** Leak at 10 bar of oil of one viscosity, the ring at a temperature [°C]; the side leaks next to nothing here. */
    private static double leak(SealingRing ring, double celsius) {
        OilAt oil = new OilAt(
                Oil.ZERO_CELSIUS + celsius, 800, 5e-3, 0, 0, OilAt.STANDARD_ATMOSPHERE, -4e4, Optional.empty());
        Setting setting = new Setting(10, "first", Setting.Lockup.OFF, oil, 0, Map.of());
        return ring.law(setting)
                .streams(Reading.of(ring.form(), 1e6, 0))
                .iterator()
                .next()
                .volume();
    }

    @Test
    void theSideWallsOfAJointHoldOilBack() {
        double plates = Slot.flat(END_GAP, CLEARANCE, WIDTH).viscous();
        double joint = RectangularDuct.loss(END_GAP, CLEARANCE, WIDTH).viscous();
        // of a duct twice as wide as high; f·Re 62.19 against 96 between plates, on hydraulic diameters in the ratio 2
        // to 3
        assertEquals(62.19 / 96 * 9 / 4, joint / plates, 1e-3);
    }

    @Test
    void aJointIsTheSameOnItsSide() {
        assertEquals(RectangularDuct.loss(END_GAP, CLEARANCE, WIDTH), RectangularDuct.loss(CLEARANCE, END_GAP, WIDTH));
        double tall =
                RectangularDuct.loss(CLEARANCE * (1 - 1e-9), CLEARANCE, WIDTH).viscous();
        double wide =
                RectangularDuct.loss(CLEARANCE * (1 + 1e-9), CLEARANCE, WIDTH).viscous();
        assertEquals(tall, wide, 1e-8 * tall);
    }

    /** Twice the mean of u³ − u² over the exact profile of a duct, u over its mean, by the midpoint rule. */
    @Test
    void theHeadsLostInAJointAreThoseOfItsProfile() {
        for (double ratio : new double[] {0.05, 0.2, 0.5, 0.8, 1}) {
            double area = ratio;
            double heads = 2 * area * area * RectangularDuct.loss(1, ratio, 1).kinetic();
            assertEquals(1 + growth(ratio), heads, 3e-3, "sides " + ratio);
        }
    }

    private static double growth(double ratio) {
        int n = 200;
        double[] sums = new double[3];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double u = profile((i + 0.5) / n, (j + 0.5) / n, ratio);
                sums[0] += u / (n * n);
                sums[1] += u * u / (n * n);
                sums[2] += u * u * u / (n * n);
            }
        }
        return 2 * (sums[2] / Math.pow(sums[0], 3) - sums[1] / Math.pow(sums[0], 2));
    }

    /** Velocity in a quarter of the duct, x along its longer half side, y along its shorter one, to a factor. */
    private static double profile(double x, double y, double ratio) {
        double u = 0;
        for (int k = 1; k < 60; k += 2) {
            double arg = k * Math.PI / (2 * ratio);
            double cosh = Math.exp(arg * (x - 1)) * (1 + Math.exp(-2 * arg * x)) / (1 + Math.exp(-2 * arg));
            u += (k % 4 == 1 ? 1 : -1) * (1 - cosh) * Math.cos(k * Math.PI / 2 * y) / Math.pow(k, 3);
        }
        return u;
    }

    @Test
    void anIronRingInAnAluminiumDrumOpensItsJointWhenHot() {
        SealingRing ring = ring(ALUMINIUM, ALUMINIUM, IRON);
        double opened = Math.PI * BORE * (ALUMINIUM - IRON) * 90;
        assertEquals(END_GAP + opened, ring.joint().gap(Fit.REFERENCE_TEMPERATURE + 90), 1e-6);
        assertTrue(leak(ring, 110) > 1.8 * leak(ring, 20), leak(ring, 20) + " " + leak(ring, 110));
    }

    @Test
    void anAluminiumShaftInASteelDrumClosesTheClearanceWhenHot() {
        SealingRing ring = ring(STEEL, ALUMINIUM, STEEL);
        assertTrue(leak(ring, 110) < 0.6 * leak(ring, 20), leak(ring, 20) + " " + leak(ring, 110));
    }

    @Test
    void aRingWhoseEndsMeetLeaksByItsSideAlone() {
        SealingRing butted = ring(STEEL, STEEL, 30e-6);
        assertTrue(butted.fits().get("end gap").gap(Fit.REFERENCE_TEMPERATURE + 90) < 0);
        double side = leak(butted, 110);
        assertTrue(side > 0 && side < 1e-3 * leak(butted, 20), side + "");
    }
}
