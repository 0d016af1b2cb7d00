package hotidle.law;

/**
 * The flow under a drop, for a law that gives the drop at a flow: Newton's method inside a bracket, to the last digits.
 */
final class Inverse {

    private static final int MOST_STEPS = 200;

    private Inverse() {}

    /** A drop that rises with the flow. */
    interface Law {
        /** Drop at a flow above zero [Pa], and its slope by the flow, in the first two places. */
        double[] dropAt(double q);
    }

    /**
     * The flow at which the law has a drop.
     *
     * @param drop  [Pa], above zero
     * @param upper a flow that the answer does not exceed [m³/s]
     */
    static double flow(double drop, double upper, Law law) {
        double low = 0;
        double high = upper;
        double q = upper;
        for (int step = 0; step < MOST_STEPS; step++) {
            double[] at = law.dropAt(q);
            double miss = at[0] - drop;
            if (miss > 0) {
                high = q;
            } else {
                low = q;
            }
            double next = q - miss / at[1];
            if (!(next > low && next < high)) {
                next = (low + high) / 2;
            }
            if (Math.abs(next - q) <= 1e-16 * q || next == low || next == high) {
                return next;
            }
            q = next;
        }
        return q;
    }
}
