package hotidle.newton;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/**
 * A line and a spool between stops at 1 and 3 mm, whose imbalances are told by hand. The spool's spring has 4 N/mm, and 12 N at its
 * upper stop, which its forces are judged against.
 */
class BalanceByHandTest {

    private static final double MILLIMETRE = 1e-3;

    /** The line is a share off for each bar from 10; the spool would balance at a place. */
    private static Balance at(double line, double place, double balanced) {
        Balance balance = new Balance(new MadeEquations(
                        MadeEquations.straight(1e6, 0, 0.1e-5, 0),
                        MadeEquations.straight(0, balanced * MILLIMETRE, 0, 1))
                .equations());
        balance.evaluate(new double[] {line * 1e5, place * MILLIMETRE});
        return balance;
    }

    @Test
    void aSpoolIsJudgedByItsForceAndALineByItsFlow() {
        Balance spool = at(10.5, 2.4, 2);
        assertEquals(0.05, spool.share(0), 1e-12);
        assertEquals(1.6 / 12, spool.share(1), 1e-12);
        assertEquals(0.2, spool.residual[1], 1e-12, "0.4 of its way of 2 mm");
        assertEquals(1.6 / 12, spool.forceError(), 1e-12);
        assertEquals(1.6 / 12, spool.worst(), 1e-12);
        assertEquals(1, spool.culprit());
        Balance line = at(12, 2.4, 2);
        assertEquals(0.2, line.worst(), 1e-12);
        assertEquals(1.6 / 12, line.forceError(), 1e-12, "of forces alone");
        assertEquals(0, line.culprit());
    }

    @Test
    void aWayIsCountedBetweenTheStopsWhereverTheyStand() {
        Balance balance = at(10, 2.4, 2);
        assertEquals(2 * MILLIMETRE, balance.span(1), 1e-15);
        assertEquals(0.2, balance.free(1), 1e-12);
        assertEquals(1 / (4000 * 2e-3), balance.perForce(1), 1e-9);
        assertEquals(0.2, balance.toStop(new double[] {1e6, 1.4 * MILLIMETRE}, 1), 1e-12);
        assertEquals(-0.2, balance.toStop(new double[] {1e6, 2.6 * MILLIMETRE}, 1), 1e-12);
    }

    @Test
    void howFarASpoolIsFromItsStopIsToldByWhereItIsDrivenTo() {
        assertEquals(0.4, at(10, 2.4, 2.2).edge(new double[] {1e6, 2.4 * MILLIMETRE}, 1), 1e-12);
        assertEquals(0.15, at(10, 2.4, 1.3).edge(new double[] {1e6, 2.4 * MILLIMETRE}, 1), 1e-12);
        assertEquals(
                0.25, at(10, 2.4, 3.5).edge(new double[] {1e6, 2.4 * MILLIMETRE}, 1), 1e-12, "past the upper stop");
    }

    @Test
    void aSpoolThatIsDrivenPastItsStopIsStopped() {
        Balance up = at(10, 2.4, 3.5);
        assertTrue(up.stopped(1));
        assertEquals(-0.3, up.residual[1], 1e-12);
        assertEquals(0.3, up.share(1), 1e-12, "by its way, not its force");
        assertTrue(at(10, 2.4, 0.5).stopped(1));
        assertFalse(at(10, 2.4, 2.9).stopped(1));
    }
}
