package hotidle.study.spread;

import hotidle.transmission.WearSize;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * How a size of a build may lie that no gauge has read: what is believed before anything is measured.
 *
 * <pre>
 * SOUND     made to a size and not worn since, new parts or a machined fit: normal about the size in use, cut off where the maker's
 *           inspection would reject it, at ±H and ±2 standard deviations. H is a fifth of the way from new to limit (assumed): for the
 *           bores of the ready circuits, whose limits lie 27 to 50 µm from new, 5 to 10 µm, as the grade IT6 of ISO 286-1:2010,
 *           table 1 (9 to 16 µm over all, 6 to 50 mm)
 * WORN      served, and not looked at: the wear as a share of the way from new to limit is lognormal (it is above zero and grows in
 *           proportion to what is there), half of all fits beyond two thirds and one in four beyond the limit (assumed: a unit that
 *           comes to the bench has served its time), none beyond three times the way
 * ASSUMED   scores and nicks, which no gauge reads: lognormal about the number that the file assumes, with a standard deviation of
 *           the logarithm of a quarter (assumed), cut off at ±2.5 of them
 * MEASURED  read by a gauge: normal about the reading, cut off at ±2 standard deviations, which are 5 µm (assumed: what a shop's
 *           micrometer and bore gauge are good for), in narrow fits a tenth of the way from new to limit
 * Sizes     are taken as independent of each other (assumed). Fits of one unit wear together; where the worn ones are known to be
 *           bad, those not looked at are rather worse than this says
 * Form      size = origin + way·x, or origin + way·eˣ, with x = middle + deviation·z and z standard normal within its cuts
 * </pre>
 *
 * @param size      of the build
 * @param basis     what the belief rests on
 * @param origin    [m] or [m²]
 * @param way       [m] or [m²], with the sign of wear
 * @param logarithm whether x is the logarithm of the share of the way
 * @param middle    of x [-]
 * @param deviation of x without the cuts [-]
 * @param cut       where z ends
 */
public record SizePrior(
        WearSize size,
        Basis basis,
        double origin,
        double way,
        boolean logarithm,
        double middle,
        double deviation,
        Cut cut) {

    /**
     * A standard normal distribution cut off at both ends.
     *
     * @param low    lowest z [-]
     * @param high   highest z [-]
     * @param below  probability below the lowest without the cuts [-]
     * @param inside probability between them without the cuts [-]
     */
    public record Cut(double low, double high, double below, double inside) {
        static Cut of(double low, double high) {
            double below = NORMAL.cumulativeProbability(low);
            return new Cut(low, high, below, NORMAL.cumulativeProbability(high) - below);
        }
    }

    /** What a belief about a size rests on. */
    public enum Basis {
        SOUND("sound"),
        WORN("worn"),
        ASSUMED("assumed"),
        MEASURED("measured");

        private final String word;

        Basis(String word) {
            this.word = word;
        }

        /** The word that users read. */
        public String word() {
            return word;
        }
    }

    // without a generator of its own: nothing is drawn here
    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    /** Half of what a maker lets a sound size lie about, as a share of the way from new to limit (assumed) [-]. */
    static final double TOLERANCE = 0.2;

    /** Standard deviations at which an inspection cuts off (assumed) [-]. */
    private static final double INSPECTED = 2;

    /** Share of the way to the limit that half of all served fits have passed (assumed) [-]. */
    private static final double HALF_WORN = 2.0 / 3;

    /** Share of served fits that have passed their limit (assumed) [-]. */
    private static final double PAST_LIMIT = 0.25;

    /** No fit wears further than this many times the way from new to limit (assumed) [-]. */
    private static final double FURTHEST = 3;

    /** Standard deviation of the logarithm of an assumed number, and where it is cut off (assumed) [-]. */
    private static final double GUESSED = 0.25;

    private static final double GUESS_CUT = 2.5;

    /** What a shop's gauge is good for (assumed) [m], and its share of the way from new to limit in narrow fits [-]. */
    private static final double GAUGE = 5e-6;

    private static final double NARROW = 0.1;

    private static final Cut INSPECTION = Cut.of(-INSPECTED, INSPECTED);
    private static final Cut GUESS = Cut.of(-GUESS_CUT, GUESS_CUT);

    /** Of the logarithm of the share of the way to the limit that a served fit has gone [-]. */
    private static final double WORN_MIDDLE = Math.log(HALF_WORN);

    private static final double WORN_DEVIATION = -WORN_MIDDLE / NORMAL.inverseCumulativeProbability(1 - PAST_LIMIT);
    private static final Cut SERVED =
            Cut.of(Double.NEGATIVE_INFINITY, (Math.log(FURTHEST) - WORN_MIDDLE) / WORN_DEVIATION);

    /** A size made to what it is. */
    public static SizePrior sound(WearSize size) {
        return about(size, Basis.SOUND, TOLERANCE * Math.abs(size.allowance()));
    }

    /** A size read by a gauge. */
    public static SizePrior measured(WearSize size) {
        return about(size, Basis.MEASURED, Math.min(GAUGE, NARROW * Math.abs(size.allowance())));
    }

    private static SizePrior about(WearSize size, Basis basis, double half) {
        return new SizePrior(size, basis, size.value(), half, false, 0, 1 / INSPECTED, INSPECTION);
    }

    /** A size that has served and that nobody has looked at. */
    public static SizePrior worn(WearSize size) {
        return new SizePrior(
                size, Basis.WORN, size.fresh(), size.allowance(), true, WORN_MIDDLE, WORN_DEVIATION, SERVED);
    }

    /** Scores and nicks of an assumed area. */
    public static SizePrior assumed(WearSize size) {
        return new SizePrior(size, Basis.ASSUMED, 0, size.value(), true, 0, GUESSED, GUESS);
    }

    /**
     * The size below which a share of all such sizes lie, counted the way that it wears [m] or [m²].
     *
     * @param share between 0 and 1, both left out where the size has no end there
     */
    public double quantile(double share) {
        return at(NORMAL.inverseCumulativeProbability(cut.below() + share * cut.inside()));
    }

    /** The size at a standard normal z within its cuts [m] or [m²]: where a search takes the belief as a plain normal one. */
    public double at(double z) {
        double x = middle + deviation * Math.min(Math.max(z, cut.low()), cut.high());
        return origin + way * (logarithm ? Math.exp(x) : x);
    }

    /** The standard normal z of a size; infinite where the size is impossible, and beyond its cuts where it lies there. */
    public double z(double value) {
        double share = (value - origin) / way;
        double x = logarithm ? Math.log(Math.max(share, 0)) : share;
        return (x - middle) / deviation;
    }

    /** Mean of the size [m] or [m²], in closed form. */
    public double mean() {
        return origin + way * moment(1);
    }

    /** Standard deviation of the size [m] or [m²], in closed form. */
    public double standardDeviation() {
        double first = moment(1);
        return Math.abs(way) * Math.sqrt(Math.max(moment(2) - first * first, 0));
    }

    /** Mean of the share of the way to a power of 1 or 2, of a normal or lognormal between its cuts [-]. */
    private double moment(int power) {
        if (logarithm) {
            double by = power * deviation;
            return Math.exp(power * middle + by * by / 2)
                    * (NORMAL.cumulativeProbability(cut.high() - by) - NORMAL.cumulativeProbability(cut.low() - by))
                    / cut.inside();
        }
        double first = (NORMAL.density(cut.low()) - NORMAL.density(cut.high())) / cut.inside();
        double second = 1 + (edge(cut.low()) - edge(cut.high())) / cut.inside();
        return power == 1
                ? middle + deviation * first
                : middle * middle + 2 * middle * deviation * first + deviation * deviation * second;
    }

    private static double edge(double z) {
        return Double.isInfinite(z) ? 0 : z * NORMAL.density(z);
    }
}
