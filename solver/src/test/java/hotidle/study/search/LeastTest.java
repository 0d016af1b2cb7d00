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

    /** The film falls while a chamber is unloaded and thickens from there on: a search beside that finds the same again looks twice. */
    @Test
    void aLeastThatIsFoundAlreadyIsNotSearchedAgainButForALowerOne() {
        DoubleUnaryOperator film = speed -> speed < 1144 ? 3 + (1144 - speed) / 50 : 3 + (speed - 1144) / 300;
        assertEquals(1143.8, beside(1143.8, film), 0);
        assertEquals(2, trials.get());
        DoubleUnaryOperator lower = speed -> film.applyAsDouble(speed) - (Math.abs(speed - 1060) < 30 ? 3 : 0);
        assertEquals(1089.9, beside(1143.8, lower), 0.6);
    }

    private double beside(double found, DoubleUnaryOperator film) {
        trials.set(0);
        return Least.anywhere(
                950,
                film.applyAsDouble(950),
                1250,
                film.applyAsDouble(1250),
                found,
                film.applyAsDouble(found),
                0.5,
                x -> {
                    trials.incrementAndGet();
                    return known(film.applyAsDouble(x));
                });
    }

    @Test
    void theParabolaThroughThreeFiguresIsTheFirstToBeFollowed() {
        trials.set(0);
        DoubleUnaryOperator valley = x -> (x - 0.7) * (x - 0.7);
        double found = Least.between(0, 0.49, 1, 0.09, 2, 1.69, TOLERANCE, x -> {
            trials.incrementAndGet();
            return known(valley.applyAsDouble(x));
        });
        assertEquals(0.7, found, TOLERANCE);
        assertTrue(trials.get() <= 3, trials + " trials");
    }
}
