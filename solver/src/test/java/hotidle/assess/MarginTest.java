package hotidle.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What a margin comes to. */
class MarginTest {

    /** A film that roughness allows from 2 µm on and a published criterion asks to be 7 µm. */
    private static Margin film(double micrometres) {
        return Margin.of(Margin.Kind.FILM, "hub", 1e-6 * micrometres, 2e-6, Margin.Scale.LENGTH)
                .unsureTo(7e-6);
    }

    private static Margin.Verdict verdict(double micrometres) {
        return film(micrometres).verdict();
    }

    @Test
    void betweenRoughnessAndThePublishedFilmItIsNotKnown() {
        assertEquals(Margin.Verdict.FAILS, verdict(1.9));
        assertEquals(Margin.Verdict.NOT_KNOWN, verdict(2));
        assertEquals(Margin.Verdict.NOT_KNOWN, verdict(2.1), "not close: it is not known to hold at all");
        assertEquals(Margin.Verdict.NOT_KNOWN, verdict(6.9));
        assertEquals(Margin.Verdict.HOLDS, verdict(7));
        assertFalse(film(3).known());
        assertTrue(film(1).known());
    }

    @Test
    void aRoughBushingWhoseOwnFilmIsTheThickerOneIsKnown() {
        Margin rough = Margin.of(Margin.Kind.FILM, "hub", 8.2e-6, 8e-6, Margin.Scale.LENGTH)
                .unsureTo(8e-6);
        assertEquals(Margin.Verdict.CLOSE, rough.verdict());
    }

    @Test
    void aFilmThatIsFedLessThanAFullOneNeedsIsNotKnownAndWithoutOilItFails() {
        assertEquals(Margin.Verdict.HOLDS, new FilmOil(2e-6, 1e-6).margin("hub").verdict());
        assertEquals(
                Margin.Verdict.CLOSE, new FilmOil(1.05e-6, 1e-6).margin("hub").verdict());
        assertEquals(
                Margin.Verdict.NOT_KNOWN,
                new FilmOil(0.5e-6, 1e-6).margin("hub").verdict());
        assertEquals(Margin.Verdict.FAILS, new FilmOil(0, 1e-6).margin("hub").verdict());
        assertEquals(
                Margin.Verdict.FAILS, new FilmOil(-1e-7, 1e-6).margin("hub").verdict());
    }

    @Test
    void theWorstIsWhatFailsThenWhatIsNotKnownThenWhatIsClose() {
        Margin fails = Margin.of(Margin.Kind.COOLER, "cooler", 0.5, 1, Margin.Scale.FLOW);
        Margin close = Margin.of(Margin.Kind.COOLER, "cooler", 1.05, 1, Margin.Scale.FLOW);
        Margin holds = Margin.of(Margin.Kind.COOLER, "cooler", 3, 1, Margin.Scale.FLOW);
        Margin open = film(6);
        assertEquals(
                List.of(fails, open, close, holds),
                List.of(holds, close, open, fails).stream()
                        .sorted(Margin.worstFirst())
                        .toList());
    }

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

    @Test
    void oilHasTheHeadroomThatIsLeftOfItsWarmthAboveTheAir() {
        Margin sump = Margin.warmth(Margin.Kind.OIL_TEMPERATURE, "sump", 310 + 80, 310 + 100, 310);
        assertEquals(0.25, sump.headroom(), 1e-12);
        Margin hot = Margin.warmth(Margin.Kind.OIL_TEMPERATURE, "sump", 310 + 101, 310 + 100, 310);
        assertEquals(Margin.Verdict.FAILS, hot.verdict());
    }
}
