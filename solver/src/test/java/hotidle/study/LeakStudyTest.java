package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.OilBudget;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class LeakStudyTest {

    private static final List<Double> SPEEDS = List.of(10.0, 20.0, 40.0);

    private static LeakStudy of(double wear, Runnable step) {
        Adjustable build = Fits.worn(wear);
        DutyPoint idle = build.unit().duties().get(0);
        return LeakStudy.of(build, idle, SPEEDS, 1, 15, step);
    }

    @Test
    void theBudgetIsThatOfTheStateAndTheRepairsAreThoseTried() {
        AtomicInteger tried = new AtomicInteger();
        LeakStudy study = of(4, tried::incrementAndGet);
        LeakStudy.Found found = study.found().orElseThrow();
        assertEquals(OilBudget.of(TenNodes.worn(4), study.outcome().state().orElseThrow()), found.budget());
        assertEquals(1, found.repairs().order().size());
        assertEquals(found.repairs().alone().size() + 1, tried.get());
        assertEquals(SPEEDS.get(0), found.lowest());
        assertTrue(found.findings().best().isPresent());
    }

    @Test
    void aWornPumpThatCannotHoldItsLineAtIdleIsLowThereAndAFreshOneIsNot() {
        assertTrue(of(4, () -> {}).found().orElseThrow().lowAtIdle());
        assertFalse(of(1, () -> {}).found().orElseThrow().lowAtIdle());
    }
}
