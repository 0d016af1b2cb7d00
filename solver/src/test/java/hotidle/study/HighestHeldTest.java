package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Assessment;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** The ten nodes, worn and less so. */
class HighestHeldTest {

    private static double highest(Transmission unit, DutyPoint duty) {
        HighestHeld found =
                HighestHeld.of(Adjustable.fixed(unit), duty, () -> {}).orElseThrow();
        assertFalse(found.all());
        return found.pressure().orElseThrow();
    }

    /** Whether the line is held with the set pressure that asks for so much at a driving condition. */
    private static boolean held(Transmission unit, DutyPoint duty, double asked) {
        double now = unit.setPressure(unit.conditions(duty)).orElseThrow();
        Transmission set = SetPressure.of(unit, unit.highestSet() * asked / now);
        return AtDuty.solved(set, duty)
                .state()
                .filter(state -> Assessment.of(set, duty, state).figures().regulated())
                .isPresent();
    }

    @Test
    void aLittleLessIsHeldAndALittleMoreIsNot() {
        Transmission worn = TenNodes.worn(4);
        DutyPoint idle = worn.duties().get(0);
        double highest = highest(worn, idle);
        assertTrue(held(worn, idle, 0.98 * highest));
        assertFalse(held(worn, idle, 1.02 * highest));
    }

    @Test
    void itFallsWithWearAndRisesWithSpeed() {
        Transmission worn = TenNodes.worn(4);
        DutyPoint idle = worn.duties().get(0);
        double now = highest(worn, idle);
        assertTrue(highest(TenNodes.worn(5), idle) < now);
        assertTrue(highest(worn, idle.atSpeed(1.2 * idle.speed())) > now);
    }

    @Test
    void aFastPumpHoldsAllThatIsTried() {
        Transmission sound = TenNodes.worn(1);
        DutyPoint fast = sound.duties().get(0).atSpeed(3000 / 60.0);
        HighestHeld found =
                HighestHeld.of(Adjustable.fixed(sound), fast, () -> {}).orElseThrow();
        assertTrue(found.all());
        assertEquals(400 * SetPressure.PSI, found.pressure().orElseThrow(), 0.25 * SetPressure.PSI);
    }

    @Test
    void aStandingPumpHoldsNothing() {
        Transmission worn = TenNodes.worn(4);
        HighestHeld found = HighestHeld.of(
                        Adjustable.fixed(worn), worn.duties().get(0).atSpeed(0.5), () -> {})
                .orElseThrow();
        assertTrue(found.pressure().isEmpty());
    }

    @Test
    void workForWhichNobodyWaitsEndsAtTheNextState() {
        Transmission worn = TenNodes.worn(4);
        AtomicInteger steps = new AtomicInteger();
        assertThrows(
                IllegalStateException.class,
                () -> HighestHeld.of(Adjustable.fixed(worn), worn.duties().get(0), () -> {
                    if (steps.incrementAndGet() == 3) {
                        throw new IllegalStateException("nobody waits");
                    }
                }));
        assertEquals(3, steps.get());
    }
}
