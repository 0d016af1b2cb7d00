package hotidle.assess;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class MarginTest {

    private static Margin flow(Margin.Kind kind, double value, double needed) {
        return Margin.of(kind, "part", value, needed, Margin.Scale.FLOW);
    }

    /** 0.2 gpm are 12.6 mL/s. */
    @Test
    void aNeedOfLessThanAFifthOfAGallonAMinuteIsATrickle() {
        assertTrue(flow(Margin.Kind.LUBRICATION, 1e-4, 1.2e-5).trickle());
        assertFalse(flow(Margin.Kind.LUBRICATION, 1e-6, 1.3e-5).trickle(), "what is there does not matter");
        assertFalse(Margin.of(Margin.Kind.FILM, "hub", 4e-6, 3e-6, Margin.Scale.LENGTH)
                .trickle());
    }

    @Test
    void whatHoldsWithEaseNeedsNoReasonUnlessThePumpHoldsItInAnOddWay() {
        MarginNote starved = MarginNote.of(MarginNote.Remark.INLET_LIMITS_SUPPLY, 0.8);
        assertFalse(flow(Margin.Kind.COOLER, 2e-4, 1e-4).asksWhy());
        assertTrue(flow(Margin.Kind.COOLER, 1.05e-4, 1e-4).asksWhy(), "close");
        assertTrue(flow(Margin.Kind.COOLER, 0.5e-4, 1e-4).asksWhy(), "fails");
        assertTrue(flow(Margin.Kind.REGULATION, 2e-4, 1e-4).noted(starved).asksWhy());
        assertFalse(flow(Margin.Kind.APPLY, 2e-4, 1e-4).noted(starved).asksWhy());
    }
}
