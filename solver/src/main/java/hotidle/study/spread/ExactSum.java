package hotidle.study.spread;

import java.math.BigDecimal;

/**
 * Sums of numbers without rounding, so that parts of a run add up to the same bits in any order.
 *
 * @param count   of the numbers
 * @param sum     of them, exact
 * @param squares sum of their squares, each square rounded as a double is
 */
public record ExactSum(long count, BigDecimal sum, BigDecimal squares) {

    /** Of no numbers. */
    static final ExactSum NONE = new ExactSum(0, BigDecimal.ZERO, BigDecimal.ZERO);

    /** With one number more. */
    ExactSum plus(double value) {
        return new ExactSum(count + 1, sum.add(new BigDecimal(value)), squares.add(new BigDecimal(value * value)));
    }

    /** Both together. */
    ExactSum plus(ExactSum other) {
        return new ExactSum(count + other.count, sum.add(other.sum), squares.add(other.squares));
    }

    /** Their mean; NaN of no numbers. */
    public double mean() {
        return count == 0 ? Double.NaN : sum.doubleValue() / count;
    }

    /** Their variance, with one number less than there are in the divisor; NaN below two. */
    public double variance() {
        if (count < 2) {
            return Double.NaN;
        }
        BigDecimal off = squares.multiply(BigDecimal.valueOf(count)).subtract(sum.multiply(sum));
        return Math.max(off.doubleValue(), 0) / count / (count - 1);
    }

    /** Standard error of their mean as of plain sampling; NaN below two. */
    public double standardError() {
        return Math.sqrt(variance() / count);
    }
}
