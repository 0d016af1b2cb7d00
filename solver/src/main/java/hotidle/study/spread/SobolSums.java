package hotidle.study.spread;

import java.util.ArrayList;
import java.util.List;

/**
 * How much of the variance of an answer each of its dimensions brings: sums that parts of a run add up.
 *
 * <pre>
 * Design    rows of two independent points a and b, and for each dimension i the point aᵢ: a with its i-th share from b
 * First     S = Vᵢ/V, Vᵢ = mean of f(b)·(f(aᵢ) − f(a)): A. Saltelli and others, Computer Physics Communications 181 (2010) 259 (from memory),
 *           table 2, row b. It is the share of the variance that goes when the dimension alone is known
 * Total     T = mean of (f(a) − f(aᵢ))²/2, over V: M. J. W. Jansen, Computer Physics Communications 117 (1999) 35 (from memory); row f of the same
 *           table. It is the share that stays when all others are known
 * Variance  V of all f(a) and f(b) together
 * Numerics  f is counted from a level near its mean, which changes no expectation and makes the error of S smaller (row b holds for
 *           any level)
 * Error     standard error of the mean over rows, over V; that of V itself is left out
 * Range     dimensions are independent; rows in which any answer is not known are left out, and counted
 * </pre>
 *
 * @param values f(a) and f(b)
 * @param first  f(b)·(f(aᵢ) − f(a)), for each dimension
 * @param total  (f(a) − f(aᵢ))²/2, for each dimension
 * @param left   rows left out
 */
public record SobolSums(ExactSum values, List<ExactSum> first, List<ExactSum> total, long left) {

    public SobolSums {
        first = List.copyOf(first);
        total = List.copyOf(total);
    }

    /** A share of the variance with its standard error [-]. */
    public record VarianceShare(double value, double error) {}

    /** Of no rows. */
    static SobolSums none(int dimensions) {
        List<ExactSum> none = java.util.Collections.nCopies(dimensions, ExactSum.NONE);
        return new SobolSums(ExactSum.NONE, none, none, 0);
    }

    /**
     * With one row more.
     *
     * @param a       f(a)
     * @param b       f(b)
     * @param changed f(aᵢ), for each dimension
     * @param level   from which f is counted, the same in all parts
     */
    SobolSums plus(double a, double b, double[] changed, double level) {
        boolean known = Double.isFinite(a) && Double.isFinite(b);
        for (double one : changed) {
            known &= Double.isFinite(one);
        }
        if (!known) {
            return new SobolSums(values, first, total, left + 1);
        }
        List<ExactSum> firsts = new ArrayList<>();
        List<ExactSum> totals = new ArrayList<>();
        for (int i = 0; i < changed.length; i++) {
            double step = changed[i] - a;
            firsts.add(first.get(i).plus((b - level) * step));
            totals.add(total.get(i).plus(step * step / 2));
        }
        return new SobolSums(values.plus(a - level).plus(b - level), firsts, totals, left);
    }

    /** Both together. */
    SobolSums plus(SobolSums other) {
        return new SobolSums(
                values.plus(other.values), both(first, other.first), both(total, other.total), left + other.left);
    }

    private static List<ExactSum> both(List<ExactSum> one, List<ExactSum> other) {
        List<ExactSum> both = new ArrayList<>();
        for (int i = 0; i < one.size(); i++) {
            both.add(one.get(i).plus(other.get(i)));
        }
        return both;
    }

    /** Variance of the answer. */
    public double variance() {
        return values.variance();
    }

    /** First-order share of a dimension; not a number where the answer does not vary. */
    public VarianceShare first(int dimension) {
        return share(first.get(dimension));
    }

    /** Total share of a dimension; not a number where the answer does not vary. */
    public VarianceShare total(int dimension) {
        return share(total.get(dimension));
    }

    private VarianceShare share(ExactSum part) {
        return variance() > 0
                ? new VarianceShare(part.mean() / variance(), part.standardError() / variance())
                : new VarianceShare(Double.NaN, Double.NaN);
    }
}
