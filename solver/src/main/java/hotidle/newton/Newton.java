package hotidle.newton;

/**
 * Newton's method on a set of equations, its steps cut short until they descend.
 *
 * <pre>
 * Level     of the residual: half the sum of the squared, scaled equations falls at each step (Armijo 1966, from memory, c = 1e-4)
 * Natural   the same of the equations multiplied by the inverse of their slopes at the start of the step, so that it is a distance
 *           from the answer and not a sum of flows. Newton's step descends in every level ½·‖A·F‖², so a step short enough always
 *           does: P. Deuflhard, Newton Methods for Nonlinear Problems, 2004, §3.1 and 3.3 (from memory)
 * Why both  The residual's level costs nothing but creeps where a node has next to no leak: such a node is bar away from its answer
 *           when its flow is 1e-6 of the pump's, and any state that reads it bends the valley. There the natural level steps freely.
 * Numerics  solved when every node's imbalance and every state's balance is below {@link #ACCEPTED} of its scale; the
 *           stops are exact
 * </pre>
 */
final class Newton {

    /** What a solve aims at: ten times tighter than the 1e-9 that it promises (ours) [-]. */
    static final double TOLERANCE = 1e-10;

    /** What is good enough where rounding lets it go no further: half of what it promises [-]. */
    private static final double ACCEPTED = 5e-10;

    /** Where it stops polishing [-]. */
    static final double POLISHED = 1e-13;

    /** Limits of steps and halvings (ours), and of the decrease asked of a step. */
    private static final int MOST_STEPS = 60;

    private static final int FINISHING_STEPS = 8;
    private static final int MOST_HALVINGS = 12;
    private static final int MOST_NATURAL_HALVINGS = 24;
    private static final double ARMIJO = 1e-4;

    /** A step cut to less than this share is short (ours) [-]; so many in a row creep, and other methods are there sooner. */
    private static final double SHORT = 0.1;

    private static final int CREEPING = 6;

    /** The same in a time step, which is taken shorter instead: that costs less than to halve on. */
    private static final int CREEPING_IN_TIME = 2;

    /** A step that an edge cuts to less than this share is halved instead (ours) [-]. */
    private static final double LEAST_SHARE = 1e-3;

    /** Largest change of a pressure in one step: this, and twice what it is (ours) [Pa]. */
    private static final double LARGEST_STEP = 1e6;

    /** No gauge pressure goes below this in the search [Pa]: next to absolute vacuum. */
    static final double LOWEST = -1.0e5;

    /** Weight of pressures against states in the natural level [Pa]. */
    private static final double PRESSURE = 1e5;

    private final Balance balance;
    private final Factors factors;
    private final double[] direction;
    private final double[] trial;
    private final double[] simplified;
    private int steps;

    /** Share of Newton's step that the last step took. */
    private double taken;

    Newton(Equations equations) {
        balance = new Balance(equations);
        factors = new Factors(balance, equations.pattern());
        direction = new double[balance.size()];
        trial = new double[balance.size()];
        simplified = new double[balance.size()];
    }

    /** Evaluations with factorisation since the start of the solve. */
    int steps() {
        return steps;
    }

    void reset() {
        steps = 0;
        factors.forget();
    }

    /** The equations, as evaluated last. */
    Balance balance() {
        return balance;
    }

    /** Whether the slopes show an unstable state: those factorised last, next to the answer, or its own where none were needed. */
    boolean negativeDeterminant() {
        return (steps > 0 || factors.factorise()) && factors.negativeDeterminant();
    }

    /** Whether the slopes where it was evaluated last show that what is beside a state goes away from it. */
    boolean growing() {
        return factors.factorise() && factors.negativeDeterminant();
    }

    /** Newton from the unknowns, which are moved to the best state found. */
    boolean solve(double[] unknowns, double aim) {
        balance.still();
        return iterate(unknowns, MOST_STEPS, aim, ACCEPTED, false);
    }

    /** The same by the natural level, which goes on across the opening of a valve: given up where it creeps. */
    boolean natural(double[] unknowns, double aim) {
        balance.still();
        return iterate(unknowns, MOST_STEPS, CREEPING, aim, ACCEPTED, true);
    }

    /** The same by the residual's level. */
    boolean nearByResidual(double[] unknowns) {
        balance.still();
        return iterate(unknowns, MOST_STEPS, CREEPING, POLISHED, ACCEPTED, false);
    }

    /** The same, given up after a few steps, or where one is short: home is not near then. */
    boolean finish(double[] unknowns) {
        balance.still();
        return iterate(unknowns, FINISHING_STEPS, 1, POLISHED, ACCEPTED, false);
    }

    /** Newton on the equations of a time step, given up where it creeps. */
    boolean timeStep(double[] unknowns, int most, double aim) {
        return iterate(unknowns, most, CREEPING_IN_TIME, aim, aim, false);
    }

    /**
     * Newton on the equations that the balance asks for.
     *
     * @param aim      where it ends [-]
     * @param accepted what is good enough where it cannot go on [-]
     */
    boolean iterate(double[] unknowns, int most, double aim, double accepted, boolean natural) {
        return iterate(unknowns, most, most, aim, accepted, natural);
    }

    /** The same, given up after so many short steps in a row. */
    private boolean iterate(double[] unknowns, int most, int patience, double aim, double accepted, boolean natural) {
        balance.project(unknowns, LOWEST);
        double level = balance.evaluate(unknowns);
        int creeping = 0;
        for (int step = 0; step < most; step++) {
            double error = balance.worst();
            if (error <= aim) {
                return true;
            }
            steps++;
            if (!factors.factorise()) {
                return error <= accepted;
            }
            double share = direction(unknowns);
            double next = natural ? naturalSearch(unknowns, share) : search(unknowns, share, level);
            if (Double.isNaN(next)) {
                balance.evaluate(unknowns);
                return balance.worst() <= accepted;
            }
            level = next;
            creeping = taken < SHORT ? creeping + 1 : 0;
            if (creeping >= patience) {
                break;
            }
        }
        return balance.worst() <= accepted;
    }

    /** Newton's step, and the share of it that lets no pressure leap. */
    private double direction(double[] unknowns) {
        for (int i = 0; i < trial.length; i++) {
            trial[i] = -balance.residual[i];
        }
        factors.solve(trial, direction);
        double share = 1;
        for (int i = 0; i < balance.nodes(); i++) {
            double most = LARGEST_STEP + 2 * Math.abs(unknowns[i]);
            share = Math.min(share, most / Math.max(Math.abs(direction[i]), most));
        }
        return share;
    }

    /** Halves the step until the level falls; the level is the answer, NaN where it does not fall and the unknowns stay. */
    private double search(double[] unknowns, double most, double level) {
        double share = most;
        for (int halving = 0; halving <= MOST_HALVINGS; halving++) {
            double next = attempt(unknowns, share);
            if (next <= (1 - 2 * ARMIJO * share) * level && next < level) {
                System.arraycopy(trial, 0, unknowns, 0, trial.length);
                taken = share;
                return next;
            }
            share /= 2;
        }
        return Double.NaN;
    }

    /**
     * Cuts the step to the first edge, then halves it, until the natural level falls, by Deuflhard's restricted test. Slopes hold up to
     * an edge and no further, so that a step which fails beyond one is taken up to it: J. Katzenelson, "An algorithm for solving
     * nonlinear resistor networks", Bell Syst. Tech. J. 44 (1965) 1605 (from memory), for equations that are straight in pieces.
     */
    private double naturalSearch(double[] unknowns, double most) {
        double length = length(direction);
        double share = most;
        for (int halving = 0; halving <= MOST_NATURAL_HALVINGS; halving++) {
            double next = attempt(unknowns, share);
            if (next < Double.POSITIVE_INFINITY) {
                factors.solve(balance.residual, simplified);
                if (length(simplified) <= (1 - share / 4) * length) {
                    System.arraycopy(trial, 0, unknowns, 0, trial.length);
                    taken = share;
                    return next;
                }
            }
            double edge = halving == 0 ? balance.toEdge(unknowns, direction, share) : share;
            share = edge < share && edge > LEAST_SHARE ? edge : share / 2;
        }
        return Double.NaN;
    }

    private double attempt(double[] unknowns, double share) {
        balance.step(unknowns, direction, share, trial);
        balance.project(trial, LOWEST);
        return balance.evaluate(trial);
    }

    private double length(double[] step) {
        double sum = 0;
        for (int i = 0; i < step.length; i++) {
            double part = step[i] / (i < balance.nodes() ? PRESSURE : balance.span(i));
            sum += part * part;
        }
        return Math.sqrt(sum);
    }
}
