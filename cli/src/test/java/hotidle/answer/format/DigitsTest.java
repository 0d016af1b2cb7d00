package hotidle.answer.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Numbers on a screen and in JSON. */
class DigitsTest {

    @Test
    void fourDigitsCountWhateverTheSize() {
        assertEquals("1.235", Digits.four(1.23456));
        assertEquals("1235", Digits.four(1234.56));
        assertEquals("123500", Digits.four(123456));
        assertEquals("0.0001235", Digits.four(1.23456e-4));
        assertEquals("-2.5", Digits.four(-2.5));
    }

    @Test
    void whatIsVerySmallOrLargeHasAPowerOfTen() {
        assertEquals("1.235e-7", Digits.four(1.23456e-7));
        assertEquals("1.235e9", Digits.four(1.23456e9));
    }

    @Test
    void nothingIsADashAndNilIsNil() {
        assertEquals("-", Digits.four(Double.NaN));
        assertEquals("-", Digits.four(Double.POSITIVE_INFINITY));
        assertEquals("0", Digits.four(0));
    }

    @Test
    void numbersThatDifferReadDifferently() {
        List<Double> near = List.of(1.0001, 1.0002, 1.0001);
        assertEquals("1.0001", Digits.apart(1.0001, near, 'f', 1));
        assertNotEquals(Digits.apart(1.0001, near, 'f', 1), Digits.apart(1.0002, near, 'f', 1));
        assertEquals("1.0", Digits.apart(1.0, List.of(1.0, 2.0), 'f', 1));
    }

    @Test
    void aSpeedIsToldInRevolutionsAMinute() {
        assertEquals(600, Rpm.of(10), 1e-12);
        assertEquals(600, Rpm.of(OptionalDouble.of(10)).orElseThrow(), 1e-12);
        assertTrue(Rpm.of(OptionalDouble.empty()).isEmpty());
    }

    private record Reading(double valuePa, OptionalDouble soundPa, Optional<String> tap) {}

    @Test
    void jsonHasNullWhereThereIsNothingAndNoWordForWhatIsNotFinite() {
        JsonNode none = Json.tree(new Reading(Double.NaN, OptionalDouble.empty(), Optional.empty()));
        assertTrue(none.get("value_pa").isNull());
        assertTrue(none.get("sound_pa").isNull());
        assertTrue(none.get("tap").isNull());
        JsonNode some = Json.tree(new Reading(1e5, OptionalDouble.of(Double.POSITIVE_INFINITY), Optional.of("line")));
        assertEquals(1e5, some.get("value_pa").doubleValue());
        assertTrue(some.get("sound_pa").isNull());
        assertEquals("line", some.get("tap").textValue());
    }

    @Test
    void jsonEndsWithALineAndKeepsTheOrderOfItsRecord() {
        String text = Json.text(new Reading(1, OptionalDouble.of(2), Optional.of("line")));
        assertTrue(text.endsWith("}\n"), text);
        assertTrue(text.indexOf("value_pa") < text.indexOf("sound_pa"), text);
        assertTrue(text.indexOf("sound_pa") < text.indexOf("\"tap\""), text);
    }
}
