package hotidle.film;

/**
 * Cubic spline over equally spaced knots: value, slope and curvature are continuous.
 *
 * <pre>
 * Formula   inside, s[i−1] + 4·s[i] + s[i+1] = 3·(f[i+1] − f[i−1]) for the slopes s per step; between knots Hermite's cubic
 * Ends      slopes of the quartic through the five outermost knots; a natural end would cost up to 1 % here
 * Source    C. de Boor, A Practical Guide to Splines, 1978, ch. IV (from memory)
 * </pre>
 */
final class CubicSpline {

    private final double step;
    private final double[] value;
    private final double[] slope;

    /**
     * A spline from 0 to step·(values − 1).
     *
     * @param step   distance of the knots
     * @param values at least five
     */
    CubicSpline(double step, double[] values) {
        this.step = step;
        value = values.clone();
        slope = slopes(value);
    }

    private static double[] slopes(double[] f) {
        int last = f.length - 1;
        double[] s = new double[f.length];
        double[] ratio = new double[f.length];
        s[0] = (-25 * f[0] + 48 * f[1] - 36 * f[2] + 16 * f[3] - 3 * f[4]) / 12;
        s[last] = (25 * f[last] - 48 * f[last - 1] + 36 * f[last - 2] - 16 * f[last - 3] + 3 * f[last - 4]) / 12;
        for (int i = 1; i < last; i++) {
            double pivot = 4 - ratio[i - 1];
            ratio[i] = 1 / pivot;
            s[i] = (3 * (f[i + 1] - f[i - 1]) - s[i - 1]) / pivot;
        }
        for (int i = last - 1; i > 0; i--) {
            s[i] -= ratio[i] * s[i + 1];
        }
        return s;
    }

    double value(double x) {
        int i = interval(x);
        double t = x / step - i;
        double rise = value[i + 1] - value[i];
        double a = slope[i] - rise;
        double b = rise - slope[i + 1];
        return value[i] + t * rise + t * (1 - t) * (a * (1 - t) + b * t);
    }

    double slope(double x) {
        int i = interval(x);
        double t = x / step - i;
        double rise = value[i + 1] - value[i];
        double a = slope[i] - rise;
        double b = rise - slope[i + 1];
        return (rise + (1 - 2 * t) * (a * (1 - t) + b * t) + t * (1 - t) * (b - a)) / step;
    }

    private int interval(double x) {
        return Math.max(0, Math.min((int) (x / step), value.length - 2));
    }
}
