package hotidle.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.util.Pair;

/**
 * A circuit as plain residuals, for a solver that shares no code with ours: Commons Math's Levenberg-Marquardt. Unknown are the
 * pressure of every free node and the flow of every branch; each branch has one residual, each free node the sum of its flows.
 */
final class PlainCircuit {

    /** Units of pressure [Pa] and flow [m³/s] in which unknowns and residuals are of order one. */
    private static final double PRESSURE = 1e5;

    private static final double FLOW = 1e-5;

    /** Largest residual of a solution, in those units: flows and pressures are then good to far better than 1e-6. */
    private static final double SOLVED = 1e-9;

    /**
     * A branch.
     *
     * @param residual zero where drop [Pa] and flow [m³/s] belong together, in pascal or of that order
     */
    private record Branch(String name, String from, String to, DoubleBinaryOperator residual) {}

    /** Pressures of all nodes [Pa] and flows of all branches [m³/s]. */
    record Solution(Map<String, Double> pressures, Map<String, Double> flows) {}

    private final Map<String, Double> held = new LinkedHashMap<>();
    private final List<Branch> branches = new ArrayList<>();

    PlainCircuit hold(String node, double pressure) {
        held.put(node, pressure);
        return this;
    }

    PlainCircuit branch(String name, String from, String to, DoubleBinaryOperator residual) {
        branches.add(new Branch(name, from, to, residual));
        return this;
    }

    /** A branch whose drop [Pa] is a function of its flow. */
    PlainCircuit drop(String name, String from, String to, DoubleUnaryOperator drop) {
        return branch(name, from, to, (difference, q) -> difference - drop.applyAsDouble(q));
    }

    /** A branch that passes one flow whatever the pressures. */
    PlainCircuit source(String name, String from, String to, double flow) {
        return branch(name, from, to, (difference, q) -> (q - flow) / FLOW * PRESSURE);
    }

    Solution solve() {
        TreeSet<String> free = new TreeSet<>();
        branches.forEach(branch -> free.addAll(List.of(branch.from, branch.to)));
        free.removeAll(held.keySet());
        List<String> nodes = List.copyOf(free);
        int size = nodes.size() + branches.size();
        double[] start = new double[size];
        Arrays.fill(start, 1);
        MultivariateJacobianFunction model = point -> {
            double[] at = point.toArray();
            return new Pair<>(new ArrayRealVector(residuals(nodes, at)), jacobian(nodes, at));
        };
        LeastSquaresOptimizer.Optimum found = new LevenbergMarquardtOptimizer()
                .withCostRelativeTolerance(1e-15)
                .withParameterRelativeTolerance(1e-15)
                .withOrthoTolerance(1e-15)
                .optimize(new LeastSquaresBuilder()
                        .start(start)
                        .model(model)
                        .target(new double[size])
                        .maxEvaluations(20_000)
                        .maxIterations(20_000)
                        .build());
        double[] at = found.getPoint().toArray();
        assertTrue(cost(nodes, at) < SOLVED, "the outside solver stopped at a residual of " + cost(nodes, at));
        Map<String, Double> pressures = new LinkedHashMap<>(held);
        Map<String, Double> flows = new LinkedHashMap<>();
        nodes.forEach(node -> pressures.put(node, at[nodes.indexOf(node)] * PRESSURE));
        for (int i = 0; i < branches.size(); i++) {
            flows.put(branches.get(i).name, at[nodes.size() + i] * FLOW);
        }
        assertEquals(branches.size(), flows.size(), "two branches have one name");
        return new Solution(pressures, flows);
    }

    private double cost(List<String> nodes, double[] at) {
        double worst = 0;
        for (double residual : residuals(nodes, at)) {
            worst = Math.max(worst, Math.abs(residual));
        }
        return worst;
    }

    private double[] residuals(List<String> nodes, double[] at) {
        double[] residuals = new double[at.length];
        for (int i = 0; i < branches.size(); i++) {
            Branch branch = branches.get(i);
            double q = at[nodes.size() + i];
            int from = nodes.indexOf(branch.from);
            int to = nodes.indexOf(branch.to);
            double high = from < 0 ? held.get(branch.from) : at[from] * PRESSURE;
            double low = to < 0 ? held.get(branch.to) : at[to] * PRESSURE;
            residuals[nodes.size() + i] = branch.residual.applyAsDouble(high - low, q * FLOW) / PRESSURE;
            if (from >= 0) {
                residuals[from] += q;
            }
            if (to >= 0) {
                residuals[to] -= q;
            }
        }
        return residuals;
    }

    private Array2DRowRealMatrix jacobian(List<String> nodes, double[] at) {
        double[][] slopes = new double[at.length][at.length];
        for (int column = 0; column < at.length; column++) {
            double step = 1e-6 * Math.max(Math.abs(at[column]), 1e-3);
            double[] below = at.clone();
            double[] above = at.clone();
            below[column] -= step;
            above[column] += step;
            double[] low = residuals(nodes, below);
            double[] high = residuals(nodes, above);
            for (int row = 0; row < at.length; row++) {
                slopes[row][column] = (high[row] - low[row]) / (2 * step);
            }
        }
        return new Array2DRowRealMatrix(slopes);
    }
}
