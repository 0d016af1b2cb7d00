package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.answer.format.Quantity.UnitSystem;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Whether the line stands at the pressure commanded. */
class HeldLinePhraseTest {

    private static final HeldLinePhrase METRIC = new HeldLinePhrase(UnitSystem.METRIC);
    private static final OptionalDouble LUBE = OptionalDouble.of(1e-4);

    @Test
    void aHeldLineIsToldInTheUnitsAskedForWithTheOilForLubrication() {
        assertEquals(
                "worn holds its 4.00 bar at hot-idle: line 4.02 bar, lubrication 6.0 L/min.",
                METRIC.held("worn", false, 4e5, "hot-idle", 4.02e5, LUBE, ""));
        assertEquals(
                "worn holds its 58 psi at hot-idle: line 58 psi, lubrication 1.59 gpm.",
                new HeldLinePhrase(UnitSystem.SHOP).held("worn", false, 4e5, "hot-idle", 4.02e5, LUBE, ""));
        assertEquals(
                "worn holds its 400000 Pa at hot-idle: line 402000 Pa, lubrication 0.0001000 m3/s.",
                new HeldLinePhrase(UnitSystem.SI).held("worn", false, 4e5, "hot-idle", 4.02e5, LUBE, ""));
    }

    @Test
    void aHeldLineMayStillLeaveTheCoolerShort() {
        assertEquals(
                "worn holds its 4.00 bar at hot-idle: line 4.00 bar. Even so too little (is, of needed) for cooler 1.0 of 4.0"
                        + " L/min.",
                METRIC.held("worn", false, 4e5, "hot-idle", 4e5, OptionalDouble.empty(), "cooler 1.0 of 4.0 L/min"));
    }

    @Test
    void aLineFarAboveItsSetPressureOvershoots() {
        assertEquals(
                "worn overshoots its 4.00 bar at stall: line 9.00 bar.",
                METRIC.held("worn", true, 4e5, "stall", 9e5, OptionalDouble.empty(), ""));
        assertEquals(
                "the line stands at 9.00 bar, far above the 4.00 bar commanded: the regulator cannot let go of the oil,"
                        + " or sticks.",
                METRIC.farAbove(9e5, 4e5, false));
        assertEquals(
                "the line stands at 9.00 bar, far above the 4.00 bar commanded: the regulator cannot let go of the oil,"
                        + " or sticks; the relief valve holds the line.",
                METRIC.farAbove(9e5, 4e5, true));
    }

    @Test
    void aLineThatIsNotHeldSaysWhereTheOilGoes() {
        assertEquals(
                "worn cannot hold its 4.00 bar at hot-idle: line 2.50 bar.",
                METRIC.notHeld("worn", 4e5, "hot-idle", 2.5e5, false, false, OptionalDouble.empty(), ""));
        assertEquals(
                "worn cannot hold its 4.00 bar at hot-idle: line 2.50 bar, regulator on its seat, relief valve open,"
                        + " lubrication 6.0 L/min. Too little (is, of needed) for converter 0.5 of 2.0 L/min.",
                METRIC.notHeld("worn", 4e5, "hot-idle", 2.5e5, true, true, LUBE, "converter 0.5 of 2.0 L/min"));
    }

    @Test
    void aBenchThatNothingRegulatesHoldsNothing() {
        assertEquals(
                "fresh: nothing is commanded; at cold the line stands at 4.00 bar.",
                METRIC.uncommanded("fresh", "cold", 4e5));
    }
}
