package hotidle.circuits.sheet;

import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Place;
import hotidle.circuits.text.Units;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.Stream;

/**
 * A size as it was measured.
 *
 * @param target   part and key
 * @param key      path of the key
 * @param cell     as written
 * @param unit     in which
 * @param readings the same [m]
 * @param place    of the cell
 */
record Measured(String target, String key, MeasuredCell cell, String unit, Readings readings, Place place) {

    /** Digits of a length that is told: a hundredth of what a gauge shows (chosen). */
    private static final MathContext DIGITS = new MathContext(6);

    /** A number with the unit. */
    String text(String number) {
        return number + " " + unit;
    }

    /** All numbers as written. */
    Stream<String> numbers() {
        return cell.numbers().stream().flatMap(List::stream);
    }

    /** A length [m] in the unit in which this was measured. */
    String alike(double metres) {
        BigDecimal number = BigDecimal.valueOf(metres / Units.parse(text("1"), Dimension.LENGTH));
        return text(number.round(DIGITS).stripTrailingZeros().toPlainString());
    }
}
