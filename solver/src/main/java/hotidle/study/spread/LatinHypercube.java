package hotidle.study.spread;

import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * Points spread over the unit cube, in blocks that know nothing of each other: each block is a Latin hypercube of its own, so that a
 * block can be drawn alone, on any machine.
 *
 * <pre>
 * Method    in each column the shares 0 to 1 are cut into as many equal ones as there are rows, one point drawn in each, the rows
 *           shuffled: M. D. McKay, R. J. Beckman, W. J. Conover, Technometrics 21 (1979) 239 (from memory)
 * Error     of a mean over n rows at most that of n/(n−1) times plain sampling: A. B. Owen, Ann. Statist. 25 (1997) 1541 (from memory). Blocks are
 *           independent, so that errors told as of plain sampling are not too small by more than half of 1/n
 * Numbers   Well19937c: F. Panneton, P. L'Ecuyer, M. Matsumoto, ACM Trans. Math. Software 32 (2006) 1 (from memory); seeded by seed, stream, block
 * </pre>
 */
final class LatinHypercube {

    private LatinHypercube() {}

    /**
     * A block of points.
     *
     * @param seed    of the whole
     * @param stream  which of several uses of the seed
     * @param block   number of the block
     * @param rows    points
     * @param columns dimensions
     * @return shares, each above 0 and below 1, by row and column
     */
    static double[][] block(long seed, int stream, long block, int rows, int columns) {
        RandomGenerator random =
                new Well19937c(new int[] {(int) (seed >>> 32), (int) seed, stream, (int) (block >>> 32), (int) block});
        double[][] points = new double[rows][columns];
        int[] order = new int[rows];
        for (int column = 0; column < columns; column++) {
            for (int row = 0; row < rows; row++) {
                int other = random.nextInt(row + 1);
                order[row] = order[other];
                order[other] = row;
            }
            for (int row = 0; row < rows; row++) {
                points[row][column] = (order[row] + inside(random)) / rows;
            }
        }
        return points;
    }

    /** Above 0, below 1. */
    private static double inside(RandomGenerator random) {
        double drawn = random.nextDouble();
        return drawn > 0 ? drawn : Double.MIN_NORMAL;
    }
}
