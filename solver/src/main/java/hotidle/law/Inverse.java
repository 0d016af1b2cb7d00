package hotidle.law;

/**
 * The flow under a drop, for a law that gives the drop at a flow: Newton's method inside a bracket, to the last digits.
 *
 * <pre>
 * Numerics  a drop goes with a power of the flow between 1 and 2 that hardly changes, so that Newton's step is taken in the logarithms
 *           of both while it is long; a step this short leaves an error of its square, which is below rounding
 * </pre>
 */
final class Inverse {

    private static final int MOST_STEPS = 200;

    /** A step that is the last one, and one that is short, as shares of the flow (ours) [-]. */
    private static final double LAST = 1e-9;

    private static final double SHORT = 1e-3;

    private Inverse() {}

    /** A drop that rises with the flow. */
    interface DropLaw {
        /** Writes the drop at a flow above zero [Pa], and its slope by the flow, into the first two places. */
        void dropAt(double q, double density, double viscosity, double[] at);
    }

    /**
     * The flow at which the law has a drop.
     *
     * @param drop      [Pa], above zero
     * @param upper     a flow that the answer does not exceed [m³/s]
     * @param density   [kg/m³]
     * @param viscosity [Pa·s]
     * @param at        work space
     */
    static double flow(double drop, double upper, DropLaw law, double density, double viscosity, double[] at) {
        double low = 0;
        double high = upper;
        double q = upper;
        for (int step = 0; step < MOST_STEPS; step++) {
            law.dropAt(q, density, viscosity, at);
            double miss = at[0] - drop;
            if (miss > 0) {
                high = q;
            } else {
                low = q;
            }
            double next = Math.abs(miss) > SHORT * drop
                    ? q * Math.exp(Math.log(drop / at[0]) * at[0] / (at[1] * q))
                    : q - miss / at[1];
            if (Math.abs(next - q) <= LAST * q) {
                return next;
            }
            if (!(next > low && next < high)) {
                next = (low + high) / 2;
            }
            if (next == low || next == high) {
                return next;
            }
            q = next;
        }
        return q;
    }
}
