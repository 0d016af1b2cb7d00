package hotidle.study.spread;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Points that are spread over all sizes. */
class LatinHypercubeTest {

    @Test
    void eachStripOfEachSizeIsDrawnOnce() {
        double[][] points = LatinHypercube.block(1, 2, 3, 50, 7);
        for (int column = 0; column < 7; column++) {
            boolean[] drawn = new boolean[50];
            for (double[] point : points) {
                assertTrue(point[column] > 0 && point[column] < 1);
                drawn[(int) (point[column] * 50)] = true;
            }
            for (boolean one : drawn) {
                assertTrue(one);
            }
        }
    }

    @Test
    void aBlockHangsOnSeedStreamAndNumberAlone() {
        double[][] block = LatinHypercube.block(1, 2, 3, 10, 4);
        assertTrue(Arrays.deepEquals(block, LatinHypercube.block(1, 2, 3, 10, 4)));
        assertFalse(Arrays.deepEquals(block, LatinHypercube.block(2, 2, 3, 10, 4)));
        assertFalse(Arrays.deepEquals(block, LatinHypercube.block(1, 1, 3, 10, 4)));
        assertFalse(Arrays.deepEquals(block, LatinHypercube.block(1, 2, 4, 10, 4)));
        assertFalse(Arrays.deepEquals(block, LatinHypercube.block(1L << 32 | 1, 2, 3, 10, 4)));
    }

    @Test
    void rowsAreShuffledInEachSizeForItself() {
        double[][] points = LatinHypercube.block(5, 1, 0, 1000, 2);
        double product = 0;
        for (double[] point : points) {
            product += (point[0] - 0.5) * (point[1] - 0.5) / 1000 * 12;
        }
        assertEquals(0, product, 0.12, "correlation");
        assertArrayEquals(new int[] {1000, 2}, new int[] {points.length, points[0].length});
    }
}
