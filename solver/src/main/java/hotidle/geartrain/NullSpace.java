package hotidle.geartrain;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.SingularValueDecomposition_F64;

/**
 * Singular values of the equations of a train: what they leave free, and the shortest solution.
 *
 * <pre>
 * Numerics  a singular value below RANK times the largest counts as nil. Rows are of the order of one, so that the least
 *           value of a train with a real ratio lies many decades above
 * </pre>
 *
 * @param free a column for each direction that the equations leave free
 * @param pseudo the pseudo-inverse
 */
record NullSpace(DMatrixRMaj free, DMatrixRMaj pseudo) {

    private static final double RANK = 1e-10;

    static NullSpace of(DMatrixRMaj matrix) {
        int columns = matrix.numCols;
        // rows of nil make it tall, so that the decomposition gives all of V
        DMatrixRMaj tall = new DMatrixRMaj(Math.max(matrix.numRows, columns), columns);
        CommonOps_DDRM.insert(matrix, tall, 0, 0);
        SingularValueDecomposition_F64<DMatrixRMaj> svd =
                DecompositionFactory_DDRM.svd(tall.numRows, columns, true, true, true);
        if (!svd.decompose(tall)) {
            throw new IllegalStateException("the singular values of a gear train were not found");
        }
        double[] values = svd.getSingularValues();
        DMatrixRMaj v = svd.getV(null, false);
        DMatrixRMaj u = svd.getU(null, false);
        double largest = 0;
        for (double value : values) {
            largest = Math.max(largest, value);
        }
        DMatrixRMaj inverse = new DMatrixRMaj(columns, matrix.numRows);
        DMatrixRMaj free = new DMatrixRMaj(columns, columns);
        int count = 0;
        for (int k = 0; k < columns; k++) {
            boolean nil = values[k] <= RANK * largest;
            for (int i = 0; i < columns; i++) {
                if (nil) {
                    free.set(i, count, v.get(i, k));
                } else {
                    for (int j = 0; j < matrix.numRows; j++) {
                        inverse.add(i, j, v.get(i, k) * u.get(j, k) / values[k]);
                    }
                }
            }
            count += nil ? 1 : 0;
        }
        DMatrixRMaj directions =
                count == 0 ? new DMatrixRMaj(columns, 0) : CommonOps_DDRM.extract(free, 0, columns, 0, count);
        return new NullSpace(directions, inverse);
    }

    /** How many directions are free. */
    int freedom() {
        return free.numCols;
    }

    /** How far an unknown can move in the free directions, 0 to 1. */
    double freedomOf(int unknown) {
        double sum = 0;
        for (int k = 0; k < free.numCols; k++) {
            sum += free.get(unknown, k) * free.get(unknown, k);
        }
        return Math.sqrt(sum);
    }

    /** The shortest vector that meets the equations best. */
    double[] solve(double[] right) {
        double[] solution = new double[pseudo.numRows];
        for (int i = 0; i < pseudo.numRows; i++) {
            for (int j = 0; j < pseudo.numCols; j++) {
                solution[i] += pseudo.get(i, j) * right[j];
            }
        }
        return solution;
    }
}
