package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.answer.format.Quantity.UnitSystem;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class LivePhraseTest {

    private static final double PSI = 6894.757293168362;

    @Test
    void theHighestPressureHeldIsNotToldTooHigh() {
        assertEquals(
                "At 650 rpm the line alone holds a set pressure of up to 102 psi; what the unit may be set to, the verdict says.",
                LivePhrase.highest(UnitSystem.SHOP, 650 / 60.0, OptionalDouble.of(102.9 * PSI), false));
        assertEquals(
                "At 650 rpm the line alone holds a set pressure of up to 7.09 bar; what the unit may be set to, the verdict says.",
                LivePhrase.highest(UnitSystem.METRIC, 650 / 60.0, OptionalDouble.of(7.099e5), false));
        assertEquals(
                "At 3000 rpm the line alone holds a set pressure of up to 400 psi, the highest that was tried; what the unit may be set to, the verdict"
                        + " says.",
                LivePhrase.highest(UnitSystem.SHOP, 50, OptionalDouble.of(400 * PSI), true));
        assertEquals(
                "At 100 rpm the line holds no set pressure.",
                LivePhrase.highest(UnitSystem.SHOP, 100 / 60.0, OptionalDouble.empty(), false));
    }
}
