package hotidle.heat;

import hotidle.network.Node;
import hotidle.result.Solution;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * Enthalpy of the oil at each node: what flows in mixes there, and each path hands on what it was given and what it adds. Nodes that are
 * held have the sump's; those that nothing flows into are told.
 */
final class Mixing {

    private Mixing() {}

    /**
     * Oil that flows from a node to another.
     *
     * @param from   a node, or what else has an enthalpy of its own
     * @param to     a node
     * @param mass   [kg/s], above zero
     * @param gained given to it on its way [W]
     */
    record Leg(String from, String to, double mass, double gained) {}

    /**
     * Enthalpy of each node [J/kg].
     *
     * @param nodes all nodes
     * @param legs  all oil that flows
     * @param known enthalpy of all that is not asked for, held nodes among it [J/kg]
     * @param still enthalpy of nodes that nothing flows into [J/kg]
     */
    static Map<String, Double> of(List<Node> nodes, List<Leg> legs, Map<String, Double> known, double still) {
        Map<String, Integer> row = new HashMap<>();
        nodes.stream()
                .map(Node::name)
                .filter(name -> !known.containsKey(name))
                .forEach(name -> row.put(name, row.size()));
        int size = row.size();
        Map<String, Double> enthalpies = new HashMap<>(known);
        if (size == 0) {
            return enthalpies;
        }
        double[][] matrix = new double[size][size];
        double[] right = new double[size];
        for (Leg leg : legs) {
            Integer to = row.get(leg.to());
            if (to != null) {
                matrix[to][to] += leg.mass();
                right[to] += leg.gained();
                Integer from = row.get(leg.from());
                if (from != null) {
                    matrix[to][from] -= leg.mass();
                } else {
                    right[to] += leg.mass() * known.get(leg.from());
                }
            }
        }
        for (int i = 0; i < size; i++) {
            if (matrix[i][i] == 0) {
                matrix[i][i] = 1;
                right[i] = still;
            }
        }
        DMatrixRMaj solved = new DMatrixRMaj(size, 1);
        if (!CommonOps_DDRM.solve(new DMatrixRMaj(matrix), DMatrixRMaj.wrap(size, 1, right), solved)) {
            throw new IllegalStateException("oil goes round without ever leaving the nodes " + row.keySet());
        }
        row.forEach((name, i) -> enthalpies.put(name, solved.get(i)));
        return enthalpies;
    }

    /** Streams as legs in the direction in which they flow. */
    static Leg leg(Solution.PartStream stream) {
        return stream.mass() >= 0
                ? new Leg(stream.from(), stream.to(), stream.mass(), 0)
                : new Leg(stream.to(), stream.from(), -stream.mass(), 0);
    }
}
