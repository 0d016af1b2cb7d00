package hotidle.newton;

import hotidle.network.Conditions;
import hotidle.network.Network;
import hotidle.part.OwnState;
import hotidle.result.Solution;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * The equations of a circuit about one of its steady states, for what small changes do to it.
 *
 * <pre>
 * Adjoint   the equations are r(u, s) = 0 with unknowns u and a size s, a figure is h(u, s). Then dh/ds = ∂h/∂s − λ·∂r/∂s with
 *           Jᵀ·λ = ∂h/∂u: one transposed solve for each figure, whatever the number of sizes; M. B. Giles, N. A. Pierce, Flow,
 *           Turbulence and Combustion 65 (2000) 393 (from memory)
 * Stops     a state that its stop holds stays there, and one between its stops stays between them: the slope holds as far as the
 *           same stops do. {@link #edge} tells how near a state is to where that changes; there it is a slope to one side.
 * Numerics  J is exact, from the parts. Its transpose is factorised whole by EJML, rows exchanged, pressures counted in bar and
 *           states in their way between the stops; the solution is refined once
 * </pre>
 */
public final class Linearised {

    private final Network network;
    private final Conditions conditions;
    private final Equations equations;
    private final Balance balance;
    private final double[] unknowns;
    private final double[] sizes;
    private final DMatrixRMaj transposed;
    private final LinearSolverDense<DMatrixRMaj> factors;

    /** Size in which a pressure is counted [Pa]. */
    private static final double PRESSURE = 1e5;

    /**
     * The equations about a state.
     *
     * @param network of the state
     * @param state   solved
     * @throws IllegalArgumentException where the equations are singular there
     */
    public Linearised(Network network, Solution state) {
        this(new SteadySolver(network), state);
    }

    private Linearised(SteadySolver solver, Solution state) {
        this(solver, state.conditions(), solver.unknowns(state));
    }

    /**
     * The equations about a state in the work space of who solved it.
     *
     * @param solver whose equations are used, and stay as they are set here
     */
    Linearised(SteadySolver solver, Conditions conditions, double[] unknowns) {
        this.conditions = conditions;
        this.unknowns = unknowns;
        equations = solver.equations();
        network = equations.network();
        equations.set(conditions);
        balance = solver.ladder().newton().balance();
        balance.still();
        balance.evaluate(unknowns);
        balance.differentiate();
        int n = unknowns.length;
        sizes = new double[n];
        for (int i = 0; i < n; i++) {
            sizes[i] = i < balance.nodes() ? PRESSURE : balance.span(i);
        }
        transposed = transposed(equations.pattern());
        factors = LinearSolverFactory_DDRM.lu(n);
        if (!factors.setA(transposed.copy())) {
            throw new IllegalArgumentException("the equations are singular at " + conditions.speed() + " rev/s");
        }
    }

    /** Row j is the slopes of all equations by unknown j, counted in its size. */
    private DMatrixRMaj transposed(Pattern pattern) {
        DMatrixRMaj turned = new DMatrixRMaj(size(), size());
        for (int column = 0; column < size(); column++) {
            for (int k = pattern.columnStarts()[column]; k < pattern.columnStarts()[column + 1]; k++) {
                turned.set(column, pattern.rows()[k], balance.matrix[k] * sizes[column]);
            }
        }
        return turned;
    }

    /** A function of the unknowns and of the network that they are read in. */
    public interface Outputs {
        /** Figures at a state that need not be a solution. */
        double[] of(Solution state);
    }

    /** Number of unknowns. */
    public int size() {
        return unknowns.length;
    }

    /** Number of a node's pressure among the unknowns. */
    public int number(String node) {
        return equations.unknown(node);
    }

    /** Number of the state of a part among the unknowns. */
    public int number(String part, OwnState state) {
        return equations.unknown(part + "." + state.name());
    }

    /** Steps of a difference: pressures as a share of what they are, but of this at least [Pa]; states as a share of their way. */
    private static final double SHARE = 1e-6;

    private static final double LEAST_PRESSURE = 1e4;

    /** Step of a state that is held at one place, as a spool's position (ours) [m]. */
    private static final double HELD_STEP = 1e-9;

    /**
     * Slopes of figures by each unknown at fixed sizes, a row for each figure: central differences of fourth order of the figures
     * alone, nothing is solved. A state that its stop holds does not move, so its slope counts as nil.
     */
    public double[][] slopes(Outputs figures) {
        SteadySolver reader = settled(network);
        double[][] slopes = new double[figures.of(reader.state(unknowns)).length][size()];
        for (int j = 0; j < size(); j++) {
            boolean held = j >= balance.nodes()
                    && equations.state(j).high() <= equations.state(j).low();
            if (balance.stopped(j) && !held) {
                continue;
            }
            double step = j < balance.nodes()
                    ? SHARE * Math.max(Math.abs(unknowns[j]), LEAST_PRESSURE)
                    : held ? HELD_STEP : SHARE * balance.span(j);
            int unknown = j;
            double[] by = CentralDifference.central(step, shift -> {
                double[] moved = unknowns.clone();
                moved[unknown] += shift;
                return figures.of(reader.state(moved));
            });
            for (int i = 0; i < by.length; i++) {
                slopes[i][j] = by[i];
            }
        }
        return slopes;
    }

    /** Exact slopes by each unknown of the mass flow [kg/s] that leaves a node, held or not, into some of the parts. */
    public double[] leaving(String node, Predicate<String> parts) {
        return equations.leaving(node, parts, unknowns);
    }

    /** The weights λ of one figure by its slopes. */
    public double[] weights(double[] slopes) {
        DMatrixRMaj right = new DMatrixRMaj(size(), 1);
        for (int i = 0; i < size(); i++) {
            right.set(i, slopes[i] * sizes[i]);
        }
        DMatrixRMaj weights = solved(right);
        CommonOps_DDRM.multAdd(-1, transposed, weights, right);
        CommonOps_DDRM.addEquals(weights, solved(right));
        return weights.data;
    }

    private DMatrixRMaj solved(DMatrixRMaj right) {
        DMatrixRMaj solution = new DMatrixRMaj(size(), 1);
        factors.solve(right.copy(), solution);
        return solution;
    }

    /**
     * What the equations of one network are more than those of another, at the unknowns of this state; both have the nodes, parts and
     * states of this one. Costs as much as the parts that are not the same object in both. The slope of a figure that depends on no
     * size itself is −λ times it.
     */
    public double[] difference(Network one, Network other) {
        return scaled(equations.difference(one, other, unknowns));
    }

    /** The equations under other conditions at the unknowns of this state. */
    public double[] under(Conditions others) {
        return under(List.of(others)).get(0);
    }

    /** The same under some conditions one after the other; quickest where neighbours differ in speed and commands only. */
    public List<double[]> under(List<Conditions> others) {
        List<double[]> residuals = new ArrayList<>();
        Equations.Settled own = equations.settled();
        for (Conditions other : others) {
            equations.setAside(other);
            equations.evaluate(unknowns);
            residuals.add(scaled(equations.value));
        }
        equations.restore(own);
        return residuals;
    }

    /** Equations as Newton counts them; that of a state which its stop holds does not change. */
    private double[] scaled(double[] values) {
        double[] scaled = new double[size()];
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] = i < balance.nodes()
                    ? values[i] / equations.massScale()
                    : balance.stopped(i) ? 0 : values[i] * balance.perForce(i);
        }
        return scaled;
    }

    /**
     * The equations of another network of the same nodes, parts and states, at the unknowns of this state. Which stops hold is taken
     * from this state: near the upper stop of a film a change of a per cent would else seem to end there.
     */
    public double[] residual(Network other) {
        SteadySolver solver = settled(other);
        Balance there = solver.ladder().newton().balance();
        there.still();
        there.evaluate(unknowns);
        double[] residual = there.residual.clone();
        for (int i = there.nodes(); i < residual.length; i++) {
            residual[i] = balance.stopped(i) ? there.toStop(unknowns, i) : there.free(i);
        }
        return residual;
    }

    /** The unknowns of this state as they read in another network of the same nodes, parts and states. */
    public Solution in(Network other) {
        return settled(other).state(unknowns);
    }

    /** With every part settled under the conditions of this state, which takes far longer than to read a state in it. */
    private SteadySolver settled(Network other) {
        SteadySolver solver = new SteadySolver(other);
        solver.equations().set(conditions);
        return solver;
    }

    /**
     * How near a state is to where a stop takes hold or lets go, as a share of its way between the stops [-]; infinite without states
     * that have a way to go.
     */
    public double edge() {
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = balance.nodes(); i < size(); i++) {
            nearest = Math.min(nearest, balance.edge(unknowns, i));
        }
        return nearest;
    }
}
