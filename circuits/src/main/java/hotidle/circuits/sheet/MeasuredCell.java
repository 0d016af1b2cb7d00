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
 * What stands in a cell for a measured size: one reading, or several. Bores of a row that stands for several are parted by
 * semicolons, depths by blanks or strokes, the directions at one depth by an x: {@code 14.061x14.066 14.060x14.063 14.071x14.080}.
 *
 * @param pieces   as written, with a point for a decimal comma: a bore a list of depths, each a list of directions
 * @param unit     behind the numbers; empty where the row has to say it
 */
record MeasuredCell(List<List<List<String>>> pieces, String unit) {

    private static final String ONE = "[+-]?(?:\\d{1,9}(?:[.,]\\d{1,9})?|[.,]\\d{1,9})";

    /** More readings than these in one cell are a slip (chosen): six of each of two dozen bores. */
    private static final int MOST = 144;

    private static final Pattern CELL = Pattern.compile(
            "(" + ONE + "(?:(?:\\s*x\\s*|\\s*[;/]\\s*|\\s+)" + ONE + "){0," + (MOST - 1) + "})\\s*(\\p{L}*|\"|\u2033)");

    private static final List<String> UNITS = List.of("mm", "in", "thou", "um", "cm");

    /** A cell that reads as numbers; empty where it does not. */
    static Optional<MeasuredCell> of(String text) {
        Matcher matcher = CELL.matcher(text);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        List<List<List<String>>> pieces = new ArrayList<>();
        for (String piece : matcher.group(1).replaceAll("\\s*x\\s*", "x").split("\\s*;\\s*", -1)) {
            List<List<String>> depths = new ArrayList<>();
            for (String depth : piece.split("\\s*/\\s*|\\s+", -1)) {
                depths.add(List.of(depth.replace(',', '.').split("x", -1)));
            }
            pieces.add(depths);
        }
        return Optional.of(new MeasuredCell(pieces, matcher.group(2)));
    }

    /** One number alone. */
    static MeasuredCell one(String number, String unit) {
        return new MeasuredCell(List.of(List.of(List.of(number))), unit);
    }

    /** All depths, whatever bore they are of. */
    List<List<String>> numbers() {
        return pieces.stream().flatMap(List::stream).toList();
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
        return readings(numbers(), inUnit);
    }

    /** The readings of each of so many equal bores: those parted by semicolons, or one each where there are as many as bores. */
    List<Readings> each(String inUnit, int count) {
        List<List<String>> all = numbers();
        if (count == 1) {
            return List.of(readings(all, inUnit));
        }
        List<List<List<String>>> bores = pieces.size() == 1 && all.size() == count
                ? all.stream().map(List::of).toList()
                : pieces;
        return bores.stream().map(bore -> readings(bore, inUnit)).toList();
    }

    private static Readings readings(List<List<String>> depths, String inUnit) {
        return new Readings(depths.stream()
                .map(depth -> depth.stream()
                        .map(number -> Units.parse(number + " " + inUnit, Dimension.LENGTH))
                        .toList())
                .toList());
    }

    /** Its first number, which is the only one of a single reading. */
    String first() {
        return pieces.get(0).get(0).get(0);
    }
}
