package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.assess.Margin;
import hotidle.study.LineShort;
import hotidle.transmission.SetPressure;
import org.junit.jupiter.api.Test;

/** What is said of a limit that fails with a pump that has oil to spare. */
class LineShortPhraseTest {

    private static final double PSI = SetPressure.PSI;
    private static final Margin CLUTCH =
            Margin.of(Margin.Kind.APPLY, "low-clutch", 72 * PSI, 142 * PSI, Margin.Scale.PRESSURE);

    private static String said(LineShort.Why why, double line, double set) {
        return new LineShortPhrase(UnitSystem.SHOP).of(new LineShort(why, line * PSI, set * PSI), CLUTCH);
    }

    @Test
    void aSetPressureTooLowForATorqueIsNoShortageOfOil() {
        assertEquals(
                "The pump is not short of oil: the line stands there at 72 psi (60 psi commanded), too little for this"
                        + " torque.",
                said(LineShort.Why.COMMANDED_TOO_LITTLE, 72, 60));
        assertEquals(
                "The pump is not short of oil: the line stands there at 32 psi (26 psi commanded), and at that too"
                        + " little passes.",
                said(LineShort.Why.PASSES_TOO_LITTLE, 32, 26));
    }

    @Test
    void pressureLostOnTheWayAndARegulatorThatLetsGoAreToldApart() {
        assertEquals(
                "Neither pump nor line is short, 160 psi: pressure is lost on the way to low-clutch, past a ring, a seal"
                        + " or a valve.",
                said(LineShort.Why.LOST_ON_THE_WAY, 160, 150));
        assertEquals(
                "The pump is not short of oil: the regulator lets it go at 54 psi, below the 90 psi commanded there.",
                said(LineShort.Why.REGULATOR_LETS_GO, 54, 90));
    }
}
