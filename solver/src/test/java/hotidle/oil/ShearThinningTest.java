package hotidle.oil;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** An oil thickened by a polymer is thinner while it is sheared. */
class ShearThinningTest {

    private static final ShearThinning USUAL = new ShearThinning(0.3, 3e3);

    @Test
    void halfOfTheLossIsThereAtItsStressAndAllOfItFarBeyond() {
        assertEquals(1, USUAL.left(0));
        assertEquals(0.85, USUAL.left(3e3), 1e-12);
        assertEquals(0.7, USUAL.left(3e9), 1e-6);
        assertEquals(1, ShearThinning.NONE.left(1e6));
    }

    /** 1.75 mPa·s at 150 °C and 1,000,000 1/s: a fluid may lose 0.25 mPa·s of it by a published claim. */
    @Test
    void aUsualFluidLosesASeventhInTheHighShearTest() {
        double rest = 2.7e-3;
        assertEquals(0.25 / 1.75, 1 - USUAL.left(rest * 1e6), 2e-3);
    }

    @Test
    void theSlopeIsThatOfTheLogarithms() {
        for (double sheared : new double[] {1, 300, 3e3, 4e4, 1e7}) {
            double step = 1e-5;
            double slope = (Math.log(USUAL.left(sheared * (1 + step))) - Math.log(USUAL.left(sheared * (1 - step))))
                    / (2 * step);
            assertEquals(slope, USUAL.leftSlope(sheared), 1e-8);
        }
    }

    @Test
    void anOilCannotLoseAllItsViscosity() {
        assertThrows(IllegalArgumentException.class, () -> new ShearThinning(1, 3e3));
        assertThrows(IllegalArgumentException.class, () -> new ShearThinning(0.3, 0));
    }
}
