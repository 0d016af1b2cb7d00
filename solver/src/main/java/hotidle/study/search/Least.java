package hotidle.study.search;

import java.util.OptionalDouble;
import java.util.function.DoubleFunction;

/**
 * The least of a figure between two numbers at which it is known.
 *
 * <pre>
 * Method    first beside each end, since a figure that rises from an end is least there; then Brent's: the least of the parabola
 *           through the three best points, golden section where that does not close in: R. P. Brent, Algorithms for Minimization
 *           without Derivatives, 1973, ch. 5 (from memory)
 * Range     a figure with one least between the numbers, with or without a kink there; of several one is found. A figure that may
 *           rise from an end and then fall below it, as a film does where a chamber is unloaded, is asked by {@link #anywhere}
 * </pre>
 */
public final class Least {

    private static final double GOLDEN = (3 - Math.sqrt(5)) / 2;
    /** Golden sections that narrow any bracket to rounding: 0.62^60 is 3e-13 (ours). */
    private static final int MOST_TRIALS = 60;

    private Least() {}

    /**
     * The number at which the figure is least.
     *
     * @param low       lower number
     * @param atLow     the figure there
     * @param high      higher number
     * @param atHigh    the figure there
     * @param tolerance to which the number is found, above zero
     * @param figure    the figure; empty where it is not known, which ends the search with the best so far
     */
    public static double between(
            double low,
            double atLow,
            double high,
            double atHigh,
            double tolerance,
            DoubleFunction<OptionalDouble> figure) {
        double end = atLow <= atHigh ? low : high;
        double atEnd = Math.min(atLow, atHigh);
        double inner = end == low ? low + tolerance : high - tolerance;
        if (high - low <= tolerance) {
            return end;
        }
        OptionalDouble beside = figure.apply(inner);
        if (beside.isEmpty() || !(beside.getAsDouble() < atEnd)) {
            return end;
        }
        return inside(low, atLow, high, atHigh, inner, beside.getAsDouble(), tolerance, figure);
    }

    /**
     * The same where the figure is known at a number in between too: below both ends, the search starts there.
     *
     * @param middle   between low and high
     * @param atMiddle the figure there
     */
    public static double between(
            double low,
            double atLow,
            double middle,
            double atMiddle,
            double high,
            double atHigh,
            double tolerance,
            DoubleFunction<OptionalDouble> figure) {
        return atMiddle < atLow && atMiddle < atHigh
                ? inside(low, atLow, high, atHigh, middle, atMiddle, tolerance, figure)
                : between(low, atLow, high, atHigh, tolerance, figure);
    }

    /**
     * The number at which a figure that may jump is least: golden section, which looks inside whatever the figure does at the ends,
     * until a number is below both of its neighbours.
     *
     * @param tolerance to which the number is found, above zero
     * @param figure    the figure; empty where it is not known, which ends the search with the best so far
     */
    public static double anywhere(
            double low,
            double atLow,
            double high,
            double atHigh,
            double tolerance,
            DoubleFunction<OptionalDouble> figure) {
        return anywhere(low, atLow, high, atHigh, Double.NaN, Double.POSITIVE_INFINITY, tolerance, figure);
    }

    /**
     * The same beside a least that is found already: it stays where the first look inside finds nothing below it.
     *
     * @param found   number of that least; one that is not between low and high does not count
     * @param atFound the figure there
     */
    public static double anywhere(
            double low,
            double atLow,
            double high,
            double atHigh,
            double found,
            double atFound,
            double tolerance,
            DoubleFunction<OptionalDouble> figure) {
        double a = low;
        double b = high;
        double atA = atLow;
        double atB = atHigh;
        double left = a + GOLDEN * (b - a);
        double right = b - GOLDEN * (b - a);
        OptionalDouble atLeft = figure.apply(left);
        OptionalDouble atRight = figure.apply(right);
        while (b - a > tolerance && atLeft.isPresent() && atRight.isPresent()) {
            double one = atLeft.getAsDouble();
            double other = atRight.getAsDouble();
            if (low < found && found < high && atFound <= Math.min(one, other)) {
                return found;
            }
            if (one <= other && one < atA) {
                return inside(a, atA, right, other, left, one, tolerance, figure);
            }
            if (other < one && other < atB) {
                return inside(left, one, b, atB, right, other, tolerance, figure);
            }
            if (one <= other) {
                b = right;
                atB = other;
                right = left;
                atRight = atLeft;
                left = a + GOLDEN * (b - a);
                atLeft = figure.apply(left);
            } else {
                a = left;
                atA = one;
                left = right;
                atLeft = atRight;
                right = b - GOLDEN * (b - a);
                atRight = figure.apply(right);
            }
        }
        return atA <= atB ? a : b;
    }

    /** Brent's method from a point inside that is below both ends; the first parabola goes through all three. */
    private static double inside(
            double from,
            double atFrom,
            double to,
            double atTo,
            double start,
            double atStart,
            double tolerance,
            DoubleFunction<OptionalDouble> figure) {
        double a = from;
        double b = to;
        double x = start;
        double w = atFrom <= atTo ? from : to;
        double v = atFrom <= atTo ? to : from;
        double fx = atStart;
        double fw = Math.min(atFrom, atTo);
        double fv = Math.max(atFrom, atTo);
        double step = to - from;
        double before = step;
        double least = tolerance / 2;
        for (int trial = 0; trial < MOST_TRIALS && Math.max(x - a, b - x) > tolerance; trial++) {
            double middle = (a + b) / 2;
            double r = (x - w) * (fx - fv);
            double q = (x - v) * (fx - fw);
            double p = (x - v) * q - (x - w) * r;
            q = 2 * (q - r);
            p = q > 0 ? -p : p;
            q = Math.abs(q);
            boolean parabola = Math.abs(p) < Math.abs(q * before / 2) && p > q * (a - x) && p < q * (b - x) && q > 0;
            before = parabola ? step : x < middle ? b - x : a - x;
            step = parabola ? p / q : GOLDEN * before;
            if (Math.abs(step) < least) {
                step = Math.copySign(least, middle - x);
            }
            double u = x + step;
            OptionalDouble there = figure.apply(u);
            if (there.isEmpty()) {
                return x;
            }
            double fu = there.getAsDouble();
            if (fu <= fx) {
                a = u < x ? a : x;
                b = u < x ? x : b;
                v = w;
                fv = fw;
                w = x;
                fw = fx;
                x = u;
                fx = fu;
            } else {
                a = u < x ? u : a;
                b = u < x ? b : u;
                if (fu <= fw || w == x) {
                    v = w;
                    fv = fw;
                    w = u;
                    fw = fu;
                } else if (fu <= fv || v == x || v == w) {
                    v = u;
                    fv = fu;
                }
            }
        }
        return x;
    }
}
