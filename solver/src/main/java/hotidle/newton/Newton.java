package hotidle.newton;

import hotidle.part.Form;

/**
 * Newton's method with a line search, and the time steps of the fallback, on one set of equations.
 *
 * <pre>
 * Stops      a state's own balance F and its stops become one equation, x − mid(low, x − F/σ, high) = 0 with σ its usual
 *            stiffness: a semi-smooth form of the complementarity; L. Qi, J. Sun, Math. Programming 58 (1993) 353 (from memory)
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
    private static final double POLISHED = 1e-13;

    private static final int MOST_STEPS = 60;
    private static final int MOST_HALVINGS = 12;
    private static final double ARMIJO = 1e-4;

    /** Largest change of a pressure in one step: this, and twice what it is [Pa]. */
    private static final double LARGEST_STEP = 1e6;

    /** No gauge pressure goes below this in the search [Pa]: next to absolute vacuum. */
    private static final double LOWEST = -1.0e5;

    /** Compliance of the fallback's dynamics: the pump's whole flow raises a node by 1 bar in one second [1/Pa]. */
    private static final double COMPLIANCE = 1e-5;

    /** Damping times of the fallback's spools [s]: quick, as they are, and slow, so that the pressures follow them. */
    static final double[] DAMPING_TIMES = {0.03, 3};

    private static final double FIRST_TIME_STEP = 1e-3;
    private static final double LEAST_TIME_STEP = 1e-9;
    private static final double LAST_TIME_STEP = 1e7;
    private static final int MOST_TIME_STEPS = 400;
    private static final int STEPS_A_TIME_STEP = 12;

    private final Equations equations;
    private final Factorisation factorisation;
    private final double[] matrix;
    private final double[] residual;
    private final double[] direction;
    private final double[] trial;
    private final double[] anchor;
    private double dampingTime = DAMPING_TIMES[0];
    private int steps;

    Newton(Equations equations) {
        this.equations = equations;
        factorisation = new SparseLu(equations.pattern());
        int n = equations.size();
        matrix = new double[equations.pattern().rows().length];
        residual = new double[n];
        direction = new double[n];
        trial = new double[n];
        anchor = new double[n];
    }

    /** Evaluations with factorisation since the start of the solve. */
    int steps() {
        return steps;
    }

    void reset() {
        steps = 0;
    }

    /** Newton from the unknowns, which are moved to the best state found. */
    boolean solve(double[] unknowns) {
        return iterate(unknowns, MOST_STEPS, Double.POSITIVE_INFINITY, POLISHED);
    }

    /**
     * The fallback from the unknowns: time steps that grow until nothing moves, then Newton.
     *
     * @param damping time in which a spool settles [s]
     */
    boolean settle(double[] unknowns, double damping) {
        dampingTime = damping;
        double step = FIRST_TIME_STEP;
        double[] before = unknowns.clone();
        for (int i = 0; i < MOST_TIME_STEPS && step > LEAST_TIME_STEP && step < LAST_TIME_STEP; i++) {
            System.arraycopy(unknowns, 0, before, 0, before.length);
            System.arraycopy(unknowns, 0, anchor, 0, anchor.length);
            if (iterate(unknowns, STEPS_A_TIME_STEP, step, 1e-6)) {
                step *= 2;
            } else {
                System.arraycopy(before, 0, unknowns, 0, before.length);
                step /= 4;
            }
        }
        return solve(unknowns);
    }

    private boolean iterate(double[] unknowns, int most, double timeStep, double aim) {
        project(unknowns);
        double merit = residuals(unknowns, timeStep);
        double accepted = Double.isInfinite(timeStep) ? TOLERANCE : 1e-4;
        for (int step = 0; step < most; step++) {
            double error = worst(unknowns, timeStep);
            if (error <= aim) {
                return true;
            }
            steps++;
            if (!direction(unknowns, timeStep)) {
                return error <= accepted;
            }
            double next = search(unknowns, merit, timeStep);
            if (!(next < merit)) {
                residuals(unknowns, timeStep);
                return worst(unknowns, timeStep) <= accepted;
            }
            merit = next;
        }
        return worst(unknowns, timeStep) <= accepted;
    }

    /** Halves the step until the merit falls; the unknowns move only if it does. */
    private double search(double[] unknowns, double merit, double timeStep) {
        double share = 1;
        for (int halving = 0; halving <= MOST_HALVINGS; halving++) {
            for (int i = 0; i < trial.length; i++) {
                trial[i] = unknowns[i] + share * direction[i];
            }
            project(trial);
            double next = residuals(trial, timeStep);
            if (next <= (1 - 2 * ARMIJO * share) * merit) {
                System.arraycopy(trial, 0, unknowns, 0, trial.length);
                return next;
            }
            share /= 2;
        }
        return merit;
    }

    private void project(double[] unknowns) {
        for (int i = 0; i < unknowns.length; i++) {
            if (i < equations.nodes()) {
                unknowns[i] = Math.max(unknowns[i], LOWEST);
            } else {
                Form.State state = equations.state(i);
                unknowns[i] = Math.min(Math.max(unknowns[i], state.low()), state.high());
            }
        }
    }

    /** Scaled equations at the unknowns; half the sum of their squares comes back, infinite where they are not finite. */
    private double residuals(double[] unknowns, double timeStep) {
        equations.evaluate(unknowns);
        double sum = 0;
        for (int i = 0; i < residual.length; i++) {
            residual[i] = i < equations.nodes()
                    ? equations.value[i] / equations.massScale() + inertia(i, unknowns, timeStep)
                    : natural(i, unknowns, timeStep);
            sum += residual[i] * residual[i];
        }
        return Double.isFinite(sum) ? sum / 2 : Double.POSITIVE_INFINITY;
    }

    private double inertia(int unknown, double[] unknowns, double timeStep) {
        return Double.isInfinite(timeStep)
                ? 0
                : (unknowns[unknown] - anchor[unknown]) * inertiaSlope(unknown, timeStep);
    }

    private double inertiaSlope(int unknown, double timeStep) {
        if (Double.isInfinite(timeStep)) {
            return 0;
        }
        return unknown < equations.nodes() ? COMPLIANCE / timeStep : dampingTime / timeStep;
    }

    private double natural(int unknown, double[] unknowns, double timeStep) {
        Form.State state = equations.state(unknown);
        double x = unknowns[unknown];
        double moved = moved(unknown, unknowns, timeStep);
        return (x - Math.min(Math.max(moved, state.low()), state.high())) / span(state);
    }

    private static double span(Form.State state) {
        return state.high() > state.low() ? state.high() - state.low() : 1;
    }

    /** Where the balance alone would move a state, stops aside; the stiffness counts the inertia of a time step. */
    private double moved(int unknown, double[] unknowns, double timeStep) {
        double force =
                equations.value[unknown] / equations.state(unknown).stiffness() + inertia(unknown, unknowns, timeStep);
        return unknowns[unknown] - force / (1 + inertiaSlope(unknown, timeStep));
    }

    private boolean atStop(int unknown, double[] unknowns, double timeStep) {
        Form.State state = equations.state(unknown);
        double moved = moved(unknown, unknowns, timeStep);
        return moved <= state.low() || moved >= state.high();
    }

    /** Largest equation as a share of its scale; the equations were evaluated at these unknowns last. */
    private double worst(double[] unknowns, double timeStep) {
        double worst = 0;
        for (int i = 0; i < residual.length; i++) {
            double error = share(i, unknowns, timeStep);
            worst = error > worst || Double.isNaN(error) ? error : worst;
        }
        return worst;
    }

    /** A node's imbalance over the scale of flow; a state's balance over its own scale, or its way to its stop. */
    private double share(int i, double[] unknowns, double timeStep) {
        if (i < equations.nodes() || atStop(i, unknowns, timeStep)) {
            return Math.abs(residual[i]);
        }
        Form.State state = equations.state(i);
        return Math.max(Math.abs(residual[i]) * span(state) * state.stiffness() / state.scale(), 0);
    }

    private boolean direction(double[] unknowns, double timeStep) {
        scaleMatrix(unknowns, timeStep);
        if (!factorisation.factorise(matrix)) {
            regularise();
            if (!factorisation.factorise(matrix)) {
                return false;
            }
        }
        for (int i = 0; i < residual.length; i++) {
            trial[i] = -residual[i];
        }
        factorisation.solve(trial, direction);
        double share = 1;
        for (int i = 0; i < direction.length; i++) {
            if (!Double.isFinite(direction[i])) {
                return false;
            }
            if (i < equations.nodes()) {
                double most = LARGEST_STEP + 2 * Math.abs(unknowns[i]);
                share = Math.min(share, most / Math.max(Math.abs(direction[i]), most));
            }
        }
        for (int i = 0; i < direction.length; i++) {
            direction[i] *= share;
        }
        return true;
    }

    private void scaleMatrix(double[] unknowns, double timeStep) {
        Pattern pattern = equations.pattern();
        double[] factor = new double[residual.length];
        for (int i = 0; i < factor.length; i++) {
            factor[i] = i < equations.nodes() ? 1 / equations.massScale() : stateFactor(i, unknowns, timeStep);
        }
        for (int k = 0; k < matrix.length; k++) {
            matrix[k] = equations.slope[k] * factor[pattern.rows()[k]];
        }
        for (int i = 0; i < factor.length; i++) {
            double added = inertiaSlope(i, timeStep);
            if (i >= equations.nodes()) {
                added = (factor[i] == 0 ? 1 : added / (1 + added)) / span(equations.state(i));
            }
            matrix[pattern.place(i, i)] += added;
        }
    }

    /** What a state's balance is multiplied by in its equation: nothing where its stop holds it. */
    private double stateFactor(int i, double[] unknowns, double timeStep) {
        if (atStop(i, unknowns, timeStep)) {
            return 0;
        }
        Form.State state = equations.state(i);
        return 1 / (state.stiffness() * span(state) * (1 + inertiaSlope(i, timeStep)));
    }

    private void regularise() {
        for (int i = 0; i < residual.length; i++) {
            double added = i < equations.nodes() ? 1e-9 : 1e-6;
            matrix[equations.pattern().place(i, i)] += added;
        }
    }

    /** What is furthest from balance, evaluated anew. */
    Worst worstAt(double[] unknowns) {
        residuals(unknowns, Double.POSITIVE_INFINITY);
        Worst worst = new Worst(0, 0, 0);
        for (int i = 0; i < residual.length; i++) {
            double share = share(i, unknowns, Double.POSITIVE_INFINITY);
            double imbalance =
                    i < equations.nodes() ? Math.max(worst.imbalance, Math.abs(equations.value[i])) : worst.imbalance;
            boolean more = share > worst.share || Double.isNaN(share);
            worst = new Worst(more ? share : worst.share, more ? i : worst.unknown, imbalance);
        }
        return worst;
    }

    /** Largest share of an own state's scale that is out of balance. */
    double forceError(double[] unknowns) {
        double worst = 0;
        for (int i = equations.nodes(); i < residual.length; i++) {
            worst = Math.max(worst, share(i, unknowns, Double.POSITIVE_INFINITY));
        }
        return worst;
    }

    /**
     * The equation furthest from balance.
     *
     * @param share     of its scale [-]
     * @param unknown   its number
     * @param imbalance largest imbalance of any node [kg/s]
     */
    record Worst(double share, int unknown, double imbalance) {}
}
