package hotidle.newton;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.BitSet;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Small systems that can be solved by hand. */
class FactorisationTest {

    private static Pattern pattern(double[][] dense) {
        int n = dense.length;
        @SuppressWarnings({"unchecked", "rawtypes"})
        TreeSet<Integer>[] columns = new TreeSet[n];
        for (int j = 0; j < n; j++) {
            columns[j] = new TreeSet<>();
            for (int i = 0; i < n; i++) {
                if (i == j || dense[i][j] != 0) {
                    columns[j].add(i);
                }
            }
        }
        return Pattern.of(columns);
    }

    private static double[] values(Pattern pattern, double[][] dense) {
        double[] values = new double[pattern.rows().length];
        for (int i = 0; i < dense.length; i++) {
            for (int j = 0; j < dense.length; j++) {
                if (i == j || dense[i][j] != 0) {
                    values[pattern.place(i, j)] = dense[i][j];
                }
            }
        }
        return values;
    }

    private static FixedLu factors(double[][] dense, BitSet waits) {
        Pattern pattern = pattern(dense);
        FixedLu lu = new FixedLu(pattern, waits);
        assertTrue(lu.factorise(values(pattern, dense)));
        return lu;
    }

    private static double[] solved(FixedLu lu, double... right) {
        double[] solution = new double[right.length];
        lu.solve(right, solution);
        return solution;
    }

    private static final double[][] CHAIN = {{2, -1, 0, 0}, {-1, 2, -1, 0}, {0, -1, 2, -1}, {0, 0, -1, 2}};

    /** Nodes in a row, 1, 2, 3 and 4 at them: 2·1 − 2 = 0, …, 2·4 − 3 = 5. */
    @Test
    void aChainOfNodesIsSolvedWithoutANewEntry() {
        FixedLu lu = factors(CHAIN, new BitSet());
        assertArrayEquals(new double[] {1, 2, 3, 4}, solved(lu, 0, 0, 0, 5), 1e-14);
        assertEquals(4 + 3 + 3, lu.entries(), "the diagonal, and an entry to each side of it but one");
        assertFalse(lu.negative(), "determinant 5");
    }

    /** A star is eliminated from its points inwards; from the middle it would fill up. */
    @Test
    void theNodeWithTheFewestNeighboursGoesFirst() {
        double[][] star = {{4, -1, -1, -1}, {-1, 2, 0, 0}, {-1, 0, 2, 0}, {-1, 0, 0, 2}};
        FixedLu lu = factors(star, new BitSet());
        assertEquals(4 + 3 + 3, lu.entries());
        assertArrayEquals(new double[] {1, 2, 3, 4}, solved(lu, 4 - 9, -1 + 4, -1 + 6, -1 + 8), 1e-14);
        Elimination order = Elimination.of(pattern(star), new BitSet());
        assertEquals(1, order.order()[0]);
        assertTrue(order.stepOf()[0] >= 2, "the middle waits until one point is left");
        for (int step = 0; step < 4; step++) {
            assertEquals(step, order.stepOf()[order.order()[step]]);
        }
    }

    /** A state that does not depend on itself has no pivot until the node that it reads is gone. */
    @Test
    void aStateWithoutADiagonalWaitsForTheNodeThatItReads() {
        double[][] filling = {{3, 1, 0}, {-1, 0, 0}, {1, 0, 5}};
        BitSet waits = new BitSet();
        waits.set(1);
        FixedLu lu = factors(filling, waits);
        assertArrayEquals(new double[] {1, 2, 3}, solved(lu, 5, -1, 16), 1e-14);
        assertFalse(lu.negative(), "determinant 5: 3·0 − 1·(−1), times 5");
        Elimination order = Elimination.of(pattern(filling), waits);
        assertTrue(order.stepOf()[1] > order.stepOf()[0]);
    }

    @Test
    void theSignOfTheDeterminantIsKnown() {
        double[][] unstable = {{2, -1}, {-1, -2}};
        assertTrue(factors(unstable, new BitSet()).negative(), "determinant -5");
        double[][] twice = {{-2, 0}, {0, -2}};
        assertFalse(factors(twice, new BitSet()).negative(), "determinant 4");
    }

    @Test
    void aPivotThatIsRoundingIsNone() {
        double[][] same = {{1, 1}, {1, 1}};
        Pattern pattern = pattern(same);
        FixedLu lu = new FixedLu(pattern, new BitSet());
        assertFalse(lu.factorise(values(pattern, same)));
        double[][] nearly = {{1, 1}, {1, 1 + 1e-15}};
        assertFalse(lu.factorise(values(pattern, nearly)));
        double[][] apart = {{1, 1}, {1, 1 + 1e-12}};
        assertTrue(lu.factorise(values(pattern, apart)));
        double[][] endless = {{Double.POSITIVE_INFINITY, 1}, {1, 1}};
        assertFalse(lu.factorise(values(pattern, endless)));
        double[][] unknown = {{Double.NaN, 1}, {1, 1}};
        assertFalse(lu.factorise(values(pattern, unknown)));
    }

    /** The small pivot of a row that is small as a whole is a pivot. */
    @Test
    void aPivotIsJudgedByItsOwnRow() {
        double[][] small = {{1, 0}, {0, 1e-20}};
        FixedLu lu = factors(small, new BitSet());
        assertArrayEquals(new double[] {2, 3}, solved(lu, 2, 3e-20), 1e-12);
    }

    @Test
    void rowsAreExchangedWhereADiagonalIsNil() {
        double[][] exchanged = {{0, 2}, {3, 0}};
        Pattern pattern = pattern(exchanged);
        assertFalse(new FixedLu(pattern, new BitSet()).factorise(values(pattern, exchanged)));
        SparseLu lu = new SparseLu(pattern);
        assertTrue(lu.factorise(values(pattern, exchanged)));
        double[] solution = new double[2];
        lu.solve(new double[] {8, 9}, solution);
        assertArrayEquals(new double[] {3, 4}, solution, 1e-14);
        double[][] singular = {{1, 2}, {2, 4}};
        SparseLu none = new SparseLu(pattern(singular));
        assertFalse(none.factorise(values(pattern(singular), singular)));
    }

    @Test
    void whatIsNotInThePatternHasNoPlace() {
        Pattern pattern = pattern(CHAIN);
        assertEquals(0, pattern.place(0, 0));
        assertEquals(1, pattern.place(1, 0));
        assertEquals(2, pattern.place(0, 1));
        String said = assertThrows(IllegalStateException.class, () -> pattern.place(3, 0))
                .getMessage();
        assertEquals("row 3, column 0 is not in the pattern", said);
    }

    /** A polynomial of the fourth degree has its slope to the last digits. */
    @Test
    void aDifferenceOfTheFourthOrderHasNoErrorInAPolynomialOfTheFourthDegree() {
        double[] slopes = CentralDifference.central(0.5, shift ->
                new double[] {Math.pow(2 + shift, 4), Math.pow(2 + shift, 5), 3 - shift});
        assertEquals(32, slopes[0], 1e-12);
        // f5 at 2 is 5·16; its fifth derivative, 120, leaves -h⁴·120/30
        assertEquals(80 - 4 * Math.pow(0.5, 4), slopes[1], 1e-12);
        assertEquals(-1, slopes[2], 1e-12);
    }
}
