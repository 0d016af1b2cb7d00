package hotidle.answer.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity.UnitSystem;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** How a value is shown: units, digits, tables, lines, JSON. */
class QuantityTest {

    @Test
    void hotOilAndItsPressureAreShownInTheUnitsOfTheReader() {
        assertEquals("203 degF", Quantity.TEMPERATURE.with(UnitSystem.SHOP, 368.15));
        assertEquals("95 degC", Quantity.TEMPERATURE.with(UnitSystem.METRIC, 368.15));
        assertEquals("100 psi", Quantity.PRESSURE.with(UnitSystem.SHOP, 689_475.7));
        assertEquals("1.00 gpm", Quantity.FLOW.with(UnitSystem.SHOP, 231 * Math.pow(0.0254, 3) / 60));
        assertEquals("600 rpm", Quantity.SPEED.with(UnitSystem.SI, 10));
    }

    @Test
    void aPressureThatIsNotKnownIsADashAndATinySuctionNoMinusZero() {
        assertEquals("-", Quantity.PRESSURE.number(UnitSystem.SHOP, Double.NaN));
        assertEquals("0", Quantity.PRESSURE.number(UnitSystem.SHOP, -1));
        assertEquals("0.00", Quantity.PRESSURE.number(UnitSystem.METRIC, -1));
    }

    @Test
    void fourDigitsCountWhateverTheSize() {
        assertEquals("1235", Digits.four(1234.6));
        assertEquals("0.001235", Digits.four(0.0012346));
        assertEquals("123500", Digits.four(123_460));
        assertEquals("1.235e-7", Digits.four(1.2346e-7));
        assertEquals("0", Digits.four(0));
        assertEquals("-", Digits.four(Double.POSITIVE_INFINITY));
    }

    @Test
    void aPercentSignStaysWithItsNumberAtTheEndOfALine() {
        String text = "x".repeat(96) + " 87 % of the oil";
        assertEquals(
                List.of("x".repeat(96), "  87 % of the oil"),
                Wrap.lines(text, "", "  ").lines().toList());
    }

    @Test
    void numbersStandRightUnderTheirHeadAndACommaIsQuotedForASpreadsheet() {
        TextTable table = new TextTable(List.of("build", "line")).add(List.of("worn, old", "7"));
        assertEquals("build      line\n---------------\nworn, old     7\n", table.aligned());
        assertEquals("build,line\n\"worn, old\",7\n", table.csv());
    }

    /** A record as answers have them. */
    record Line(double setPressurePa, OptionalDouble linePa, Map<String, Double> flows) {}

    @Test
    void aPressureThatIsNotKnownIsNullInJsonUnderAKeyInSmallLetters() {
        String text = Json.text(new Line(Double.NaN, OptionalDouble.empty(), Map.of("cooler", 1e-4)));
        assertTrue(text.contains("\"set_pressure_pa\" : null"), text);
        assertTrue(text.contains("\"line_pa\" : null"), text);
        assertTrue(text.contains("\"cooler\" : 1.0E-4"), text);
        assertTrue(text.endsWith("}\n"), text);
    }
}
