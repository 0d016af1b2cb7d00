package hotidle.answer.margins;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.ReadyCircuits;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.answer.phrase.NotCommandedPhrase;
import hotidle.assess.Margin;
import hotidle.assess.NotCommanded;
import hotidle.study.JudgedBuild;
import hotidle.study.Judgement;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Limits of a driving condition as rows, by margins made by hand: nothing is solved. */
class LimitRowsTest {

    private static final Transmission UNIT = ReadyCircuits.read("crescent-four").unit();
    private static final DutyPoint DUTY = UNIT.duties().get(0);

    private static Margin holding(double value) {
        return Margin.of(Margin.Kind.APPLY, "direct", value, 4e5, Margin.Scale.PRESSURE);
    }

    private static Margin slipping(double value) {
        return Margin.of(Margin.Kind.APPLY_SLIDING, "direct", value, 4e5, Margin.Scale.PRESSURE);
    }

    private static Judgement judged(Margin... margins) {
        return new Judgement(
                UNIT,
                DUTY,
                ReadyCircuits.unsolved(UNIT, DUTY),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(margins),
                Map.of(),
                Map.of());
    }

    private static LimitRows rows(Margin... margins) {
        return new LimitRows(UnitSystem.METRIC, judged(margins));
    }

    @Test
    void theTwoLimitsOfAClutchThatReadAlikeAreOneRow() {
        List<LimitRows.LabelledMargin> one = rows(holding(6e5), slipping(6e5)).shown();
        assertEquals(1, one.size());
        assertTrue(one.get(0).label().contains("slipping"), one.get(0).label());
        assertEquals(2, rows(holding(6e5), slipping(5e5)).shown().size());
    }

    @Test
    void aSlippingLimitThatStandsFirstIsARowOfItsOwn() {
        assertEquals(1, rows(slipping(6e5)).shown().size());
        assertEquals(2, rows(slipping(6e5), holding(6e5)).shown().size());
    }

    @Test
    void aRowHasTheFiguresWithTheirUnitsTheHeadroomAndTheVerdict() {
        LimitRows rows = rows(holding(6e5));
        List<String> cells = rows.cells(rows.shown().get(0));
        assertEquals("direct", cells.get(1));
        assertEquals("6.00 bar", cells.get(2));
        assertTrue(cells.get(3).contains("4.00 bar"), cells.toString());
        assertEquals("+50 %", cells.get(4));
    }

    @Test
    void limitsAreCountedAsTheyAreShown() {
        JudgedBuild build = new JudgedBuild(
                UNIT, List.of(judged(holding(6e5), slipping(6e5)), judged(holding(3e5), slipping(3e5))));
        assertEquals(
                "Of 2 limits at 2 driving conditions: 1 fails, 0 not known, 0 narrow, 1 holds.",
                new LimitRows.LimitCount(UnitSystem.METRIC, build).said());
    }

    @Test
    void whoseLineNothingCommandsIsToldWhatToWrite() {
        assertEquals(
                NotCommandedPhrase.NO_VALVE, MarginSentences.notCommanded(new NotCommanded(false, Optional.empty())));
        String known = MarginSentences.notCommanded(
                new NotCommanded(true, Optional.of(new NotCommanded.UncommandedRegulator("line", "regulator", "out"))));
        assertTrue(known.contains("regulator") && known.contains("out"), known);
        String any = MarginSentences.notCommanded(new NotCommanded(true, Optional.empty()));
        assertFalse(any.contains("regulator: regulator"), any);
        assertFalse(any.equals(known));
    }
}
