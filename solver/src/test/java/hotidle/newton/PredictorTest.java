package hotidle.newton;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** The next state of a series from those behind it: a line pressure over engine speed, with and without a bend. */
class PredictorTest {

    private static double after(DoubleUnaryOperator line, double place, double... places) {
        Predictor predictor = new Predictor(1);
        for (double at : places) {
            predictor.add(at, new double[] {line.applyAsDouble(at)});
        }
        double[] guess = new double[1];
        predictor.foretell(place, guess);
        return guess[0];
    }

    @Test
    void oneStateIsForetoldToStayAndTwoToGoOn() {
        assertEquals(7, after(x -> 7 + 0 * x, 9, 1));
        assertEquals(3 * 5 + 1, after(x -> 3 * x + 1, 5, 3, 4), 1e-12);
    }

    /** Five states behind the last one carry a polynomial of the fourth degree; six are kept. */
    @Test
    void aCurveOfTheFourthDegreeIsContinuedExactly() {
        DoubleUnaryOperator curve = x -> 2 + x * (1 - x * (0.5 - x * (0.25 + 0.125 * x)));
        assertEquals(curve.applyAsDouble(1.6), after(curve, 1.6, 1.0, 1.1, 1.2, 1.3, 1.4, 1.5), 1e-9);
        assertEquals(curve.applyAsDouble(1.6), after(curve, 1.6, 0.2, 0.9, 1.0, 1.1, 1.2, 1.3, 1.4, 1.5), 1e-9);
    }

    /** Once a regulator holds the line its slope is gone: what lies before the bend is left out. */
    @Test
    void behindABendTheLowDegreesWin() {
        DoubleUnaryOperator bend = x -> Math.min(x, 3);
        assertEquals(3, after(bend, 6, 0, 1, 2, 3, 4, 5), 1e-12);
    }

    @Test
    void whereTheSeriesTurnsBackTheLastStateIsTheGuess() {
        assertEquals(4, after(x -> x, 3, 2, 3, 4), 1e-12);
        assertEquals(4, after(x -> x, 4, 2, 3, 4), 1e-12, "a place that stands still is no step");
    }

    /** A step of up to half as much again as the one before is gone on with; a longer one is not. */
    @Test
    void aStepThatGrowsTooMuchIsNotContinued() {
        assertEquals(5.5, after(x -> x, 5.5, 3, 4), 1e-12);
        assertEquals(4, after(x -> x, 5.6, 3, 4), 1e-12);
        assertEquals(2.5, after(x -> x, 2.5, 5, 4), 1e-12, "falling as well");
    }

    @Test
    void whatIsForgottenIsNotForetoldFrom() {
        Predictor predictor = new Predictor(2);
        assertTrue(predictor.empty());
        predictor.add(1, new double[] {1, 2});
        assertFalse(predictor.empty());
        predictor.forget();
        assertTrue(predictor.empty());
        predictor.add(5, new double[] {7, 8});
        double[] guess = new double[2];
        predictor.foretell(6, guess);
        assertEquals(7, guess[0]);
        assertEquals(8, guess[1]);
    }

    @Test
    void eachUnknownGoesItsOwnWay() {
        Predictor predictor = new Predictor(2);
        for (int i = 0; i < 4; i++) {
            predictor.add(i, new double[] {i * i, -3.0 * i});
        }
        double[] guess = new double[2];
        predictor.foretell(4, guess);
        assertEquals(16, guess[0], 1e-9);
        assertEquals(-12, guess[1], 1e-9);
    }
}
