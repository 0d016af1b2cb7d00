package hotidle.newton;

/** Factors of a balance's matrix by whichever way works: on the fixed pattern, or with rows exchanged where a pivot is lost. */
final class Factors {

    private final Balance balance;
    private final Pattern pattern;
    private FixedLu fixed;
    private SparseLu exchanging;
    private Factorisation last;

    Factors(Balance balance, Pattern pattern) {
        this.balance = balance;
        this.pattern = pattern;
    }

    /**
     * Factorises the slopes of the equations evaluated last.
     *
     * @return false where the matrix is singular, even with a little added to its diagonal
     */
    boolean factorise() {
        balance.differentiate();
        if (fixed == null) {
            fixed = new FixedLu(pattern, balance.waiting());
        }
        last = fixed;
        if (fixed.factorise(balance.matrix)) {
            return true;
        }
        if (exchanging == null) {
            exchanging = new SparseLu(pattern);
        }
        last = exchanging;
        if (exchanging.factorise(balance.matrix)) {
            return true;
        }
        balance.regularise();
        return exchanging.factorise(balance.matrix);
    }

    /** Forgets the matrix factorised last. */
    void forget() {
        last = null;
    }

    /** Solves with the matrix factorised last. */
    void solve(double[] right, double[] solution) {
        last.solve(right, solution);
    }

    /**
     * Whether the determinant of the matrix factorised last is below zero. The dynamics of a stable state have all their eigenvalues
     * on one side, so that the determinant is above zero; below it the state is unstable. False where rows were exchanged.
     */
    boolean negativeDeterminant() {
        return last != null && last == fixed && fixed.negative();
    }
}
