package hotidle.study.spread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.junit.jupiter.api.Test;

/** Sums that come out the same however a run is split. */
class ExactSumTest {

    private static final double[] NUMBERS =
            new Random(3).doubles(999).map(x -> Math.exp(60 * x - 30)).toArray();

    private static ExactSum of(int from, int to) {
        ExactSum sum = ExactSum.NONE;
        for (int i = from; i < to; i++) {
            sum = sum.plus(NUMBERS[i]);
        }
        return sum;
    }

    @Test
    void partsAddUpToTheSameBitsInAnyOrder() {
        ExactSum whole = of(0, 999);
        ExactSum parts = of(500, 999).plus(of(0, 100)).plus(of(100, 500));
        assertEquals(0, whole.sum().compareTo(parts.sum()));
        assertEquals(whole.mean(), parts.mean());
        assertEquals(whole.variance(), parts.variance());
        double backwards = 0;
        for (int i = 998; i >= 0; i--) {
            backwards += NUMBERS[i];
        }
        assertNotEquals(Arrays.stream(NUMBERS).reduce(0, (sum, one) -> sum + one), backwards, 0);
    }

    @Test
    void meanAndVarianceAreThoseOfAnyTextbook() {
        SummaryStatistics oracle = new SummaryStatistics();
        Arrays.stream(NUMBERS).limit(50).forEach(oracle::addValue);
        ExactSum sum = of(0, 50);
        assertEquals(oracle.getMean(), sum.mean(), 1e-12 * oracle.getMean());
        assertEquals(oracle.getVariance(), sum.variance(), 1e-9 * oracle.getVariance());
        assertEquals(Math.sqrt(oracle.getVariance() / 50), sum.standardError(), 1e-9 * sum.standardError());
    }

    @Test
    void ofNothingNothingIsKnown() {
        assertTrue(Double.isNaN(ExactSum.NONE.mean()));
        assertTrue(Double.isNaN(ExactSum.NONE.plus(1).variance()));
    }
}
