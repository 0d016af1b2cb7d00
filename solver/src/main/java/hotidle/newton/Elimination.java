package hotidle.newton;

import java.util.Arrays;
import java.util.BitSet;

/**
 * The order in which unknowns are eliminated, and where the factors then have entries; both once a circuit.
 *
 * <pre>
 * Order     always the unknown with the fewest neighbours left: W. F. Tinney, J. W. Walker, Proc. IEEE 55 (1967) 1801, scheme 2
 *           (from memory), on the pattern of the matrix and its transpose together
 * Pivots    stay on the diagonal: a node's own slope outweighs the rest of its row. A state whose balance does not depend on the
 *           state itself, as the pump's filling, has no diagonal until the nodes it reads are gone, so it waits for them.
 * Numerics  neighbours are kept as bit sets: 4000 unknowns take 0.1 s, once
 * </pre>
 *
 * @param order  unknown eliminated at each step
 * @param stepOf step at which each unknown is eliminated
 * @param later  at each step, the steps after it to which the row (and column) has entries, rising
 */
@SuppressWarnings("ArrayRecordComponent") // work arrays that do not leave this package
record Elimination(int[] order, int[] stepOf, int[][] later) {

    /**
     * Finds the order.
     *
     * @param pattern of the matrix
     * @param waits   unknowns that are eliminated after all that their row reads
     */
    static Elimination of(Pattern pattern, BitSet waits) {
        int n = pattern.size();
        BitSet[] neighbours = neighbours(pattern);
        BitSet[] awaited = awaited(pattern, waits);
        int[] degree = Arrays.stream(neighbours).mapToInt(BitSet::cardinality).toArray();
        BitSet left = new BitSet(n);
        left.set(0, n);
        int[] order = new int[n];
        int[] stepOf = new int[n];
        int[][] later = new int[n][];
        for (int step = 0; step < n; step++) {
            int next = fewest(left, degree, awaited);
            order[step] = next;
            stepOf[next] = step;
            left.clear(next);
            BitSet around = neighbours[next];
            later[step] = around.stream().toArray();
            for (int other : later[step]) {
                neighbours[other].or(around);
                neighbours[other].clear(other);
                neighbours[other].clear(next);
                degree[other] = neighbours[other].cardinality();
            }
        }
        for (int[] steps : later) {
            for (int k = 0; k < steps.length; k++) {
                steps[k] = stepOf[steps[k]];
            }
            Arrays.sort(steps);
        }
        return new Elimination(order, stepOf, later);
    }

    private static BitSet[] neighbours(Pattern pattern) {
        BitSet[] neighbours = sets(pattern.size());
        for (int column = 0; column < neighbours.length; column++) {
            for (int k = pattern.columnStarts()[column]; k < pattern.columnStarts()[column + 1]; k++) {
                int row = pattern.rows()[k];
                if (row != column) {
                    neighbours[column].set(row);
                    neighbours[row].set(column);
                }
            }
        }
        return neighbours;
    }

    private static BitSet[] awaited(Pattern pattern, BitSet waits) {
        BitSet[] awaited = sets(pattern.size());
        for (int column = 0; column < awaited.length; column++) {
            for (int k = pattern.columnStarts()[column]; k < pattern.columnStarts()[column + 1]; k++) {
                int row = pattern.rows()[k];
                if (row != column && waits.get(row) && !waits.get(column)) {
                    awaited[row].set(column);
                }
            }
        }
        return awaited;
    }

    private static BitSet[] sets(int n) {
        BitSet[] sets = new BitSet[n];
        for (int i = 0; i < n; i++) {
            sets[i] = new BitSet(n);
        }
        return sets;
    }

    private static int fewest(BitSet left, int[] degree, BitSet[] awaited) {
        int best = -1;
        for (int i = left.nextSetBit(0); i >= 0; i = left.nextSetBit(i + 1)) {
            if ((best < 0 || degree[i] < degree[best]) && !awaited[i].intersects(left)) {
                best = i;
            }
        }
        return best;
    }
}
