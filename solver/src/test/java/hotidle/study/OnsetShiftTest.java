package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class OnsetShiftTest {

    private static final OptionalDouble NEVER = OptionalDouble.empty();

    private static OptionalDouble rpm(double rpm) {
        return OptionalDouble.of(rpm / 60);
    }

    @Test
    void anOnsetThatMovesByLessThanOneRevolutionAMinuteIsTheSame() {
        assertEquals(OnsetShift.SAME, OnsetShift.between(rpm(1030), rpm(1030.9)));
        assertEquals(OnsetShift.MOVED, OnsetShift.between(rpm(1030), rpm(1031.1)));
        assertEquals(OnsetShift.MOVED, OnsetShift.between(rpm(1030), rpm(640)));
    }

    @Test
    void aBuildThatRegulatesNoMoreHasLostItsOnset() {
        assertEquals(OnsetShift.LOST, OnsetShift.between(rpm(1030), NEVER));
    }

    @Test
    void whereNothingRegulatedBeforeNothingHasMoved() {
        assertEquals(OnsetShift.NONE_BEFORE, OnsetShift.between(NEVER, rpm(640)));
        assertEquals(OnsetShift.NONE_BEFORE, OnsetShift.between(NEVER, NEVER));
    }
}
