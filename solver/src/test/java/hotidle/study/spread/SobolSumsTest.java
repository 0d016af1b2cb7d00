package hotidle.study.spread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Shares of the variance against published functions whose shares are known. */
class SobolSumsTest {

    private static final int BLOCKS = 100;
    private static final int ROWS = 200;

    /** An error of four standard errors is chance once in 16,000 times. */
    private static final double CHANCE = 4;

    private static SobolSums sums(int dimensions, double level, ToDoubleFunction<double[]> function) {
        SobolSums sums = SobolSums.none(dimensions);
        for (int block = 0; block < BLOCKS; block++) {
            for (double[] row : LatinHypercube.block(7, 1, block, ROWS, 2 * dimensions)) {
                sums = sums.plus(row(row, dimensions, level, function));
            }
        }
        return sums;
    }

    private static SobolSums row(double[] row, int dimensions, double level, ToDoubleFunction<double[]> function) {
        double[] a = Arrays.copyOf(row, dimensions);
        double[] b = Arrays.copyOfRange(row, dimensions, 2 * dimensions);
        double[] changed = new double[dimensions];
        for (int i = 0; i < dimensions; i++) {
            double[] other = a.clone();
            other[i] = b[i];
            changed[i] = function.applyAsDouble(other);
        }
        return SobolSums.none(dimensions).plus(function.applyAsDouble(a), function.applyAsDouble(b), changed, level);
    }

    private static void near(double published, SobolSums.VarianceShare found, double narrow) {
        assertTrue(found.error() < narrow, "error " + found.error());
        assertEquals(published, found.value(), CHANCE * found.error() + 1e-3);
    }

    /**
     * T. Ishigami, T. Homma, ISUMA '90, 1990, p. 398: sin x₁ + 7·sin² x₂ + 0.1·x₃⁴·sin x₁ on −π to π. Shares to four digits as printed
     * in A. Saltelli and others, Global Sensitivity Analysis: The Primer, 2008, §4.7 (both from memory).
     */
    @Test
    void ishigami() {
        SobolSums sums = sums(3, 3.5, x -> {
            double one = Math.sin(Math.PI * (2 * x[0] - 1));
            double two = Math.sin(Math.PI * (2 * x[1] - 1));
            double three = Math.PI * (2 * x[2] - 1);
            return one + 7 * two * two + 0.1 * Math.pow(three, 4) * one;
        });
        double variance = 49.0 / 8 + 0.1 * Math.pow(Math.PI, 4) / 5 + 0.01 * Math.pow(Math.PI, 8) / 18 + 0.5;
        assertEquals(13.8446, variance, 1e-4);
        assertEquals(variance, sums.variance(), 0.02 * variance);
        near(0.3139, sums.first(0), 0.015);
        near(0.4424, sums.first(1), 0.015);
        near(0, sums.first(2), 0.015);
        near(0.5576, sums.total(0), 0.015);
        near(0.4424, sums.total(1), 0.015);
        near(0.2437, sums.total(2), 0.015);
    }

    /**
     * I. M. Sobol', Math. Modelling Comput. Experiments 1 (1993) 407: Π(|4·xᵢ − 2| + aᵢ)/(1 + aᵢ); shares to three digits for
     * a = 0, 1, 4.5, 9, 99, 99, 99, 99 as printed by A. Saltelli and others 2010 (both from memory), and by their closed form.
     */
    @Test
    void sobolG() {
        double[] a = {0, 1, 4.5, 9, 99, 99, 99, 99};
        SobolSums sums = sums(8, 1, x -> {
            double product = 1;
            for (int i = 0; i < a.length; i++) {
                product *= (Math.abs(4 * x[i] - 2) + a[i]) / (1 + a[i]);
            }
            return product;
        });
        double[] alone =
                Arrays.stream(a).map(one -> 1 / (3 * (1 + one) * (1 + one))).toArray();
        double all = Arrays.stream(alone).reduce(1, (product, one) -> product * (1 + one));
        assertEquals(0.716, alone[0] / (all - 1), 5e-4);
        assertEquals(0.179, alone[1] / (all - 1), 5e-4);
        assertEquals(0.788, alone[0] * all / (1 + alone[0]) / (all - 1), 1e-3);
        assertEquals(0.242, alone[1] * all / (1 + alone[1]) / (all - 1), 1e-3);
        assertEquals(all - 1, sums.variance(), 0.02 * (all - 1));
        for (int i = 0; i < a.length; i++) {
            near(alone[i] / (all - 1), sums.first(i), 0.015);
            near(alone[i] * all / (1 + alone[i]) / (all - 1), sums.total(i), 0.015);
        }
    }

    @Test
    void aRowWithAnAnswerThatIsNotKnownIsLeftOutAndCounted() {
        SobolSums sums = SobolSums.none(1)
                .plus(1, 2, new double[] {Double.NaN}, 0)
                .plus(Double.POSITIVE_INFINITY, 2, new double[] {1}, 0)
                .plus(1, 2, new double[] {2}, 0);
        assertEquals(2, sums.left());
        assertEquals(2, sums.values().count());
        assertEquals(0.5, sums.variance(), 1e-15);
    }

    @Test
    void whatDoesNotVaryHasNoShares() {
        SobolSums sums = SobolSums.none(1).plus(1, 1, new double[] {1}, 0).plus(1, 1, new double[] {1}, 0);
        assertTrue(Double.isNaN(sums.first(0).value()));
        assertTrue(Double.isNaN(sums.total(0).error()));
    }
}
