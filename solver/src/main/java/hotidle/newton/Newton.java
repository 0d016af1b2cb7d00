package hotidle.newton;

/**
 * Newton's method with a line search on a set of equations, and the time steps of the fallback.
 *
 * <pre>
 * Descent    half the sum of the squared, scaled equations falls at each step, or the step is halved (Armijo 1966, c = 1e-4)
 * Fallback   implicit Euler steps through the dynamics of node compliance and spool damping; C. T. Kelley, D. E. Keyes,
 *            "Convergence analysis of pseudo-transient continuation", SIAM J. Numer. Anal. 35 (1998) 508 (from memory)
 * Numerics   solved when every node's imbalance and every state's balance is below {@link #TOLERANCE} of its scale; the stops
 *            are exact
 * </pre>
 */
final class Newton {

    /** What a solve aims at: ten times tighter than the 1e-9 that it promises [-]. */
    static final double TOLERANCE = 1e-10;

    /** Where it stops polishing [-]. */
    static final double POLISHED = 1e-13;

    private static final int MOST_STEPS = 60;
    private static final int MOST_HALVINGS = 12;
    private static final double ARMIJO = 1e-4;

    /** Largest change of a pressure in one step: this, and twice what it is [Pa]. */
    private static final double LARGEST_STEP = 1e6;

    /** No gauge pressure goes below this in the search [Pa]: next to absolute vacuum. */
    private static final double LOWEST = -1.0e5;

    /** Damping times of the fallback's spools [s]: quick, as they are, and slow, so that the pressures follow them. */
    static final double[] DAMPING_TIMES = {0.03, 3};

    private static final double FIRST_TIME_STEP = 1e-3;
    private static final double LEAST_TIME_STEP = 1e-9;
    private static final double LAST_TIME_STEP = 1e7;
    private static final int MOST_TIME_STEPS = 400;
    private static final int STEPS_A_TIME_STEP = 12;

    private final Balance balance;
    private final Pattern pattern;
    private final double[] direction;
    private final double[] trial;
    private FixedLu fixed;
    private SparseLu exchanging;
    private int steps;

    Newton(Equations equations) {
        balance = new Balance(equations);
        pattern = equations.pattern();
        direction = new double[balance.size()];
        trial = new double[balance.size()];
    }

    /** Evaluations with factorisation since the start of the solve. */
    int steps() {
        return steps;
    }

    void reset() {
        steps = 0;
    }

    /** The equations, as evaluated last. */
    Balance balance() {
        return balance;
    }

    /** Newton from the unknowns, which are moved to the best state found. */
    boolean solve(double[] unknowns, double aim) {
        balance.still();
        return iterate(unknowns, MOST_STEPS, aim, TOLERANCE);
    }

    /**
     * The fallback from the unknowns: time steps that grow until nothing moves, then Newton.
     *
     * @param damping time in which a spool settles [s]
     */
    boolean settle(double[] unknowns, double damping) {
        double step = FIRST_TIME_STEP;
        double[] before = unknowns.clone();
        for (int i = 0; i < MOST_TIME_STEPS && step > LEAST_TIME_STEP && step < LAST_TIME_STEP; i++) {
            System.arraycopy(unknowns, 0, before, 0, before.length);
            balance.after(unknowns, step, damping);
            if (iterate(unknowns, STEPS_A_TIME_STEP, 1e-6, 1e-4)) {
                step *= 2;
            } else {
                System.arraycopy(before, 0, unknowns, 0, before.length);
                step /= 4;
            }
        }
        return solve(unknowns, POLISHED);
    }

    private boolean iterate(double[] unknowns, int most, double aim, double accepted) {
        balance.project(unknowns, LOWEST);
        double merit = balance.evaluate(unknowns);
        for (int step = 0; step < most; step++) {
            double error = balance.worst();
            if (error <= aim) {
                return true;
            }
            steps++;
            if (!direction(unknowns)) {
                return error <= accepted;
            }
            double next = search(unknowns, merit);
            if (!(next < merit)) {
                balance.evaluate(unknowns);
                return balance.worst() <= accepted;
            }
            merit = next;
        }
        return balance.worst() <= accepted;
    }

    /** Halves the step until the merit falls; the unknowns move only if it does. */
    private double search(double[] unknowns, double merit) {
        double share = 1;
        for (int halving = 0; halving <= MOST_HALVINGS; halving++) {
            for (int i = 0; i < trial.length; i++) {
                trial[i] = unknowns[i] + share * direction[i];
            }
            balance.project(trial, LOWEST);
            double next = balance.evaluate(trial);
            if (next <= (1 - 2 * ARMIJO * share) * merit) {
                System.arraycopy(trial, 0, unknowns, 0, trial.length);
                return next;
            }
            share /= 2;
        }
        return merit;
    }

    /** Newton's step, cut where a pressure would leap. */
    private boolean direction(double[] unknowns) {
        balance.differentiate();
        Factorisation factors = factors();
        if (factors == null) {
            return false;
        }
        for (int i = 0; i < trial.length; i++) {
            trial[i] = -balance.residual[i];
        }
        factors.solve(trial, direction);
        double share = 1;
        for (int i = 0; i < direction.length; i++) {
            if (!Double.isFinite(direction[i])) {
                return false;
            }
            if (i < balance.nodes()) {
                double most = LARGEST_STEP + 2 * Math.abs(unknowns[i]);
                share = Math.min(share, most / Math.max(Math.abs(direction[i]), most));
            }
        }
        for (int i = 0; i < direction.length; i++) {
            direction[i] *= share;
        }
        return true;
    }

    /** Factors of the matrix: on the fixed pattern; with rows exchanged where a pivot is lost; null where it is singular all the same. */
    private Factorisation factors() {
        if (fixed == null) {
            fixed = new FixedLu(pattern, balance.waiting());
        }
        if (fixed.factorise(balance.matrix)) {
            return fixed;
        }
        if (exchanging == null) {
            exchanging = new SparseLu(pattern);
        }
        if (exchanging.factorise(balance.matrix)) {
            return exchanging;
        }
        balance.regularise();
        return exchanging.factorise(balance.matrix) ? exchanging : null;
    }
}
