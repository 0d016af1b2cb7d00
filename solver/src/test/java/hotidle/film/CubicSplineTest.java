package hotidle.film;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class CubicSplineTest {

    private static final double STEP = 0.3;

    private static double cubic(double x) {
        return 2 - x + 3 * x * x - 0.7 * x * x * x;
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, 0.3, 0.95, 1.2, 1.75, 1.8})
    void aSplineThroughACubicIsTheCubic(double x) {
        double[] values =
                IntStream.rangeClosed(0, 6).mapToDouble(i -> cubic(STEP * i)).toArray();
        CubicSpline spline = new CubicSpline(STEP, values);
        assertEquals(cubic(x), spline.value(x), 1e-13);
        assertEquals(-1 + 6 * x - 2.1 * x * x, spline.slope(x), 1e-12);
    }
}
