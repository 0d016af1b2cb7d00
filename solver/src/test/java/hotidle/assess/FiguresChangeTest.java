package hotidle.assess;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class FiguresChangeTest {

    private static final double BAR = 1e5;

    private static Figures line(double set, double line, boolean offSeat) {
        return MadeFigures.of(OptionalDouble.of(set * BAR), line * BAR, offSeat, 1, false);
    }

    @Test
    void aFigureThatMovesByTwoPerCentOrLessIsTheSame() {
        assertTrue(FiguresChange.same(10 * BAR, 10.2 * BAR));
        assertTrue(FiguresChange.same(10.2 * BAR, 10 * BAR), "whichever of both comes first");
        assertFalse(FiguresChange.same(10 * BAR, 10.21 * BAR));
        assertTrue(FiguresChange.same(0, 0));
    }

    @Test
    void aFlowThatTurnsRoundAndAnUnknownOneAreNotTheSame() {
        assertFalse(FiguresChange.same(1e-5, -1e-5));
        assertFalse(FiguresChange.same(Double.NaN, 1e-5));
        assertFalse(FiguresChange.same(1e-5, Double.NaN));
    }

    /** On its seat at 7 bar: the pump gives all that it has. */
    @Test
    void aHigherSetPressureRaisesNothingWhereThePumpGivesAllThatItHas() {
        Figures was = line(10, 7, false);
        assertTrue(new FiguresChange(was, line(18, 7, false)).noMoreOil());
        assertTrue(new FiguresChange(was, line(18, 7.1, false)).noMoreOil());
    }

    @Test
    void aPumpWithOilToSpareRaisesTheLine() {
        assertFalse(new FiguresChange(line(10, 10, true), line(18, 18, true)).noMoreOil(), "held");
        assertFalse(new FiguresChange(line(10, 10, true), line(18, 12, false)).noMoreOil(), "not held, but higher");
    }

    @Test
    void nothingIsSaidOfMoreOilWhereNoMorePressureIsAskedFor() {
        assertFalse(new FiguresChange(line(10, 7, false), line(10.1, 7, false)).noMoreOil());
        Figures bench = MadeFigures.of(OptionalDouble.empty(), 7 * BAR, false, 1, false);
        assertFalse(new FiguresChange(bench, line(18, 7, false)).noMoreOil());
        assertFalse(new FiguresChange(line(10, 7, false), bench).noMoreOil());
    }
}
