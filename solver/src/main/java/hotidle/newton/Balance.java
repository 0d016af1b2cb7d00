package hotidle.newton;

import hotidle.part.Form;
import java.util.Arrays;
import java.util.BitSet;

/**
 * The equations as Newton sees them: each scaled to a share, stops built in, and where asked with the inertia of a time step.
 *
 * <pre>
 * Node     imbalance over the flow of the pump
 * State    its own balance F and its stops become one equation, x − mid(low, x − F/σ, high) = 0 with σ its usual stiffness: a
 *          semi-smooth form of the complementarity; L. Qi, J. Sun, Math. Programming 58 (1993) 353 (from memory)
 * Inertia  of an implicit Euler step from an anchor: node compliance and spool damping
 * </pre>
 */
final class Balance {

    /** Compliance of the dynamics: the pump's whole flow raises a node by 1 bar in one second (ours) [1/Pa]. */
    static final double COMPLIANCE = 1e-5;

    /** A step that ends past an edge ends this share of the way between the stops past it (ours): a spool's radial clearance or so [-]. */
    private static final double PAST_EDGE = 4e-3;

    private final Equations equations;
    private final int nodes;
    private final double[] low;
    private final double[] high;
    private final double[] span;
    private final double[] stiffness;
    private final double[] scale;
    private final double[] pole;
    private final double[][] edges;
    private final int[] diagonal;
    private final int[] rows;
    private final int[] columnStarts;
    private final double[] factor;
    private final boolean[] stopped;
    private final double[] anchor;
    private double nodeInertia;
    private double stateInertia;

    /** Scaled equations at the unknowns evaluated last. */
    final double[] residual;

    /** Their slopes, once asked for. */
    final double[] matrix;

    Balance(Equations equations) {
        this.equations = equations;
        nodes = equations.nodes();
        int n = equations.size();
        Pattern pattern = equations.pattern();
        rows = pattern.rows();
        columnStarts = pattern.columnStarts();
        diagonal = new int[n];
        low = new double[n];
        high = new double[n];
        span = new double[n];
        stiffness = new double[n];
        scale = new double[n];
        pole = new double[n];
        edges = new double[n][];
        for (int i = 0; i < n; i++) {
            diagonal[i] = pattern.place(i, i);
        }
        restate();
        factor = new double[n];
        stopped = new boolean[n];
        anchor = new double[n];
        residual = new double[n];
        matrix = new double[rows.length];
    }

    /** Takes stops, stiffness and scale of the states anew. */
    final void restate() {
        for (int i = nodes; i < low.length; i++) {
            Form.Unknown state = equations.state(i);
            low[i] = state.low();
            high[i] = state.high();
            span[i] = high[i] > low[i] ? high[i] - low[i] : 1;
            stiffness[i] = state.stiffness();
            scale[i] = state.scale();
            pole[i] = state.pole();
            edges[i] = state.edges().stream().mapToDouble(Double::doubleValue).toArray();
        }
    }

    /** States whose balance does not depend on themselves, at the unknowns evaluated last. */
    BitSet waiting() {
        BitSet waiting = new BitSet(residual.length);
        for (int i = nodes; i < residual.length; i++) {
            waiting.set(i, equations.slope[diagonal[i]] == 0);
        }
        return waiting;
    }

    /** Asks for the steady state. */
    void still() {
        nodeInertia = 0;
        stateInertia = 0;
    }

    /**
     * Asks for the state one implicit time step after an anchor.
     *
     * @param timeStep [s]
     * @param damping  time in which a state settles [s]
     */
    void after(double[] start, double timeStep, double damping) {
        System.arraycopy(start, 0, anchor, 0, anchor.length);
        nodeInertia = COMPLIANCE / timeStep;
        stateInertia = damping / timeStep;
    }

    /** Puts the unknowns back between absolute vacuum, and stops, and where they may be. */
    void project(double[] unknowns, double lowest) {
        for (int i = 0; i < nodes; i++) {
            unknowns[i] = Math.max(unknowns[i], lowest);
        }
        for (int i = nodes; i < residual.length; i++) {
            unknowns[i] = Math.min(Math.max(unknowns[i], low[i]), high[i]);
        }
    }

    /**
     * Writes the unknowns a share of a step further. One whose balance grows as the logarithm of the way to a pole goes along that
     * logarithm, by which the balance is next to straight, so that no step leads past the pole.
     */
    void step(double[] from, double[] direction, double share, double[] to) {
        for (int i = 0; i < nodes; i++) {
            to[i] = from[i] + share * direction[i];
        }
        for (int i = nodes; i < to.length; i++) {
            double left = pole[i] - from[i];
            double way = share * direction[i];
            to[i] = left < Double.POSITIVE_INFINITY ? pole[i] - left * Math.exp(-way / left) : from[i] + way;
        }
    }

    /** The share of a step at which the first state is just past one of its edges; the given most where none comes to one before. */
    double toEdge(double[] from, double[] direction, double most) {
        double first = most;
        for (int i = nodes; i < direction.length; i++) {
            double past = PAST_EDGE * span[i];
            for (double edge : edges[i]) {
                double way = edge + Math.copySign(past, direction[i]) - from[i];
                double share = way / direction[i];
                first = share > 0 && share < first && Math.abs(way) > past ? share : first;
            }
        }
        return first;
    }

    /** Evaluates; half the sum of the squares comes back, infinite where they are not finite. */
    double evaluate(double[] unknowns) {
        equations.evaluate(unknowns);
        double[] value = equations.value;
        double inverse = 1 / equations.massScale();
        double sum = 0;
        for (int i = 0; i < nodes; i++) {
            double share = value[i] * inverse;
            residual[i] = nodeInertia == 0 ? share : share + (unknowns[i] - anchor[i]) * nodeInertia;
            sum += residual[i] * residual[i];
        }
        for (int i = nodes; i < residual.length; i++) {
            double x = unknowns[i];
            double move = value[i] / stiffness[i];
            if (stateInertia != 0) {
                move = (move + (x - anchor[i]) * stateInertia) / (1 + stateInertia);
            }
            double moved = x - move;
            stopped[i] = moved <= low[i] || moved >= high[i];
            residual[i] = (x - Math.min(Math.max(moved, low[i]), high[i])) / span[i];
            sum += residual[i] * residual[i];
        }
        return Double.isFinite(sum) ? sum / 2 : Double.POSITIVE_INFINITY;
    }

    /** The equation of a state as if it had no stops, at the unknowns evaluated last. */
    double free(int i) {
        return equations.value[i] * perForce(i);
    }

    /** What the balance of a state is multiplied by to become its equation, between its stops. */
    double perForce(int i) {
        return 1 / (stiffness[i] * span[i]);
    }

    /** The equation of a state that is held by the stop next to it. */
    double toStop(double[] unknowns, int i) {
        double nearest = unknowns[i] - low[i] <= high[i] - unknowns[i] ? low[i] : high[i];
        return (unknowns[i] - nearest) / span[i];
    }

    /** Largest equation as a share of its scale. */
    double worst() {
        double worst = 0;
        for (int i = 0; i < residual.length; i++) {
            double error = share(i);
            worst = error > worst || Double.isNaN(error) ? error : worst;
        }
        return worst;
    }

    /** Number of the equation that is furthest from balance. */
    int culprit() {
        int culprit = 0;
        for (int i = 1; i < residual.length; i++) {
            culprit = share(i) > share(culprit) || Double.isNaN(share(i)) ? i : culprit;
        }
        return culprit;
    }

    /** A node's imbalance over the scale of flow; a state's balance over its own scale, or its way to its stop. */
    double share(int i) {
        double size = Math.abs(residual[i]);
        return i < nodes || stopped[i] ? size : size * span[i] * stiffness[i] / scale[i];
    }

    /** Largest share of a state's scale that is out of balance. */
    double forceError() {
        double worst = 0;
        for (int i = nodes; i < residual.length; i++) {
            worst = Math.max(worst, share(i));
        }
        return worst;
    }

    /** Whether a state's stop holds it. */
    boolean stopped(int i) {
        return stopped[i];
    }

    /** How far a state, or what moves it, is from its nearer stop, as a share of its way; infinite where it has none. */
    double edge(double[] unknowns, int i) {
        if (high[i] <= low[i]) {
            return Double.POSITIVE_INFINITY;
        }
        double moved = unknowns[i] - equations.value[i] / stiffness[i];
        return Math.min(Math.abs(moved - low[i]), Math.abs(high[i] - moved)) / span[i];
    }

    /** Writes the slopes of the equations evaluated last into {@link #matrix}. */
    void differentiate() {
        Arrays.fill(factor, 0, nodes, 1 / equations.massScale());
        for (int i = nodes; i < factor.length; i++) {
            factor[i] = stopped[i] ? 0 : 1 / (stiffness[i] * span[i] * (1 + stateInertia));
        }
        double[] slope = equations.slope;
        for (int k = 0; k < matrix.length; k++) {
            matrix[k] = slope[k] * factor[rows[k]];
        }
        if (nodeInertia != 0) {
            for (int i = 0; i < nodes; i++) {
                matrix[diagonal[i]] += nodeInertia;
            }
        }
        for (int i = nodes; i < factor.length; i++) {
            matrix[diagonal[i]] += (stopped[i] ? 1 : stateInertia / (1 + stateInertia)) / span[i];
        }
    }

    /** Adds a little to each diagonal, for a matrix that is singular. */
    void regularise() {
        for (int i = 0; i < residual.length; i++) {
            matrix[diagonal[i]] += i < nodes ? 1e-9 : 1e-6;
        }
    }

    /** Gradient of half the sum of the squares, Jᵀ·r. */
    void gradient(double[] gradient) {
        for (int j = 0; j < gradient.length; j++) {
            double sum = 0;
            for (int k = columnStarts[j]; k < columnStarts[j + 1]; k++) {
                sum += matrix[k] * residual[rows[k]];
            }
            gradient[j] = sum;
        }
    }

    /** Way between the stops of a state, 1 where it is stuck. */
    double span(int i) {
        return span[i];
    }

    int size() {
        return residual.length;
    }

    int nodes() {
        return nodes;
    }
}
