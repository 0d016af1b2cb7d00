package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Margin;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What is asked of a unit at the slowest of its duty points. */
class IdleTest {

    private static final Transmission FRESH = TenNodesByRatio.worn(1);
    private static final Transmission WORN = TenNodesByRatio.worn(4);

    private static Margin margin(Margin.Kind kind, double value, double needed) {
        return new Margin(
                kind,
                "any",
                OptionalDouble.of(value),
                needed,
                OptionalDouble.empty(),
                Margin.Scale.PRESSURE,
                0,
                OptionalDouble.empty(),
                List.of());
    }

    private static Map.Entry<Judgement.Key, Margin> entry(Margin margin) {
        return Map.entry(new Judgement.Key("hot-idle", margin.kind(), margin.part()), margin);
    }

    @Test
    void theWornBuildIsLowAtIdleAndTheNewOneIsNot() {
        assertEquals(List.of(WORN.build()), LowAtIdle.of(List.of(FRESH, WORN)));
        assertEquals(List.of(), LowAtIdle.of(List.of(FRESH)));
    }

    /** 40 N·m times 1.8 with a factor of 1.2 on an arm of 0.12·6·0.06 m, and 500 N of spring, over 40 cm²: 6.25 bar. */
    @Test
    void theLowClutchNeedsSixAndAQuarterBarAtIdle() {
        Margin apply = IdleMargins.of(FRESH).get(new Judgement.Key("hot-idle", Margin.Kind.APPLY, "low"));
        assertEquals(6.25e5, apply.needed(), 1);
        assertEquals(Margin.Verdict.HOLDS, apply.verdict());
    }

    @Test
    void wearTakesHeadroomFromTheMarginThatHasLeast() {
        Margin fresh = IdleMargins.least(IdleMargins.of(FRESH)).orElseThrow().getValue();
        Margin worn = IdleMargins.least(IdleMargins.of(WORN)).orElseThrow().getValue();
        assertTrue(worn.headroom() < fresh.headroom(), worn + " against " + fresh);
        assertTrue(IdleMargins.of(FRESH).keySet().stream()
                .allMatch(key -> key.duty().equals("hot-idle")));
        assertTrue(IdleMargins.of(FRESH).keySet().stream().noneMatch(key -> key.kind() == Margin.Kind.REGULATION));
    }

    @Test
    void theLeastMarginIsOneThatALowLineTakes() {
        Margin inlet = margin(Margin.Kind.PUMP_INLET, 1, 2);
        Margin apply = margin(Margin.Kind.APPLY, 3, 2);
        Margin cooler = margin(Margin.Kind.COOLER, 4, 2);
        assertEquals(
                apply,
                IdleMargins.least(Map.ofEntries(entry(inlet), entry(cooler), entry(apply)))
                        .orElseThrow()
                        .getValue());
        assertTrue(IdleMargins.least(Map.ofEntries(entry(inlet))).isEmpty());
        Margin unneeded = margin(Margin.Kind.LUBRICATION, 1, 0);
        assertTrue(IdleMargins.least(Map.ofEntries(entry(unneeded))).isEmpty(), "what is not needed has no least");
    }
}
