package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.answer.format.Quantity.UnitSystem;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A line just short of its set pressure must not look as if it reached it. */
class LinePressurePhraseTest {

    @Test
    void aLineJustShortOfItsSetPressureIsShownWithMoreDecimals() {
        assertEquals("3.998 bar", LinePressurePhrase.of(UnitSystem.METRIC, 3.998e5, OptionalDouble.of(4e5)));
        assertEquals("399999.7 Pa", LinePressurePhrase.of(UnitSystem.SI, 399_999.7, OptionalDouble.of(4e5)));
    }

    @Test
    void aLineThatIsClearlyBelowOrAtItsSetPressureKeepsTheUsualDecimals() {
        assertEquals("2.50 bar", LinePressurePhrase.of(UnitSystem.METRIC, 2.5e5, OptionalDouble.of(4e5)));
        assertEquals("4.00 bar", LinePressurePhrase.of(UnitSystem.METRIC, 4.001e5, OptionalDouble.of(4e5)));
        assertEquals("58 psi", LinePressurePhrase.of(UnitSystem.SHOP, 4e5, OptionalDouble.of(4e5)));
    }

    @Test
    void withoutASetPressureThereIsNothingToTellItFrom() {
        assertEquals("4.00 bar", LinePressurePhrase.of(UnitSystem.METRIC, 3.998e5, OptionalDouble.empty()));
    }
}
