package hotidle.film;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import org.junit.jupiter.api.Test;

final class BandedCholeskyTest {

    /** Worked by hand: A·(1, −2, 3, 0.5) with A = (4 1 −1 0; 1 5 2 −1; −1 2 6 1; 0 −1 1 7). */
    @Test
    void aBandOfTwoIsSolved() {
        double[][] lower = {{0, 0, 4}, {0, 1, 5}, {-1, 2, 6}, {-1, 1, 7}};
        double[] x = {-1, -3.5, 13.5, 8.5};
        BandedCholesky.solve(lower, x, 4);
        assertArrayEquals(new double[] {1, -2, 3, 0.5}, x, 1e-14);
    }

    @Test
    void rowsBeyondThoseAskedForAreLeftAlone() {
        double[][] lower = {{0, 4}, {2, 5}, {9, 9}};
        double[] x = {8, 12, 7};
        BandedCholesky.solve(lower, x, 2);
        assertArrayEquals(new double[] {1, 2, 7}, x, 1e-14);
    }
}
