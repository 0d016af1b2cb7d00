package hotidle.circuits.sheet;

import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Place;
import hotidle.circuits.text.Units;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
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
 * @param given    whether the unit is only that in which the sheet gives new sizes
 * @param air      the air reading that it follows from; empty where it was gauged
 */
record Measured(
        String target,
        String key,
        MeasuredCell cell,
        String unit,
        Readings readings,
        Place place,
        boolean given,
        Optional<String> air) {

    /** Digits of a length that is told: a hundredth of what a gauge shows (chosen). */
    private static final MathContext DIGITS = new MathContext(6);

    /** A number with the unit. */
    String text(String number) {
        return number + " " + unit;
    }

    /** How it was found where it is no single reading of a gauge, in words. */
    String counted() {
        return air.map(reading -> "air reading " + reading).orElseGet(readings::counted);
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
