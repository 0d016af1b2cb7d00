package hotidle.newton;

/**
 * Slopes by differences.
 *
 * <pre>
 * Formula   f' = (8·(f(h) − f(−h)) − (f(2h) − f(−2h)))/(12·h), exact for polynomials up to the fourth degree; M. Abramowitz,
 *           I. A. Stegun, Handbook of Mathematical Functions, 1964, 25.3.6 and table 25.2 (from memory)
 * </pre>
 */
public final class CentralDifference {

    private CentralDifference() {}

    /** Several functions of one number. */
    public interface Functions {
        /** Their values at a shift from where the slope is asked. */
        double[] at(double shift);
    }

    /** Slopes of functions that are known to both sides. */
    public static double[] central(double step, Functions functions) {
        double[] up = functions.at(step);
        double[] down = functions.at(-step);
        double[] farUp = functions.at(2 * step);
        double[] farDown = functions.at(-2 * step);
        double[] slopes = new double[up.length];
        for (int i = 0; i < slopes.length; i++) {
            slopes[i] = (8 * (up[i] - down[i]) - (farUp[i] - farDown[i])) / (12 * step);
        }
        return slopes;
    }
}
