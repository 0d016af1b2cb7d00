package hotidle.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What the figures of a state say of its line. */
class FiguresTest {

    private static final double BAR = 1e5;

    private static Figures figures(OptionalDouble set, double line, boolean offSeat, double filling, boolean relief) {
        return new Figures(
                set,
                set,
                line,
                offSeat,
                Figures.Secondary.NONE,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0,
                0,
                Map.of(),
                Map.of(),
                0,
                0,
                0,
                filling,
                Optional.empty(),
                0,
                relief);
    }

    private static Figures held(double line, boolean offSeat) {
        return figures(OptionalDouble.of(10 * BAR), line, offSeat, 1, false);
    }

    @Test
    void aLineIsRegulatedOnlyAtItsSetPressureWithTheRegulatorOffItsSeat() {
        assertTrue(held(10 * BAR, true).regulated());
        assertFalse(held(9.9 * BAR, true).regulated());
        assertFalse(held(10 * BAR, false).regulated());
        assertEquals(Figures.Regulator.REGULATING, held(10 * BAR, true).regulator());
        assertEquals(
                Figures.Regulator.OFF_ITS_SEAT_BUT_LOW, held(9.9 * BAR, true).regulator());
        assertEquals(Figures.Regulator.ON_ITS_SEAT, held(7 * BAR, false).regulator());
    }

    @Test
    void aLineAQuarterAboveItsSetPressureIsFarAboveIt() {
        assertFalse(held(12.4 * BAR, true).farAboveSet());
        assertTrue(held(12.5 * BAR, true).farAboveSet());
        assertEquals(2.5 * BAR, held(12.5 * BAR, true).override().orElseThrow(), 1e-9 * BAR);
    }

    @Test
    void withoutACommandThereIsNoOverrideAndNothingIsHeld() {
        Figures free = figures(OptionalDouble.empty(), 10 * BAR, true, 1, false);
        assertEquals(Figures.Regulator.NOT_COMMANDED, free.regulator());
        assertEquals(OptionalDouble.empty(), free.override());
        assertFalse(free.regulated() || free.farAboveSet());
    }

    @Test
    void aLiftedReliefValveIsGraverThanWhatTheRegulatorDoes() {
        Figures lifted = figures(OptionalDouble.of(10 * BAR), 11 * BAR, true, 0.9, true);
        assertEquals(Figures.Regulator.RELIEF_OPEN, lifted.regulator());
        assertTrue(lifted.inletStarved());
    }

    @Test
    void aHubWithoutAKnownFilmTouches() {
        assertTrue(new Figures.Hub(900, OptionalDouble.empty()).metalContact());
        assertFalse(new Figures.Hub(900, OptionalDouble.of(3e-6)).metalContact());
    }
}
