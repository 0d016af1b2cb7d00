package hotidle.answer.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.ReadyCircuits;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.assess.Margin;
import hotidle.study.Judgement;
import hotidle.study.Window;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Set pressures that limits allow, as rows and as the reason why none does; windows made by hand. */
class WindowRowsTest {

    private static final Transmission UNIT = ReadyCircuits.read("crescent-four").unit();
    private static final Judgement.Key PUMP = new Judgement.Key("hot-idle", Margin.Kind.REGULATION, "pump");
    private static final Judgement.Key CLUTCH = new Judgement.Key("stall", Margin.Kind.APPLY, "direct");

    private static Window.PressureRange range(
            double low, Optional<Judgement.Key> below, double high, Optional<Judgement.Key> above) {
        return new Window.PressureRange(low, below, high, above);
    }

    private static Window.Span span(Judgement.Key key, Window.PressureRange... ranges) {
        return new Window.Span(
                key.kind(),
                key.part(),
                List.of(ranges),
                ranges.length == 0 ? Optional.of(key) : Optional.empty(),
                List.of());
    }

    private static Window.SetPoint tried(double pressure) {
        return new Window.SetPoint(pressure, Map.of(), List.of(), List.of());
    }

    private static WindowAnswer.BuildWindow build(List<Window.PressureRange> all, Window.Span... spans) {
        return new WindowAnswer.BuildWindow(
                UNIT, new Window(List.of(tried(4e5), tried(28e5)), List.of(spans), all), Optional.empty());
    }

    private static String summary(WindowAnswer.BuildWindow build) {
        return new WindowSentences(UnitSystem.METRIC).summary(build);
    }

    @Test
    void anEndThatNoLimitMakesIsWhereTheTryingEnded() {
        Window.PressureRange open = range(4e5, Optional.empty(), 12e5, Optional.of(CLUTCH));
        List<List<String>> rows = new WindowRows(UnitSystem.METRIC, build(List.of(), span(PUMP, open))).shown();
        assertEquals(
                List.of("pump", "<= 4.00 bar", "", "12.00 bar", "stall"),
                rows.get(0).subList(1, 6));
        List<String> csv = new WindowRows(UnitSystem.METRIC, build(List.of(), span(PUMP, open)))
                .all()
                .get(0);
        assertEquals(List.of("<=4.00", "", "12.00", "stall"), csv.subList(3, 7));
    }

    @Test
    void aLimitThatHoldsNowhereNamesItsWorstDuty() {
        List<String> row = new WindowRows(UnitSystem.METRIC, build(List.of(), span(PUMP)))
                .shown()
                .get(0);
        assertEquals(List.of("pump", "none", "hot-idle", "none", "hot-idle"), row.subList(1, 6));
    }

    @Test
    void aLimitThatHoldsInTwoRangesHasARowForEach() {
        Window.PressureRange low = range(4e5, Optional.empty(), 8e5, Optional.of(PUMP));
        Window.PressureRange high = range(16e5, Optional.of(PUMP), 28e5, Optional.empty());
        assertEquals(
                2,
                new WindowRows(UnitSystem.METRIC, build(List.of(), span(PUMP, low, high)))
                        .shown()
                        .size());
    }

    @Test
    void theRangesInWhichAllHoldStandLastInASpreadsheet() {
        Window.PressureRange all = range(9e5, Optional.of(CLUTCH), 16e5, Optional.of(PUMP));
        List<List<String>> rows = new WindowRows(UnitSystem.SHOP, build(List.of(all), span(PUMP, all))).all();
        List<String> last = rows.get(rows.size() - 1);
        assertEquals(List.of("all", "", "131", "stall", "232", "hot-idle"), last.subList(1, 7));
        assertEquals("from psi", WindowRows.head(UnitSystem.SHOP).get(3));
    }

    @Test
    void whereEveryLimitHoldsTheRangeIsToldWithWhatEndsIt() {
        Window.PressureRange all = range(9e5, Optional.of(CLUTCH), 16e5, Optional.of(PUMP));
        String said = summary(build(List.of(all), span(PUMP, all), span(CLUTCH, all)));
        assertTrue(said.contains("every limit holds from 9.00 bar to 16.00 bar; below, "), said);
        assertTrue(said.contains("direct) at stall fails first; above, "), said);
        assertTrue(said.contains("pump) at hot-idle fails first."), said);
    }

    @Test
    void whereALimitHoldsNowhereThatIsTheReason() {
        String said = summary(
                build(List.of(), span(PUMP), span(CLUTCH, range(9e5, Optional.of(CLUTCH), 28e5, Optional.empty()))));
        assertTrue(said.contains("NO SET PRESSURE from 4.00 bar to 28.00 bar holds every limit, because "), said);
        assertTrue(said.contains("at hot-idle fails at every one tried."), said);
    }

    @Test
    void whereOneNeedsMoreThanAnotherAllowsBothAreTheReason() {
        String said = summary(build(
                List.of(),
                span(PUMP, range(4e5, Optional.empty(), 8e5, Optional.of(PUMP))),
                span(CLUTCH, range(16e5, Optional.of(CLUTCH), 28e5, Optional.empty()))));
        assertTrue(said.contains("needs at least 16.00 bar and "), said);
        assertTrue(said.contains("allows at most 8.00 bar."), said);
    }

    @Test
    void allIsKnownAndNothingTooHotWhereEachPressureWasSolved() {
        WindowSentences sentences = new WindowSentences(UnitSystem.METRIC);
        WindowAnswer.BuildWindow known = build(List.of(), span(PUMP));
        assertTrue(sentences.notKnown(known).isEmpty());
        assertTrue(sentences.tooHot(known).isEmpty());
        assertTrue(sentences.useful(known, true).isEmpty(), "nothing was asked of torque");
        Window.SetPoint hot = new Window.SetPoint(12e5, Map.of(), List.of(), List.of("climb"));
        Window.SetPoint open = new Window.SetPoint(14e5, Map.of(), List.of("stall"), List.of());
        WindowAnswer.BuildWindow some = new WindowAnswer.BuildWindow(
                UNIT, new Window(List.of(tried(4e5), hot, open), List.of(span(PUMP)), List.of()), Optional.empty());
        String tooHot = sentences.tooHot(some).orElseThrow();
        assertTrue(tooHot.contains("TOO HOT at climb, first seen at 12.00 bar"), tooHot);
        String notKnown = sentences.notKnown(some).orElseThrow();
        assertTrue(
                notKnown.contains(
                        "NOT KNOWN in full at stall with 1 of the 3 set pressures tried, the first 14.00 bar"),
                notKnown);
    }
}
