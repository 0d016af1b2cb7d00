package hotidle.film;

/**
 * Symmetric positive definite equations with a narrow band: the factor A = L·Lᵀ row by row, then forward and back.
 *
 * <p>Source: G. Golub, C. Van Loan, Matrix Computations, 3rd ed., 1996, §4.3.5 (from memory).
 */
final class BandedCholesky {

    private BandedCholesky() {}

    /**
     * Solves A·x = b.
     *
     * @param lower row k holds A[k][k − band] to A[k][k]; the factor on return
     * @param x     b; the solution on return
     * @param rows  equations taken, from the first on
     */
    static void solve(double[][] lower, double[] x, int rows) {
        int band = lower[0].length - 1;
        for (int k = 0; k < rows; k++) {
            factor(lower, k, band);
            double[] row = lower[k];
            double sum = x[k];
            for (int d = Math.max(0, band - k); d < band; d++) {
                sum -= row[d] * x[k - band + d];
            }
            x[k] = sum / row[band];
        }
        for (int k = rows - 1; k >= 0; k--) {
            double[] row = lower[k];
            x[k] /= row[band];
            for (int d = Math.max(0, band - k); d < band; d++) {
                x[k - band + d] -= row[d] * x[k];
            }
        }
    }

    private static void factor(double[][] lower, int k, int band) {
        double[] row = lower[k];
        for (int d = Math.max(0, band - k); d <= band; d++) {
            double[] other = lower[k - band + d];
            double sum = row[d];
            for (int i = 0; i < d; i++) {
                sum -= row[i] * other[i + band - d];
            }
            row[d] = d < band ? sum / other[band] : Math.sqrt(sum);
        }
    }
}
