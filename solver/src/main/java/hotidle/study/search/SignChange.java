package hotidle.study.search;

import java.util.OptionalDouble;

/**
 * Narrows down where a figure that is zero or more at one number falls below zero on the way to another. Ask {@link #next}, tell
 * the figure there, until it is no longer {@link #open}; both ends then are numbers that were tried.
 *
 * <pre>
 * Method    first the secant; then inverse quadratic interpolation where the last three points lie on a curve that it follows, else
 *           the middle: T. R. Chandrupatla, Advances in Engineering Software 28 (1997) 145 (from memory). At least half the
 *           tolerance off the ends; the middle too where an end has no finite figure, and every other time while the bracket is not
 *           halved by two trials. Where that curve, or the line through the last two trials, leads to within half the tolerance of
 *           an end, nine tenths of the tolerance from it are tried, so that the change is caught in between (ours)
 * Range     any figure: where it leaps the leap is found, where it changes sign several times one of the changes
 * </pre>
 */
public final class SignChange {

    /** Trials that may leave more than half of the bracket before its middle is tried (ours). */
    private static final int PATIENCE = 2;

    /** How far beyond a foretold change is looked, so that it is caught between two numbers: this times the way to it [-]. */
    private static final double BEYOND = 1.2;

    /** How far from an end a change next to it is caught, as a share of the tolerance (ours) [-]. */
    private static final double CATCH = 0.9;

    /** Times that a change is to be caught next to an end and is not there, after which that is no longer tried (ours). */
    private static final int MISSES = 2;

    private final double tolerance;
    private double holds;
    private double fails;
    private double above;
    private double below;
    // work space: NaN where there is none yet, so that no comparison with it is true
    private double old = Double.NaN;
    private double figureOfOld = Double.NaN;
    private double width;
    private int trials;
    private double last = Double.NaN;
    private double figureOfLast = Double.NaN;
    private double led = Double.NaN;
    private boolean closing;
    private int missed;
    private double foretold = Double.NaN;
    private double slope = Double.NaN;

    /**
     * A bracket.
     *
     * @param holds     a number at which the figure is zero or more
     * @param above     the figure there; infinite where it has no size
     * @param fails     a number at which it is below zero or not known
     * @param below     the figure there; minus infinity where it has no size
     * @param tolerance width down to which is narrowed, above zero
     */
    public SignChange(double holds, double above, double fails, double below, double tolerance) {
        if (!(above >= 0) || below >= 0 || !(tolerance > 0)) {
            throw new IllegalArgumentException("no change of sign: " + above + " at " + holds + ", " + below + " at "
                    + fails + ", tolerance " + tolerance);
        }
        this.holds = holds;
        this.fails = fails;
        this.above = above;
        this.below = below;
        this.tolerance = tolerance;
        width = Math.abs(fails - holds);
    }

    /**
     * Begins with what a search alike has found.
     *
     * @param number the change there; asked first, where it lies in the bracket
     * @param steep  slope of the figure there, where it is known; next is asked beyond where it leads to
     */
    public void foretell(double number, OptionalDouble steep) {
        foretold = number;
        slope = steep.orElse(Double.NaN);
    }

    /**
     * Begins with the curve through both ends and a number outside of the bracket; one whose figure is not beyond that of the end next
     * to it is not followed.
     *
     * @param number outside of the bracket
     * @param figure there
     */
    public void follow(double number, double figure) {
        boolean good = (number - holds) * (fails - holds) < 0;
        if (Double.isFinite(figure) && (good ? figure > above : figure < below)) {
            foretold = quadratic(number, figure);
        }
    }

    /** Slope of the figure across the bracket. */
    public double slope() {
        return (above - below) / (holds - fails);
    }

    /** Whether the bracket is wider than the tolerance, and has a number between its ends. */
    public boolean open() {
        double middle = holds + (fails - holds) / 2;
        return Math.abs(fails - holds) > tolerance && middle != holds && middle != fails;
    }

    /** The last number known to hold. */
    public double holds() {
        return holds;
    }

    /** The first number known to fail. */
    public double fails() {
        return fails;
    }

    /** The number to try next, between the ends. */
    public double next() {
        if (between(foretold)) {
            return foretold;
        }
        double middle = holds + (fails - holds) / 2;
        closing = false;
        if (!Double.isFinite(above) || !Double.isFinite(below)) {
            return middle;
        }
        double guess = Double.isNaN(old)
                ? fails - below * (fails - holds) / (below - above)
                : followed() ? quadratic(old, figureOfOld) : middle;
        double caught = caught(guess == middle ? led : guess);
        if (between(caught) && missed < MISSES) {
            closing = true;
            return caught;
        }
        if (trials >= PATIENCE) {
            return middle;
        }
        double least = Math.copySign(Math.min(0.5 * tolerance, 0.5 * Math.abs(fails - holds)), fails - holds);
        if (Math.abs(guess - holds) < Math.abs(least)) {
            guess = holds + least;
        } else if (Math.abs(fails - guess) < Math.abs(least)) {
            guess = fails - least;
        }
        return between(guess) ? guess : middle;
    }

    /** Next to an end, so that a change foretold beside it lies in between; NaN where it is foretold elsewhere. */
    private double caught(double change) {
        double way = Math.copySign(CATCH * tolerance, fails - holds);
        if (Math.abs(change - holds) < 0.5 * tolerance) {
            return holds + way;
        }
        return Math.abs(change - fails) < 0.5 * tolerance ? fails - way : Double.NaN;
    }

    /** Tells the figure at the number asked for last; minus infinity where it is below zero and has no size. */
    public void tell(double number, double figure) {
        foretold = number == foretold ? number - BEYOND * figure / slope : Double.NaN;
        slope = Double.NaN;
        led = number - figure * (number - last) / (figure - figureOfLast);
        last = number;
        figureOfLast = figure;
        boolean good = figure >= 0;
        old = good ? holds : fails;
        figureOfOld = good ? above : below;
        if (good) {
            holds = number;
            above = figure;
        } else {
            fails = number;
            below = figure;
        }
        trials = Math.abs(fails - holds) <= width / 2 ? Math.max(trials - 1, 0) : trials + 1;
        width = Math.abs(fails - holds);
        missed += closing && width > tolerance ? 1 : 0;
    }

    /** Goes on with another figure of the same sign at both ends, as when fewer limits are asked. */
    public void restate(double figureAtHolds, double figureAtFails) {
        above = figureAtHolds;
        below = figureAtFails;
        old = Double.NaN;
        figureOfOld = Double.NaN;
        figureOfLast = Double.NaN;
        led = Double.NaN;
    }

    /** Whether number by figure is a curve through the last three points that does not turn within the bracket. */
    private boolean followed() {
        boolean good = (old - holds) * (fails - holds) < 0;
        double last = good ? holds : fails;
        double other = good ? fails : holds;
        double figureOfLast = good ? above : below;
        double figureOfOther = good ? below : above;
        double way = (last - other) / (old - other);
        double rise = (figureOfLast - figureOfOther) / (figureOfOld - figureOfOther);
        return rise * rise < way && (1 - rise) * (1 - rise) < 1 - way;
    }

    private boolean between(double number) {
        return (number - holds) * (fails - number) > 0;
    }

    /** Where the parabola through three points, number by figure, has a figure of nil; NaN without three different figures. */
    private double quadratic(double third, double h) {
        double f = above;
        double g = below;
        return holds * g * h / ((f - g) * (f - h))
                + fails * f * h / ((g - f) * (g - h))
                + third * f * g / ((h - f) * (h - g));
    }
}
