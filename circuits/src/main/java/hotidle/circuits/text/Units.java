package hotidle.circuits.text;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads quantities as users write them, a number and a unit of {@link UnitTable}. */
public final class Units {

    /**
     * A quantity as read: a value in SI, or what is wrong with it.
     *
     * @param si    value in SI; 0 where something is wrong
     * @param wrong what is wrong; empty where nothing is
     * @param why   the rule
     * @param remedy what to write
     */
    public record Amount(double si, String wrong, String why, Remedy remedy) {
        /** What to write in a file. */
        public String mend() {
            return remedy.inFile();
        }

        /** Whether the text is a quantity of the dimension. */
        public boolean good() {
            return wrong.isEmpty();
        }
    }

    /** A number, then perhaps a unit, with or without a blank; short enough that its decimals stay cheap. */
    private static final Pattern QUANTITY = Pattern.compile(
            "(?<number>[+-]?(?:\\d{1,20}(?:\\.\\d{0,20})?|\\.\\d{1,20})(?:[eE][+-]?\\d{1,2})?)\\s*(?<unit>.*)",
            Pattern.DOTALL);

    static final Pattern DECIMAL_COMMA = Pattern.compile("[+-]?\\d+,\\d+.*", Pattern.DOTALL);

    private static final Pattern FRACTION =
            Pattern.compile("(?<over>\\d{1,3})\\s*/\\s*(?<under>\\d{1,3})\\s*(?<unit>[a-zA-Z]*)");

    private static final String PLAIN = "[+-]?\\d{1,9}(?:\\.\\d{0,9})?";

    private static final Pattern SERIES = Pattern.compile(
            "(?<from>" + PLAIN + ")\\.\\.(?<to>" + PLAIN + ")/(?<step>" + PLAIN + ")(?<unit>.*)", Pattern.DOTALL);

    private static final BigDecimal MOST_STEPS = new BigDecimal(10_000);

    private Units() {}

    /** The units of a dimension, as words. */
    public static List<String> of(Dimension dimension) {
        return UnitTable.of(dimension).stream().map(UnitTable.Unit::word).toList();
    }

    /** The same with every other spelling that is taken for one of them. */
    public static List<String> spellings(Dimension dimension) {
        List<String> all = new ArrayList<>(of(dimension));
        all.addAll(UnitTable.also(dimension));
        return all;
    }

    /** The unit of a dimension that is written so, in the word of this program; empty where it is none. */
    public static Optional<String> word(String written, Dimension dimension) {
        return UnitTable.find(plain(written), dimension).map(UnitTable.Unit::word);
    }

    /**
     * Reads a quantity; never throws. Signs that a keyboard or a data sheet may have in place of plain letters are taken as
     * these: µm, °C, mm², a hard blank, a long minus.
     */
    public static Amount read(String written, Dimension dimension) {
        String text = plain(written);
        Matcher matcher = QUANTITY.matcher(text);
        if (text.indexOf('/') >= 0 && FRACTION.matcher(text).matches()) {
            return NoQuantity.fraction(FRACTION.matcher(text));
        }
        if (!matcher.matches()
                || (text.indexOf(',') >= 0 && DECIMAL_COMMA.matcher(text).matches())) {
            return NoQuantity.noNumber(text, dimension);
        }
        String word = matcher.group("unit").strip();
        BigDecimal number = new BigDecimal(matcher.group("number"));
        return UnitTable.find(word, dimension)
                .map(unit -> new Amount(unit.toSi(number), "", "", Remedy.NONE))
                .orElseGet(() -> NoQuantity.noUnit(matcher.group("number"), word, dimension));
    }

    /**
     * Reads a quantity or throws.
     *
     * @throws IllegalArgumentException saying what is wrong and what to write
     */
    public static double parse(String text, Dimension dimension) {
        Amount amount = read(text, dimension);
        if (!amount.good()) {
            throw new IllegalArgumentException("'" + text + "': " + amount.wrong() + "; " + amount.mend());
        }
        return amount.si();
    }

    /**
     * Reads {@code 500..3500/50rpm}, first and last number, step and unit, or a single quantity. The last value is always among
     * them.
     *
     * @return the values in SI, rising
     * @throws IllegalArgumentException saying what is wrong and what to write
     */
    public static List<Double> series(String text, Dimension dimension) {
        Matcher matcher = SERIES.matcher(text.strip());
        if (!matcher.matches()) {
            return List.of(parse(text, dimension));
        }
        String unit = matcher.group("unit").strip();
        parse(matcher.group("from") + unit, dimension);
        BigDecimal from = new BigDecimal(matcher.group("from"));
        BigDecimal to = new BigDecimal(matcher.group("to"));
        BigDecimal step = new BigDecimal(matcher.group("step"));
        if (step.signum() <= 0
                || to.compareTo(from) < 0
                || to.subtract(from).compareTo(step.multiply(MOST_STEPS)) > 0) {
            throw new IllegalArgumentException(
                    "'" + text + "': a series rises from its first to its last value in at most " + MOST_STEPS
                            + " steps above zero; write 500..3500/50rpm, for example");
        }
        List<Double> values = new ArrayList<>();
        for (BigDecimal number = from; number.compareTo(to) < 0; number = number.add(step)) {
            values.add(parse(number.toPlainString() + unit, dimension));
        }
        values.add(parse(to.toPlainString() + unit, dimension));
        return List.copyOf(values);
    }

    /** The same number with another unit of the dimension that brings it between two bounds [SI], if there is one. */
    public static Optional<String> sameNumberBetween(String text, Dimension dimension, double low, double high) {
        Matcher matcher = QUANTITY.matcher(text.strip());
        if (!matcher.matches()) {
            return Optional.empty();
        }
        BigDecimal number = new BigDecimal(matcher.group("number"));
        return UnitTable.of(dimension).stream()
                .filter(unit -> unit.toSi(number) >= low && unit.toSi(number) <= high)
                .map(unit -> (matcher.group("number") + " " + unit.word()).strip())
                .findFirst();
    }

    /** A value in SI as a text that reads back as the same value. */
    public static String inSi(double value, Dimension dimension) {
        String word = UnitTable.of(dimension).stream()
                .filter(unit -> unit.times().compareTo(BigDecimal.ONE) == 0
                        && unit.by().compareTo(BigDecimal.ONE) == 0
                        && unit.offset().signum() == 0)
                .findFirst()
                .orElseThrow()
                .word();
        return (value + " " + word).strip();
    }

    private static String plain(String written) {
        if (written.chars().allMatch(sign -> sign < 128)) {
            return written.strip();
        }
        return written.replace('\u00a0', ' ')
                .replace('\u202f', ' ')
                .replace('\u2009', ' ')
                .replace('\u2212', '-')
                .replace('\u00b5', 'u')
                .replace('\u03bc', 'u')
                .replace('\u00b2', '2')
                .replace('\u00b3', '3')
                .replace('\u00b7', '.')
                .replace("\u00b0", "deg")
                .replace("\u2033", "\"")
                .strip();
    }
}
