package hotidle.newton;

/** Solves linear equations of one fixed sparse pattern. */
interface Factorisation {

    /**
     * Factorises.
     *
     * @param values in the order of the pattern
     * @return false where the matrix is singular
     */
    boolean factorise(double[] values);

    /** Solves for a right side with the matrix last factorised. */
    void solve(double[] right, double[] solution);
}
