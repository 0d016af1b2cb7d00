package hotidle.law;

/**
 * The flow under a drop, for a law that gives the drop at a flow: Newton's method inside a bracket, to the last digits.
 */
final class Inverse {

    private static final int MOST_STEPS = 200;

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
