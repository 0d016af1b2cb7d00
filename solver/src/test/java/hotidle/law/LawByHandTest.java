package hotidle.law;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Laws where the answer can be worked out by hand, and what they refuse. */
class LawByHandTest {

    private static final double DENSITY = 850;
    private static final double VISCOSITY = 9e-3;

    /** A hole as long as it is wide: 24/d³ for its edge and Poiseuille's 128·l/(π·d⁴) for its length. */
    @Test
    void aHoleWithLengthLosesAtItsEdgeAndAlongItsWall() {
        double d = 2e-3;
        double expected = 24 / Math.pow(d, 3) + 128 * d / (Math.PI * Math.pow(d, 4));
        assertEquals(expected, Hole.viscous(d, d), 1e-12 * expected);
    }

    /** q = π·h³·Δp·s/(6·μ·ln(ro/ri)), and 1.686 heads of the velocity at the inner rim, where it is fastest. */
    @Test
    void aSectorOfADiscLeaksItsShareAndLosesTheHeadAtItsInnerRim() {
        SeriesLoss sector = Slot.disc(0.02, 0.03, 40e-6, 0.4);
        double viscous = 6 * Math.log(1.5) / (Math.PI * 64e-15 * 0.4);
        double area = 2 * Math.PI * 0.02 * 0.4 * 40e-6;
        assertEquals(viscous, sector.viscous(), 1e-12 * viscous);
        assertEquals(1.686 / (2 * area * area), sector.kinetic(), 1e-9 * sector.kinetic());
    }

    @Test
    void aGapThatIsClosedIsShutAndOneOfAHairIsNot() {
        assertSame(SeriesLoss.SHUT, Slot.annular(0.014, 0, 8e-3, 0));
        assertSame(SeriesLoss.SHUT, Slot.annular(0.014, -1e-6, 8e-3, 0));
        assertSame(SeriesLoss.SHUT, Slot.disc(0.02, 0.03, 0, 1));
        assertSame(SeriesLoss.SHUT, Slot.disc(0.02, 0.03, 1e-6, 0));
        assertSame(SeriesLoss.SHUT, Slot.flat(0.02, 0, 1e-3));
        assertSame(SeriesLoss.SHUT, Slot.flat(0, 1e-6, 1e-3));
        assertSame(SeriesLoss.SHUT, RectangularDuct.loss(0, 1e-3, 1e-3));
        assertSame(SeriesLoss.SHUT, RectangularDuct.loss(1e-3, -1e-6, 1e-3));
    }

    /** K for the growth of the profile as integrated from it: 24/35 between wide plates, 1.5515 in a square. */
    @ParameterizedTest
    @CsvSource({"1e-9, 0.685714", "0.5, 1.3823", "0.25, 1.0752", "1, 1.5515"})
    void aDuctLosesTheHeadOfItsExitAndOfItsProfile(double ratio, double growth) {
        SeriesLoss duct = RectangularDuct.loss(ratio * 1e-3, 1e-3, 2e-3);
        double area = ratio * 1e-6;
        assertEquals(1 + growth, duct.kinetic() * 2 * area * area, 0.0025);
        SeriesLoss turned = RectangularDuct.loss(1e-3, ratio * 1e-3, 2e-3);
        assertEquals(duct.kinetic(), turned.kinetic());
        assertEquals(duct.viscous(), turned.viscous());
    }

    /** Three equal ways side by side pass three times as much under one drop, two different ones the sum. */
    @Test
    void waysSideBySideAddUp() {
        Restriction edge = new SharpEdge(1e-3, 0, 0);
        Restriction tube = new ShortTube(1e-3, 1e-3);
        SeriesLoss hole = Hole.loss(1e-3, 0, 0.7);
        double one = edge.flow(2e5, DENSITY, VISCOSITY).q();
        double other = tube.flow(2e5, DENSITY, VISCOSITY).q();
        double third = hole.flow(2e5, DENSITY, VISCOSITY).q();
        assertEquals(
                3 * one,
                Restriction.several(edge, 3).flow(2e5, DENSITY, VISCOSITY).q(),
                1e-15 * one);
        assertEquals(
                one + other,
                Restriction.beside(edge, tube).flow(2e5, DENSITY, VISCOSITY).q(),
                1e-15 * one);
        assertEquals(4 * third, hole.times(4).flow(2e5, DENSITY, VISCOSITY).q(), 1e-14 * third);
    }

    /** Both losses in series under one flow: 2·10⁹·μ·q and then 5·10¹³·ρ·q². */
    @Test
    void lossesInSeriesShareOneFlow() {
        SeriesLoss both = new SeriesLoss(2e9, 1e13).then(new SeriesLoss(1e9, 4e13));
        double q = 1e-4;
        double drop = 3e9 * VISCOSITY * q + 5e13 * DENSITY * q * q;
        assertEquals(q, both.flow(drop, DENSITY, VISCOSITY).q(), 1e-15);
        assertEquals(5e13 * DENSITY * q * q, both.kineticDrop(q, DENSITY), 1e-6);
    }

    /** Halfway up, the curtain π·d·x is a hole of that area: sharp, and in creeping flow that of the round hole. */
    @Test
    void aPoppetFlowsAsAHoleOfItsCurtain() {
        Poppet poppet = new Poppet(8e-3, 4000, 20, 1e-3, 0.7, SeriesLoss.SHUT);
        double half = (poppet.cracking() + poppet.fullLiftPressure()) / 2;
        double round = Math.sqrt(4 * 8e-3 * 0.5e-3);
        for (double viscosity : new double[] {1e-4, 9e-3, 5, 500}) {
            double hole =
                    Hole.loss(round, 0, 0.7).flow(half, DENSITY, viscosity).q();
            assertEquals(hole, poppet.flow(half, DENSITY, viscosity).q(), 1e-12 * hole);
        }
        assertEquals(
                0, poppet.flow(0.99 * poppet.cracking(), DENSITY, VISCOSITY).q());
    }

    @Test
    void aPoppetIsRefusedWithoutSeatSpringOrLift() {
        assertEquals(0, new Poppet(8e-3, 4000, 0, 1e-3, 0.3, SeriesLoss.SHUT).cracking());
        assertEquals(1, new Poppet(8e-3, 4000, 0, 1e-3, 1, SeriesLoss.SHUT).dischargeCoefficient());
        double[][] wrong = {
            {0, 4000, 20, 1e-3, 0.7},
            {8e-3, 0, 20, 1e-3, 0.7},
            {8e-3, 4000, -1, 1e-3, 0.7},
            {8e-3, 4000, 20, 0, 0.7},
            {8e-3, 4000, 20, 1e-3, 0.29},
            {8e-3, 4000, 20, 1e-3, 1.01}
        };
        for (double[] one : wrong) {
            assertThrows(
                    IllegalArgumentException.class,
                    () -> new Poppet(one[0], one[1], one[2], one[3], one[4], SeriesLoss.SHUT));
        }
    }

    @Test
    void aRatedPointIsRefusedWithoutFlowDropOrOil() {
        assertEquals(0, new RatedPoint(1e-4, 1e5, 0.01, 850, 0).loss().kinetic());
        double[][] wrong = {
            {0, 1e5, 0.01, 850, 0.3},
            {1e-4, 0, 0.01, 850, 0.3},
            {1e-4, 1e5, 0, 850, 0.3},
            {1e-4, 1e5, 0.01, 0, 0.3},
            {1e-4, 1e5, 0.01, 850, 1},
            {1e-4, 1e5, 0.01, 850, -0.1}
        };
        for (double[] one : wrong) {
            assertThrows(IllegalArgumentException.class, () -> new RatedPoint(one[0], one[1], one[2], one[3], one[4]));
        }
        assertThrows(IllegalArgumentException.class, () -> new SeriesLoss(0, 1));
        assertThrows(IllegalArgumentException.class, () -> new SeriesLoss(1, -1));
        assertThrows(IllegalArgumentException.class, () -> new SeriesLoss(Double.NaN, 1));
    }

    /** Two holes of 3 mm wet 6·π mm, and so do two pipes. */
    @Test
    void severalWaysWetAllTheirWalls() {
        assertEquals(6e-3 * Math.PI, Channel.hole(3e-3, 2).perimeter(), 1e-15);
        assertEquals(6e-3 * Math.PI, Channel.pipe(3e-3, 2).perimeter(), 1e-15);
    }

    @Test
    void aCoolerWithoutTransferUnitsGivesNothingAndOneOfNoneIsRefused() {
        for (Effectiveness.Arrangement one : Effectiveness.Arrangement.values()) {
            assertEquals(0, one.effectiveness(0, 0.5), one.name());
            assertEquals(0, one.effectiveness(0, 1), one.name());
            assertEquals(1 - Math.exp(-1.3), one.effectiveness(1.3, 0), 1e-14, one.name());
            assertThrows(IllegalArgumentException.class, () -> one.effectiveness(-0.1, 0.5), one.name());
            assertThrows(IllegalArgumentException.class, () -> one.effectiveness(1, 1.01), one.name());
            assertThrows(IllegalArgumentException.class, () -> one.effectiveness(1, -0.01), one.name());
        }
    }

    /** Crossflow of many transfer units still adds up: all of the smaller stream's heat is given off. */
    @Test
    void anEndlessCoolerGivesOffAllThatItCould() {
        assertEquals(1, Effectiveness.Arrangement.CROSSFLOW.effectiveness(36, 0.01), 1e-12);
        assertEquals(1, Effectiveness.Arrangement.COUNTERFLOW.effectiveness(200, 0.5), 1e-12);
        assertEquals(1 / 1.5, Effectiveness.Arrangement.PARALLEL.effectiveness(200, 0.5), 1e-12);
    }
}
