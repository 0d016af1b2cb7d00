package hotidle.newton;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.newton.MadeEquations.Share;
import hotidle.result.Stability;
import org.junit.jupiter.api.Test;

/**
 * Whether a line and its spool stay where they balance, with rates told by hand. A line whose imbalance rises by a share a of the pump's
 * flow with each bar falls back at a·1 [1/s], since the whole flow moves it by 1 bar in a second; a spool whose force rises with its place as
 * its spring's does falls back in 0.03 s.
 */
class SpectrumTest {

    private static final double LINE = 1e6;
    private static final double PLACE = 2e-3;
    private static final double WAY = MadeEquations.HIGH - MadeEquations.LOW;

    /** Slopes are given for a bar and for the spool's whole way. */
    private static Stability of(double line, double lineByPlace, double spoolByLine, double spool) {
        Share node = MadeEquations.straight(LINE, PLACE, line / 1e5, lineByPlace / WAY);
        Share force = MadeEquations.straight(LINE, PLACE, spoolByLine * WAY / 1e5, spool);
        Equations equations = new MadeEquations(node, force).equations();
        Balance balance = new Balance(equations);
        balance.after(new double[] {0, 0}, 1e-9, 3);
        return Spectrum.stability(balance, equations.pattern(), new double[] {LINE, PLACE});
    }

    @Test
    void eachOnItsOwnFallsBackOrRunsAway() {
        assertEquals(Stability.STABLE, of(1, 0, 0, 1));
        assertEquals(Stability.UNSTABLE, of(-1, 0, 0, 1));
        assertEquals(Stability.UNSTABLE, of(1, 0, 0, -1));
        assertEquals(Stability.STABLE, of(0, 0, 0, 1), "a line that nothing moves stays");
        assertEquals(Stability.STABLE, of(-1e-13, 0, 0, 1), "what grows slower than rounding does not grow");
        assertEquals(Stability.UNSTABLE, of(-1e-9, 0, 0, 1));
    }

    /** Rates −10 and +1/0.03 = 33 with a strong exchange swing up; −40 and +33 swing down. */
    @Test
    void aSpoolThatPushesOnIsHeldByALineThatFallsBackFasterAndElseSwings() {
        assertEquals(Stability.SWINGING, of(10, 100, -10, -1));
        assertEquals(Stability.STABLE, of(40, 100, -10, -1));
    }

    /** Without a swing: the product of the exchange, 1/s² each, against that of the rates, 10·33. */
    @Test
    void anExchangeThatFeedsItselfRunsAwayWhereItBeatsWhatFallsBack() {
        assertEquals(Stability.STABLE, of(10, 9, 1, 1), "9 against 10");
        assertEquals(Stability.UNSTABLE, of(10, 11, 1, 1), "11 against 10");
    }

    @Test
    void aSpoolOnItsStopStaysThere() {
        Share node = MadeEquations.straight(LINE, PLACE, 1e-5, 0);
        Share runsAway = MadeEquations.straight(LINE, PLACE, 0, -1);
        Equations equations = new MadeEquations(node, runsAway).equations();
        assertEquals(Stability.STABLE, Spectrum.stability(new Balance(equations), equations.pattern(), new double[] {
            LINE, MadeEquations.HIGH
        }));
    }
}
