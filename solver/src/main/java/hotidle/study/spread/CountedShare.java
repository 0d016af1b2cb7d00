package hotidle.study.spread;

/**
 * A share counted in a sample, with its sampling error.
 *
 * <pre>
 * Interval  of 95 %: E. B. Wilson, J. Amer. Statist. Assoc. 22 (1927) 209 (from memory); it keeps within 0 and 1 and has a width where none or all
 *           were counted. Latin hypercubes are no worse than plain sampling, see {@link LatinHypercube}, so that it is rather too wide
 * </pre>
 *
 * @param count counted
 * @param of    of all
 */
public record CountedShare(long count, long of) {

    /** Two-sided 95 % of a normal distribution. */
    private static final double Z = 1.959963984540054;

    /** The share [-]; NaN of none. */
    public double value() {
        return of == 0 ? Double.NaN : (double) count / of;
    }

    /** Lower end of the interval [-]. */
    public double low() {
        return middle() - half();
    }

    /** Upper end of the interval [-]. */
    public double high() {
        return middle() + half();
    }

    private double middle() {
        return (value() + Z * Z / (2 * of)) / (1 + Z * Z / of);
    }

    private double half() {
        double p = value();
        return Z * Math.sqrt(p * (1 - p) / of + Z * Z / (4.0 * of * of)) / (1 + Z * Z / of);
    }
}
