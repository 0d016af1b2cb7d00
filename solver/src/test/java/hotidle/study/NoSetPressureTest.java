package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Margin;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NoSetPressureTest {

    private static final Judgement.Key CLUTCH = new Judgement.Key("stall", Margin.Kind.APPLY, "low-clutch");
    private static final Judgement.Key BRAKE = new Judgement.Key("shift", Margin.Kind.APPLY, "second-brake");
    private static final Judgement.Key PUMP = new Judgement.Key("hot-idle", Margin.Kind.REGULATION, "pump");

    private static Window window(List<Window.PressureRange> all, Window.Span... spans) {
        return new Window(List.of(new Window.SetPoint(5e5, Map.of(), List.of(), List.of())), List.of(spans), all);
    }

    private static Window.Span from(Judgement.Key key, double low) {
        return span(key, new Window.PressureRange(low, Optional.of(key), 20e5, Optional.empty()));
    }

    private static Window.Span upTo(Judgement.Key key, double high) {
        return span(key, new Window.PressureRange(4e5, Optional.empty(), high, Optional.of(key)));
    }

    private static Window.Span span(Judgement.Key key, Window.PressureRange range) {
        return new Window.Span(key.kind(), key.part(), List.of(range), Optional.empty(), List.of());
    }

    private static Window.Span never(Judgement.Key key) {
        return new Window.Span(key.kind(), key.part(), List.of(), Optional.of(key), List.of());
    }

    @Test
    void whereAPressureHoldsEveryLimitThereIsNothingToExplain() {
        Window.PressureRange all = new Window.PressureRange(9e5, Optional.of(CLUTCH), 20e5, Optional.empty());
        assertEquals(Optional.empty(), window(List.of(all), from(CLUTCH, 9e5)).noneHolds());
    }

    @Test
    void aLimitThatHoldsNowhereIsReasonEnough() {
        NoSetPressure why =
                window(List.of(), from(CLUTCH, 9e5), never(PUMP)).noneHolds().orElseThrow();
        assertEquals(List.of(PUMP), why.never());
        assertEquals(Optional.empty(), why.needs());
        assertEquals(Optional.empty(), why.bears());
    }

    @Test
    void theClutchThatNeedsMostStandsAgainstThePumpThatBearsLeast() {
        NoSetPressure why = window(List.of(), from(CLUTCH, 9e5), from(BRAKE, 7e5), upTo(PUMP, 6e5))
                .noneHolds()
                .orElseThrow();
        assertEquals(List.of(), why.never());
        assertEquals(Optional.of(new NoSetPressure.End(CLUTCH, 9e5)), why.needs());
        assertEquals(Optional.of(new NoSetPressure.End(PUMP, 6e5)), why.bears());
    }

    @Test
    void limitsWithHolesBetweenThemNeedNoPairThatExcludesEachOther() {
        NoSetPressure why = window(List.of(), from(CLUTCH, 9e5)).noneHolds().orElseThrow();
        assertTrue(why.needs().isPresent());
        assertEquals(Optional.empty(), why.bears());
    }
}
