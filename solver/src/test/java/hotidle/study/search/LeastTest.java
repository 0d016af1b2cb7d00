package hotidle.study.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class LeastTest {

    private static final double TOLERANCE = 1e-3;

    private final AtomicInteger trials = new AtomicInteger();

    private double least(double low, double high, DoubleUnaryOperator figure) {
        trials.set(0);
        return Least.between(low, figure.applyAsDouble(low), high, figure.applyAsDouble(high), TOLERANCE, x -> {
            trials.incrementAndGet();
            return known(figure.applyAsDouble(x));
        });
    }

    private static OptionalDouble known(double figure) {
        return Double.isNaN(figure) ? OptionalDouble.empty() : OptionalDouble.of(figure);
    }

    @Test
    void aSmoothValleyIsFoundInFewTrials() {
        assertEquals(0.7, least(0, 2, x -> 3 + (x - 0.7) * (x - 0.7)), TOLERANCE);
        assertTrue(trials.get() <= 6, trials + " trials");
        assertEquals(Math.PI, least(2, 5, Math::cos), TOLERANCE);
        assertTrue(trials.get() <= 12, trials + " trials");
    }

    @Test
    void aKinkIsFound() {
        assertEquals(1.3, least(0, 2, x -> x < 1.3 ? 5 - x : 3.7 + 20 * (x - 1.3)), TOLERANCE);
        assertEquals(0.2, least(0, 2, x -> Math.abs(x - 0.2)), TOLERANCE);
    }

    @Test
    void aFigureThatRisesFromAnEndIsLeastThereAndTakesOneTrial() {
        assertEquals(0, least(0, 2, x -> 1 + x));
        assertEquals(1, trials.get());
        assertEquals(2, least(0, 2, x -> 1 - x));
        assertEquals(1, trials.get());
    }

    @Test
    void whereTheFigureIsNotKnownTheBestSoFarIsTheAnswer() {
        double found = least(0, 2, x -> x > 0.5 && x < 1.5 ? Double.NaN : x < 1 ? 1 - x / 10 : 2 - x / 2);
        assertTrue(found <= 0.5 || found >= 1.5, found + " is known");
    }

    /** A film that thickens with speed, and drops where a chamber is unloaded, to less than at either end. */
    @Test
    void aFilmThatDropsBetweenTwoSpeedsIsFoundThoughItThickensFromTheLower() {
        DoubleUnaryOperator film = speed -> speed < 641 ? 1 + speed / 1e4 : 0.8 + (speed - 641) / 1e3;
        double thinnest = Least.anywhere(
                600, film.applyAsDouble(600), 1000, film.applyAsDouble(1000), 0.5, x -> known(film.applyAsDouble(x)));
        assertEquals(641, thinnest, 0.5);
        assertEquals(
                600,
                Least.between(
                        600,
                        film.applyAsDouble(600),
                        1000,
                        film.applyAsDouble(1000),
                        0.5,
                        x -> known(film.applyAsDouble(x))),
                0);
    }
}
