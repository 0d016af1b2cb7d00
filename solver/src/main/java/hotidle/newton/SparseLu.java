package hotidle.newton;

import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;

/** EJML's sparse LU with partial pivoting. */
final class SparseLu implements Factorisation {

    private final DMatrixSparseCSC matrix;
    private final LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver =
            LinearSolverFactory_DSCC.lu(FillReducing.NONE);

    SparseLu(Pattern pattern) {
        int n = pattern.size();
        matrix = new DMatrixSparseCSC(n, n, pattern.rows().length);
        System.arraycopy(pattern.columnStarts(), 0, matrix.col_idx, 0, n + 1);
        System.arraycopy(pattern.rows(), 0, matrix.nz_rows, 0, pattern.rows().length);
        matrix.nz_length = pattern.rows().length;
        matrix.indicesSorted = true;
    }

    @Override
    public boolean factorise(double[] values) {
        System.arraycopy(values, 0, matrix.nz_values, 0, values.length);
        return solver.setA(matrix);
    }

    @Override
    public void solve(double[] right, double[] solution) {
        int n = right.length;
        DMatrixRMaj x = DMatrixRMaj.wrap(n, 1, solution);
        solver.solve(DMatrixRMaj.wrap(n, 1, right), x);
    }
}
