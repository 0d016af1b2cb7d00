package hotidle.newton;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The gallery's pressures against two general-purpose solvers, which agree to the digits given: SUNDIALS KINSOL with KLU, and a
 * Newton iteration on SciPy's SuperLU.
 */
class GalleryTest {

    @ParameterizedTest
    @CsvSource({"3, 4, 3.245264720e6", "5, 8, 1.292659382e7", "10, 16, 5.36365159e7", "25, 40, 3.09357298e8"})
    void theSumOfAllPressuresIsThatOfGeneralPurposeSolvers(int rows, int columns, double sum) {
        GalleryRun run = new GalleryRun(new Gallery(rows, columns));
        assertEquals(sum, run.pass(), 0.5e-8 * sum);
        assertEquals(0, run.failed());
    }
}
