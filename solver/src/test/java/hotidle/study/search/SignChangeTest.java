package hotidle.study.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class SignChangeTest {

    private static final double TOLERANCE = 1e-4;

    /** Trials that a search took; its ends are checked to be numbers that were told, and to turn within the tolerance. */
    private static int narrowed(double holds, double fails, double root, DoubleUnaryOperator figure) {
        SignChange search =
                new SignChange(holds, figure.applyAsDouble(holds), fails, figure.applyAsDouble(fails), TOLERANCE);
        int trials = 0;
        while (search.open()) {
            double next = search.next();
            assertTrue((next - search.holds()) * (search.fails() - next) > 0, next + " lies between the ends");
            search.tell(next, figure.applyAsDouble(next));
            trials++;
        }
        assertTrue(figure.applyAsDouble(search.holds()) >= 0, "it holds at the end that holds");
        assertFalse(figure.applyAsDouble(search.fails()) >= 0, "it fails at the end that fails");
        assertTrue(Math.abs(search.fails() - search.holds()) <= TOLERANCE);
        assertEquals(root, search.holds(), TOLERANCE);
        return trials;
    }

    @Test
    void aSmoothFigureTakesFarFewerTrialsThanHalving() {
        int halving = (int) Math.ceil(Math.log(2 / TOLERANCE) / Math.log(2));
        assertEquals(15, halving);
        assertTrue(narrowed(2, 0, Math.sqrt(2), x -> x * x - 2) <= 6);
        assertTrue(narrowed(0, 2, Math.log(3), x -> 3 - Math.exp(x)) <= 6);
        assertTrue(narrowed(0, 2, 0.3, x -> 0.3 - x) <= 3, "a straight line");
    }

    @Test
    void aKinkTakesNoMoreThanHalvingAndAFewMore() {
        assertTrue(narrowed(2, 0, 0.7, x -> x < 0.7 ? 1e-3 * (x - 0.7) : 50 * (x - 0.7)) <= 20);
        assertTrue(narrowed(2, 0, 1.9, x -> Math.pow(x - 1.9, 9)) <= 40);
    }

    @Test
    void aLeapIsFoundAsWellAsARoot() {
        assertTrue(narrowed(2, 0, 1.234, x -> x < 1.234 ? -5 : 0.01) <= 40);
    }

    @Test
    void whereTheFigureIsNotKnownOrHasNoSizeTheMiddleIsTried() {
        assertEquals(15, narrowed(0, 2, 1.1, x -> x <= 1.1 ? 1 : Double.NaN));
        assertEquals(15, narrowed(0, 2, 1.1, x -> x <= 1.1 ? Double.POSITIVE_INFINITY : -1));
        narrowed(0, 2, 0.5, x -> x > 1.5 ? Double.NaN : 0.5 - x);
    }

    @Test
    void aBracketWithoutAChangeOfSignIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new SignChange(0, 1, 1, 2, TOLERANCE));
        assertThrows(IllegalArgumentException.class, () -> new SignChange(0, -1, 1, -2, TOLERANCE));
        assertThrows(IllegalArgumentException.class, () -> new SignChange(0, Double.NaN, 1, -2, TOLERANCE));
        assertThrows(IllegalArgumentException.class, () -> new SignChange(0, 1, 1, -1, 0));
    }

    @Test
    void whatASearchAlikeFoundSavesTrialsAndWhatIsForetoldWronglyMisleadsNone() {
        DoubleUnaryOperator figure = x -> x * x - 2;
        int alone = foretold(figure, Double.NaN, Double.NaN);
        assertTrue(foretold(figure, 1.42, 2.9) < alone - 1, "near, its slope a little off");
        assertTrue(foretold(figure, 0.1, -1e-3) <= alone + 2, "far, its slope wrong");
        assertTrue(foretold(figure, 7, 1) <= alone, "outside of the bracket");
        assertTrue(foretold(figure, 1.5, 0) <= alone + 1, "without a slope");
    }

    /** Trials to a root that is found to nine digits, which a search alike foretells. */
    private static int foretold(DoubleUnaryOperator figure, double number, double slope) {
        SignChange search = new SignChange(2, figure.applyAsDouble(2), 0, figure.applyAsDouble(0), 1e-9);
        if (!Double.isNaN(number)) {
            search.foretell(number, OptionalDouble.of(slope));
        }
        int trials = 0;
        while (search.open()) {
            double next = search.next();
            search.tell(next, figure.applyAsDouble(next));
            trials++;
        }
        assertEquals(Math.sqrt(2), search.holds(), 1e-9);
        assertEquals(2 * Math.sqrt(2), search.slope(), 1e-3);
        return trials;
    }

    /** As a spool's way does over speed, which grows with the root of what its opening lacks: steep at first, then ever flatter. */
    @Test
    void aThirdFigureBeyondAnEndLeadsToWhereARootLikeFigureChanges() {
        DoubleUnaryOperator way = x -> Math.sqrt(x + 1) - 1.2;
        int alone = followed(way, Double.NaN);
        assertTrue(followed(way, 6) < alone, alone + " trials alone");
        assertEquals(
                alone,
                followed(x -> x > 3 ? Double.POSITIVE_INFINITY : way.applyAsDouble(x), 6),
                "it has no size there");
        assertEquals(alone, followed(x -> x > 3 ? 0 : way.applyAsDouble(x), 6), "it turns between");
    }

    private static int followed(DoubleUnaryOperator figure, double third) {
        SignChange search = new SignChange(3, figure.applyAsDouble(3), -1, figure.applyAsDouble(-1), 0.01);
        if (!Double.isNaN(third)) {
            search.follow(third, figure.applyAsDouble(third));
        }
        int trials = 0;
        while (search.open()) {
            double next = search.next();
            search.tell(next, figure.applyAsDouble(next));
            trials++;
        }
        assertEquals(0.44, search.holds(), 0.01);
        assertTrue(figure.applyAsDouble(search.fails()) < 0 && Math.abs(search.fails() - search.holds()) <= 0.01);
        return trials;
    }

    /** One end soon is near the change: without a trial beside it the far one would be halved again and again. */
    @Test
    void aChangeNextToAnEndIsCaughtBesideIt() {
        DoubleUnaryOperator figure = x -> Math.sqrt(x - 3.5) - Math.sqrt(0.5);
        SignChange search = new SignChange(4.5, figure.applyAsDouble(4.5), 3.5, figure.applyAsDouble(3.5), 0.01);
        int trials = 0;
        while (search.open()) {
            double next = search.next();
            search.tell(next, figure.applyAsDouble(next));
            trials++;
        }
        assertEquals(4, search.holds(), 0.01);
        assertTrue(trials <= 4, trials + " trials; halving takes 7");
    }

    @Test
    void neighbouringNumbersEndTheSearchWhateverTheTolerance() {
        double low = 1e9;
        SignChange search = new SignChange(low, 1, low + 4 * Math.ulp(low), -1, 1e-30);
        int trials = 0;
        while (search.open()) {
            double next = search.next();
            search.tell(next, low - next + Math.ulp(low));
            trials++;
        }
        assertTrue(trials < 10);
    }
}
