package hotidle.answer.map;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.LimitPhrase;
import hotidle.assess.Margin;
import hotidle.study.Judgement;
import hotidle.study.WindowMap;
import hotidle.transmission.WearSize;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

/** What table and picture of a map have in common: letters of the limits that decide, and the unit of the size. */
record MapGrid(Quantity.UnitSystem units, WindowMap map) {

    /** Sizes up to this are told in thousandths or micrometres (chosen) [m]. */
    private static final double SMALL = 50e-6;

    /** Every limit that decides somewhere, with its letter. */
    Map<Judgement.Key, String> letters() {
        Map<Judgement.Key, String> letters = new LinkedHashMap<>();
        map.cells().stream()
                .flatMap(List::stream)
                .flatMap(cell -> cell.least().stream())
                .forEach(least -> letters.computeIfAbsent(least.key(), key -> letter(letters.size())));
        return letters;
    }

    private static String letter(int number) {
        String one = String.valueOf((char) ('A' + number % 26));
        return number < 26 ? one : one + (number / 26);
    }

    static String limit(Judgement.Key key) {
        return LimitPhrase.at(key.kind(), key.part(), key.duty());
    }

    /** Areas up to here are told to the last digit (chosen): a square centimetre [m²]. */
    private static final double LARGE = 1e-4;

    Quantity quantity() {
        if (map.axis().dimension().kind() == WearSize.SizeKind.AREA) {
            return map.values().get(map.values().size() - 1) > LARGE ? Quantity.PISTON_AREA : Quantity.AREA;
        }
        if (map.values().get(map.values().size() - 1) <= SMALL) {
            return Quantity.FILM;
        }
        return alike(Quantity.SIZE) ? Quantity.FIT : Quantity.SIZE;
    }

    /** Whether two sizes would read the same, as one that the file tells beside one that was asked for. */
    private boolean alike(Quantity quantity) {
        return map.values().stream()
                        .map(value -> quantity.number(units, value))
                        .distinct()
                        .count()
                < map.values().size();
    }

    /** The headroom of a point with its percent sign, or the word in place of a number. */
    String headroom(WindowMap.MapCell cell) {
        String number = percent(cell.headroom());
        return number.equals("?") ? MapRecord.NOT_KNOWN : number.matches("[-+].*") ? number + " %" : number;
    }

    static String percent(OptionalDouble known) {
        if (known.isEmpty()) {
            return "?";
        }
        double headroom = known.getAsDouble();
        if (headroom == Double.NEGATIVE_INFINITY) {
            return "contact";
        }
        return Margin.ample(headroom) ? "ample" : String.format(Locale.ROOT, "%+.0f", 100 * headroom);
    }
}
