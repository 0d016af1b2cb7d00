package hotidle.newton;

/**
 * Time steps through the dynamics of the circuit until nothing moves: pseudo-transient continuation. Where it ends is a state that the
 * circuit itself would settle in.
 *
 * <pre>
 * Method    implicit Euler steps of node compliance and spool damping, {@link Balance}, twice as long each time, a quarter where
 *           Newton fails; C. T. Kelley, D. E. Keyes, "Convergence analysis of pseudo-transient continuation", SIAM J. Numer. Anal.
 *           35 (1998) 508 (from memory)
 * Numerics  a step counts only where it takes away nine tenths of the imbalance it starts with: a spool at the corner of its stop
 *           would otherwise seem to have moved when it has not. The last step, 1e12 s, lets nodes with next to no leak settle too.
 * Away      what grows is lost by a step longer than the time in which it grows: an implicit step then lands on the other side and
 *           nearer, so that an unstable state draws it back. Then the determinant of the step's own equations is below zero.
 * </pre>
 */
final class PseudoTransient {

    /** Damping times of the spools [s]: quick, as they are, and slow, so that the pressures follow them. */
    static final double[] DAMPING_TIMES = {0.03, 3};

    /** Time steps [s] and how many (ours). */
    private static final double FIRST_STEP = 1e-3;

    private static final double LEAST_STEP = 1e-9;
    private static final double LAST_STEP = 1e12;
    private static final int MOST_STEPS = 400;
    private static final int NEWTON_STEPS = 12;

    /** Share of the imbalance that a step may leave (ours) [-]. */
    private static final double LEFT = 0.1;

    /** An imbalance above this counts as this [-]. */
    private static final double FAR = 1e-3;

    /** Past this time step most of a circuit has settled [s], and a few of Newton's steps may be all that is left. */
    private static final double SETTLED = 0.1;

    /** Time steps between two such tries (ours). */
    private static final int BETWEEN = 4;

    private final Newton newton;
    private final double[] before;
    private final double[] ahead;
    private boolean moving;

    PseudoTransient(Newton newton) {
        this.newton = newton;
        before = new double[newton.balance().size()];
        ahead = new double[before.length];
    }

    /**
     * Steps from the unknowns, which are moved to the state found.
     *
     * @param damping time in which a spool settles [s]
     */
    boolean settle(double[] unknowns, double damping) {
        return settle(unknowns, damping, false);
    }

    /** The same from beside an unstable state, in steps short enough to lead away from it. */
    boolean away(double[] unknowns, double damping) {
        return settle(unknowns, damping, true);
    }

    private boolean settle(double[] unknowns, double damping, boolean away) {
        Balance balance = newton.balance();
        double step = FIRST_STEP;
        int accepted = 0;
        moving = false;
        for (int i = 0; i < MOST_STEPS && step > LEAST_STEP && step < LAST_STEP; i++) {
            moving = i == MOST_STEPS - 1;
            System.arraycopy(unknowns, 0, before, 0, before.length);
            balance.still();
            balance.evaluate(unknowns);
            double far = Math.min(balance.worst(), FAR);
            balance.after(unknowns, step, damping);
            if (newton.timeStep(unknowns, NEWTON_STEPS, LEFT * far) && !(away && newton.growing())) {
                step *= 2;
                accepted++;
                if (step > SETTLED && accepted % BETWEEN == 0 && arrived(unknowns)) {
                    return true;
                }
            } else {
                System.arraycopy(before, 0, unknowns, 0, before.length);
                step /= 4;
            }
        }
        return newton.solve(unknowns, Newton.POLISHED) || newton.natural(unknowns, Newton.POLISHED);
    }

    /** Whether the circuit was still moving when the last time step was taken: it may hunt for ever. */
    boolean moving() {
        return moving;
    }

    /** Whether Newton is home from here in a few steps, at a state that the circuit would not leave; if not, nothing has moved. */
    private boolean arrived(double[] unknowns) {
        System.arraycopy(unknowns, 0, ahead, 0, ahead.length);
        if (!newton.finish(ahead) || newton.growing()) {
            return false;
        }
        System.arraycopy(ahead, 0, unknowns, 0, ahead.length);
        return true;
    }
}
