package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.network.Placed;
import hotidle.part.SpoolSpring;
import hotidle.part.SpoolValve;
import hotidle.result.Solution;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The line of the ten nodes with a regulator that sticks. */
class FrictionBandTest {

    private static final double FRICTION = 4;
    private static final Transmission FREE = TenNodes.worn(1);
    private static final Transmission STICKY = sticking(FREE, FRICTION);
    private static final DutyPoint IDLE = FREE.duties().get(0);

    private static SpoolValve regulator(Transmission unit) {
        return (SpoolValve) unit.network().part("regulator").orElseThrow().part();
    }

    private static Transmission with(Transmission unit, SpoolValve valve) {
        Placed placed = unit.network().part("regulator").orElseThrow();
        return unit.with(unit.network().with(placed.with(valve)), unit.command());
    }

    static Transmission sticking(Transmission unit, double friction) {
        SpoolSpring spring = regulator(unit).spring();
        return with(
                unit,
                regulator(unit)
                        .with(new SpoolSpring(spring.rate(), spring.preload(), spring.low(), spring.high(), friction)));
    }

    private static Solution state(Transmission unit) {
        return AtDuty.solved(unit, IDLE).state().orElseThrow();
    }

    /**
     * Where the line is regulated, a force on the spool moves it by that force over the area that it presses; droop of spring and jets, and
     * the pump's slip, take a part of that.
     */
    @Test
    void theLineMayStandAboutFrictionOverAreaToEitherSide() {
        Solution state = state(STICKY);
        double line = state.pressure("line");
        FrictionBand band = FrictionBand.of(STICKY, "line", state).orElseThrow();
        double most = FRICTION / 180e-6;
        assertTrue(band.low() < line && line < band.high(), band.toString());
        assertTrue(band.high() - line < 1.05 * most && band.high() - line > 0.5 * most, band + " about " + line);
        assertTrue(line - band.low() < 1.05 * most && line - band.low() > 0.5 * most, band + " about " + line);
    }

    @Test
    void theEndsAreTheLinesOfASpringStrongerAndWeakerByTheFriction() {
        FrictionBand band = FrictionBand.of(STICKY, "line", state(STICKY)).orElseThrow();
        SpoolSpring spring = regulator(FREE).spring();
        double high = state(with(FREE, regulator(FREE).with(spring.withPreload(spring.preload() + FRICTION))))
                .pressure("line");
        double low = state(with(FREE, regulator(FREE).with(spring.withPreload(spring.preload() - FRICTION))))
                .pressure("line");
        assertEquals(high, band.high(), 1e-6 * high);
        assertEquals(low, band.low(), 1e-6 * low);
    }

    @Test
    void twiceTheFrictionMakesABandAboutTwiceAsWide() {
        FrictionBand once = FrictionBand.of(STICKY, "line", state(STICKY)).orElseThrow();
        Transmission twice = sticking(FREE, 2 * FRICTION);
        FrictionBand wide = FrictionBand.of(twice, "line", state(twice)).orElseThrow();
        assertEquals(2, (wide.high() - wide.low()) / (once.high() - once.low()), 0.2);
    }

    @Test
    void aFreeSpoolHasNoBandAndNeitherHasOneStuckInItsPlace() {
        assertFalse(FrictionBand.asked(FREE));
        assertEquals(Optional.empty(), FrictionBand.of(FREE, "line", state(FREE)));
        Transmission stuck = with(STICKY, regulator(STICKY).stuckAt(1e-3));
        assertFalse(FrictionBand.asked(stuck));
        assertTrue(FrictionBand.asked(STICKY));
    }

    @Test
    void theBandsOfASweepAreThoseOfItsStatesAndOfThoseLookedFor() {
        SpeedSweep sweep = SpeedSweep.run(STICKY, IDLE, List.of(500 / 60.0, 1000 / 60.0, 2000 / 60.0));
        FrictionBands bands = FrictionBands.of(List.of(sweep));
        assertTrue(bands.asked(STICKY));
        for (Solution state : sweep.states()) {
            FrictionBand alone = FrictionBand.of(STICKY, "line", state).orElseThrow();
            FrictionBand found = bands.of(state).orElseThrow();
            assertEquals(alone.low(), found.low(), 1e-6 * alone.low());
            assertEquals(alone.high(), found.high(), 1e-6 * alone.high());
        }
        assertFalse(sweep.lookedFor().isEmpty());
        sweep.lookedFor()
                .forEach(shown -> assertTrue(
                        bands.of(shown.outcome().state().orElseThrow()).isPresent()));
        assertTrue(bands.of(state(STICKY)).isEmpty(), "a state of none of the sweeps");
    }

    @Test
    void sideBySideOnlyTheBuildThatSticksHasABand() {
        Transmission free = FREE.named("free");
        Transmission sticky = STICKY.named("sticky");
        Comparison both = Comparison.of(List.of(free, sticky), List.of(500 / 60.0, 1000 / 60.0));
        FrictionBands bands = FrictionBands.of(both);
        assertTrue(bands.asked(sticky) && !bands.asked(free));
        assertTrue(!bands.asked(FREE.named("of another study")));
        Solution stuck = both.cell("sticky", "hot-idle").outcome().state().orElseThrow();
        Solution loose = both.cell("free", "hot-idle").outcome().state().orElseThrow();
        assertTrue(bands.of(loose).isEmpty());
        FrictionBand band = bands.of(stuck).orElseThrow();
        assertTrue(band.low() < stuck.pressure("line") && stuck.pressure("line") < band.high());
    }
}
