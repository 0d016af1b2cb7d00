package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.transmission.SetPressure;
import org.junit.jupiter.api.Test;

/** What is said of a limit that fails with a pump that has oil to spare. */
class LineShortPhraseTest {

    private static final double PSI = SetPressure.PSI;
    private static final LineShortPhrase SHOP = new LineShortPhrase(UnitSystem.SHOP);

    @Test
    void aSetPressureTooLowForATorqueIsNoShortageOfOil() {
        assertEquals(
                "The pump is not short of oil: the line stands there at 72 psi (60 psi commanded), too little for this"
                        + " torque.",
                SHOP.tooLittle(72 * PSI, 60 * PSI));
        assertEquals(
                "The pump is not short of oil: the line stands there at 32 psi (26 psi commanded), and at that too"
                        + " little passes.",
                SHOP.passesTooLittle(32 * PSI, 26 * PSI));
    }

    @Test
    void pressureLostOnTheWayAndARegulatorThatLetsGoAreToldApart() {
        assertEquals(
                "Neither pump nor line is short, 160 psi: pressure is lost on the way to low-clutch, past a ring, a seal"
                        + " or a valve.",
                SHOP.lostOnTheWay(160 * PSI, "low-clutch"));
        assertEquals(
                "The pump is not short of oil: the regulator lets it go at 54 psi, below the 90 psi commanded there.",
                SHOP.letsGo(54 * PSI, 90 * PSI));
    }
}
