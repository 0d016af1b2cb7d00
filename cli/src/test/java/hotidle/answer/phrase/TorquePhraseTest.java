package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity.UnitSystem;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class TorquePhraseTest {

    private final TorquePhrase metric = new TorquePhrase(UnitSystem.METRIC);

    @Test
    void aBuildHoldsTheLeastOfItsForwardRanges() {
        assertEquals(
                "made holds 610 N.m of engine torque in every range (driving conditions ask up to 500); low-clutch gives first,"
                        + " in first, at 10.00 bar line pressure (set to 9.72), then input-shaft in reverse at x1.25 of that.",
                metric.least(
                        metric.held("made", 610, 500),
                        "first",
                        "low-clutch",
                        1e6,
                        metric.commanded(9.7e5, 9.72e5),
                        TorquePhrase.second("input-shaft", "reverse", 1.25)));
        assertEquals("other holds 610 N.m in every range", metric.heldToo("other", 610));
        assertEquals(
                "made holds 610 N.m of engine torque in every range; low-clutch gives first, in first, at 10.00 bar line pressure.",
                metric.least(metric.held("made", 610, 0), "first", "low-clutch", 1e6, "", ""));
    }

    @Test
    void inReverseMoreIsCommandedThanAUnitIsSetTo() {
        assertEquals("14.30 commanded, set to 10.00", metric.commanded(14.3e5, 10e5));
        assertEquals("8.00 commanded, set to 10.00", metric.commanded(8e5, 10e5));
    }

    @Test
    void theHeadingSaysWhatATorqueHasInHand() {
        assertEquals(
                "Engine torque held at 2000 rpm [N.m], at the line pressure that is really there, and what gives first; lockup off; clutches"
                        + " with their factor of 1.20 in hand, rated parts (~) without one",
                metric.heading(2000 / 60.0, 1.2, 1.2));
        assertEquals(
                "lockup off; clutches with their factor of 1.10 to 1.30 in hand, rated parts (~) without one",
                TorquePhrase.margin(1.1, 1.3));
    }

    @Test
    void aTorqueBeyondTheCommandAndASharedLoadAreMarked() {
        assertEquals("610+ low-brake*", TorquePhrase.cell(metric.torque(610, true, false), "low-brake", true));
        assertEquals("610 low-brake", TorquePhrase.cell(metric.torque(610, false, false), "low-brake", false));
        assertEquals("853~ shaft", TorquePhrase.cell(metric.torque(853, false, true), "shaft", false));
        assertEquals("", TorquePhrase.signs(false, false));
    }

    @Test
    void theConvertersRatioIsSaidWhereItCounts() {
        assertEquals(
                "Temperatures of driving condition climb. Converter's torque ratio 1.90 in reverse, first, 1 elsewhere; lockup off. Clutches count"
                        + " with holding friction and their factor.",
                metric.conditions("climb", 1.9, List.of("reverse", "first")));
    }

    @Test
    void theSpeedBelowWhichThePumpFailsIsToldWhereThereIsOne() {
        assertEquals("1100", metric.from(OptionalDouble.of(1100 / 60.0)));
        assertEquals("any", metric.from(OptionalDouble.empty()));
    }

    /** Three pressures stand on that screen; one of them is set. */
    @Test
    void ofTheLineTheCommandAndTheSetPressureTheLastIsTheOneToChange() {
        String up = new TorquePhrase(UnitSystem.METRIC).next("worn", 10e5, OptionalDouble.of(14e5));
        assertTrue(up.startsWith("Next: of these the set pressure is the one to change, 10.00 bar in worn; above"), up);
        assertTrue(up.contains("above 14.00 bar it buys no torque. 'hotidle spring' with --set"), up);
        String no = new TorquePhrase(UnitSystem.METRIC).next("worn", 10e5, OptionalDouble.of(9e5));
        assertTrue(no.contains("; more of it buys no torque."), no);
        String open = new TorquePhrase(UnitSystem.METRIC).next("worn", 10e5, OptionalDouble.empty());
        assertTrue(open.contains("10.00 bar in worn. 'hotidle spring'"), open);
        assertTrue(TorquePhrase.nextJobs("worn").startsWith("Next: worn is LOW at idle, so first the oil"));
    }
}
