package hotidle.newton;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Factors of a line's and a spool's slopes, where the plain way loses its pivots. */
class FactorsTest {

    private static final double LINE = 1e6;
    private static final double PLACE = 2e-3;

    private static Balance balance(double lineByLine, double lineByPlace, double spoolByLine, double spoolByPlace) {
        Balance balance = new Balance(new MadeEquations(
                        MadeEquations.straight(LINE, PLACE, lineByLine, lineByPlace),
                        MadeEquations.straight(LINE, PLACE, spoolByLine, spoolByPlace))
                .equations());
        balance.evaluate(new double[] {LINE, PLACE});
        return balance;
    }

    private static Factors factors(Balance balance, double lineByLine) {
        return new Factors(
                balance,
                new MadeEquations(
                                MadeEquations.straight(LINE, PLACE, lineByLine, 1),
                                MadeEquations.straight(LINE, PLACE, 1, 1))
                        .equations()
                        .pattern());
    }

    /** A line that only its spool moves, and a spool that only the line moves: each stands in the other's row. */
    @Test
    void rowsAreExchangedWhereNothingStandsOnTheDiagonal() {
        Balance balance = balance(0, 100, 1e-9, 0);
        Factors factors = factors(balance, 0);
        assertTrue(factors.factorise());
        double[] solution = new double[2];
        factors.solve(new double[] {0.1, 0.25}, solution);
        assertEquals(1e-3, solution[1], 1e-12, "0.1 of the flow, 100 a metre");
        assertEquals(0.25 * 2e-3 / 1e-9, solution[0], 1e-3, "a quarter of its way, 1 nm a pascal");
        assertFalse(factors.negativeDeterminant());
    }

    /** Nothing moves the line's balance: what is added to the diagonal makes a matrix that can be solved. */
    @Test
    void aSingularMatrixIsSolvedWithALittleOnItsDiagonal() {
        Balance balance = balance(0, 0, 0, 1);
        Factors factors = factors(balance, 0);
        assertTrue(factors.factorise());
        double[] solution = new double[2];
        factors.solve(new double[] {1e-9, 0}, solution);
        assertEquals(1, solution[0], 1e-6);
    }

    @Test
    void slopesThatAreNoNumbersAreToldAsSingular() {
        Balance balance = balance(Double.NaN, 0, 0, 1);
        assertFalse(factors(balance, 1).factorise());
    }

    @Test
    void whatIsForgottenHasNoDeterminant() {
        Balance balance = balance(-1e-6, 0, 0, 1);
        Factors factors = factors(balance, 1);
        assertTrue(factors.factorise() && factors.negativeDeterminant());
        factors.forget();
        assertFalse(factors.negativeDeterminant());
    }
}
