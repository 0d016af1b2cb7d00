package hotidle.circuits.sheet;

import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What stands in a cell for a measured size: one reading, or several. Depths are parted by blanks, strokes or semicolons, the
 * directions at one depth by an x: {@code 14.061x14.066 14.060x14.063 14.071x14.080}.
 *
 * @param numbers  as written, with a point for a decimal comma
 * @param unit     behind the numbers; empty where the row has to say it
 */
record MeasuredCell(List<List<String>> numbers, String unit) {

    private static final String ONE = "[+-]?\\d{0,9}[.,]?\\d{1,9}";

    /** More readings of one size than these are a slip (chosen). */
    private static final int MOST = 24;

    private static final Pattern CELL = Pattern.compile(
            "(" + ONE + "(?:(?:\\s*x\\s*|\\s*[;/]\\s*|\\s+)" + ONE + "){0," + (MOST - 1) + "})\\s*(\\p{L}*|\"|\u2033)");

    private static final List<String> UNITS = List.of("mm", "in", "thou", "um", "cm");

    /** A cell that reads as numbers; empty where it does not. */
    static Optional<MeasuredCell> of(String text) {
        Matcher matcher = CELL.matcher(text);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        List<List<String>> numbers = new ArrayList<>();
        for (String depth : matcher.group(1).replaceAll("\\s*x\\s*", "x").split("\\s*[;/]\\s*|\\s+", -1)) {
            numbers.add(List.of(depth.replace(',', '.').split("x", -1)));
        }
        return Optional.of(new MeasuredCell(numbers, matcher.group(2)));
    }

    /** The unit of a text, in the word of this program; empty where it is none of length. */
    static Optional<String> unit(String text) {
        return Units.word(text, Dimension.LENGTH)
                .or(() -> Units.word(text.toLowerCase(Locale.ROOT), Dimension.LENGTH))
                .filter(UNITS::contains);
    }

    static List<String> units() {
        return UNITS;
    }

    Readings readings(String inUnit) {
        return new Readings(numbers.stream()
                .map(depth -> depth.stream()
                        .map(number -> Units.parse(number + " " + inUnit, Dimension.LENGTH))
                        .toList())
                .toList());
    }

    /** Its first number, which is the only one of a single reading. */
    String first() {
        return numbers.get(0).get(0);
    }
}
