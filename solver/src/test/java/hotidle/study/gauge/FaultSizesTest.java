package hotidle.study.gauge;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** What two faults make of a reading. */
class FaultSizesTest {

    private static final double BASE = 100;

    @Test
    void twoFaultsThatEachLeaveHalfOfThePressureLeaveAQuarter() {
        double half = (500_000 + BASE) / (1_000_000 + BASE);
        assertEquals(250_000, FaultSizes.joined(1_000_000, BASE, half * half), BASE);
    }

    @Test
    void noFaultLeavesAReadingAsItIs() {
        assertEquals(1_000_000, FaultSizes.joined(1_000_000, BASE, 1), 1e-6);
        assertEquals(0, FaultSizes.joined(0, BASE, 1), 1e-9);
    }

    @Test
    void noPairOfFaultsDrawsAGaugeFarBelowNil() {
        assertEquals(-BASE, FaultSizes.joined(1_000_000, BASE, 0), 1e-9);
    }
}
