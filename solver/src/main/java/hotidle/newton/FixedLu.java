package hotidle.newton;

import java.util.Arrays;
import java.util.BitSet;

/**
 * LU factors of one fixed pattern: order and places of entries once a circuit, then numbers into arrays that stay. No allocation.
 *
 * <pre>
 * Method    row by row (Doolittle): a row is spread over a work vector, the rows above are taken from it in rising order, what is
 *           left is its part of U; I. S. Duff, A. M. Erisman, J. K. Reid, Direct Methods for Sparse Matrices, 1986, §7 and 10
 *           (from memory)
 * Numerics  pivots stay on the diagonal, see {@link Elimination}. A pivot that is lost in the rounding of its row ends the
 *           factorisation; the caller then takes one that exchanges rows.
 * </pre>
 */
final class FixedLu implements Factorisation {

    /** A pivot below this share of the largest entry of its row is rounding and no pivot (ours: a hundred times the machine's rounding) [-]. */
    private static final double ROUNDING = 1e-14;

    private final int n;
    private final int[] order;

    /** Entries of the matrix row by row in the order of elimination: their place in the pattern and their column. */
    private final int[] inputStart;

    private final int[] inputPlace;
    private final int[] inputColumn;

    private final int[] lowerStart;
    private final int[] lowerColumn;
    private final double[] lower;
    private final int[] upperStart;
    private final int[] upperColumn;
    private final double[] upper;
    private final double[] inversePivot;
    private final double[] work;

    FixedLu(Pattern pattern, BitSet waits) {
        Elimination elimination = Elimination.of(pattern, waits);
        n = pattern.size();
        order = elimination.order();
        int[][] later = elimination.later();
        upperStart = starts(Arrays.stream(later).mapToInt(row -> row.length).toArray());
        upperColumn = Arrays.stream(later).flatMapToInt(Arrays::stream).toArray();
        upper = new double[upperColumn.length];
        int[] count = new int[n];
        Arrays.stream(upperColumn).forEach(row -> count[row]++);
        lowerStart = starts(count);
        lowerColumn = new int[upperColumn.length];
        lower = new double[upperColumn.length];
        int[] next = Arrays.copyOf(lowerStart, n);
        for (int step = 0; step < n; step++) {
            for (int row : later[step]) {
                lowerColumn[next[row]++] = step;
            }
        }
        int[] inputs = new int[n];
        Arrays.stream(pattern.rows()).forEach(row -> inputs[elimination.stepOf()[row]]++);
        inputStart = starts(inputs);
        inputPlace = new int[pattern.rows().length];
        inputColumn = new int[pattern.rows().length];
        spread(pattern, elimination.stepOf());
        inversePivot = new double[n];
        work = new double[n];
    }

    private static int[] starts(int[] counts) {
        int[] starts = new int[counts.length + 1];
        for (int i = 0; i < counts.length; i++) {
            starts[i + 1] = starts[i] + counts[i];
        }
        return starts;
    }

    private void spread(Pattern pattern, int[] stepOf) {
        int[] next = Arrays.copyOf(inputStart, n);
        for (int column = 0; column < n; column++) {
            for (int k = pattern.columnStarts()[column]; k < pattern.columnStarts()[column + 1]; k++) {
                int at = next[stepOf[pattern.rows()[k]]]++;
                inputPlace[at] = k;
                inputColumn[at] = stepOf[column];
            }
        }
    }

    /** Whether the determinant is below zero. */
    boolean negative() {
        boolean negative = false;
        for (double inverse : inversePivot) {
            negative ^= inverse < 0;
        }
        return negative;
    }

    /** Entries of both factors, the diagonal once. */
    int entries() {
        return n + lower.length + upper.length;
    }

    @Override
    public boolean factorise(double[] values) {
        double[] w = work;
        for (int i = 0; i < n; i++) {
            double largest = load(i, values, w);
            for (int p = lowerStart[i]; p < lowerStart[i + 1]; p++) {
                int k = lowerColumn[p];
                double factor = w[k] * inversePivot[k];
                lower[p] = factor;
                if (factor != 0) {
                    for (int q = upperStart[k]; q < upperStart[k + 1]; q++) {
                        w[upperColumn[q]] -= factor * upper[q];
                    }
                }
            }
            double pivot = w[i];
            if (!(Math.abs(pivot) > ROUNDING * largest) || Double.isInfinite(pivot)) {
                return false;
            }
            inversePivot[i] = 1 / pivot;
            for (int q = upperStart[i]; q < upperStart[i + 1]; q++) {
                upper[q] = w[upperColumn[q]];
            }
        }
        return true;
    }

    /** Spreads a row of the matrix over the work vector and gives its largest entry. */
    private double load(int i, double[] values, double[] w) {
        for (int p = lowerStart[i]; p < lowerStart[i + 1]; p++) {
            w[lowerColumn[p]] = 0;
        }
        w[i] = 0;
        for (int q = upperStart[i]; q < upperStart[i + 1]; q++) {
            w[upperColumn[q]] = 0;
        }
        double largest = 0;
        for (int p = inputStart[i]; p < inputStart[i + 1]; p++) {
            double entry = values[inputPlace[p]];
            w[inputColumn[p]] = entry;
            largest = Math.max(largest, Math.abs(entry));
        }
        return largest;
    }

    @Override
    public void solve(double[] right, double[] solution) {
        double[] w = work;
        for (int i = 0; i < n; i++) {
            double sum = right[order[i]];
            for (int p = lowerStart[i]; p < lowerStart[i + 1]; p++) {
                sum -= lower[p] * w[lowerColumn[p]];
            }
            w[i] = sum;
        }
        for (int i = n - 1; i >= 0; i--) {
            double sum = w[i];
            for (int q = upperStart[i]; q < upperStart[i + 1]; q++) {
                sum -= upper[q] * w[upperColumn[q]];
            }
            w[i] = sum * inversePivot[i];
            solution[order[i]] = w[i];
        }
    }
}
