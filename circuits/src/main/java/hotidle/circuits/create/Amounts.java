package hotidle.circuits.create;

import hotidle.circuits.text.AssumedMark;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Units;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers with their units as texts of a draft. */
final class Amounts {

    private static final Pattern AMOUNT =
            Pattern.compile("([+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?)(\\s*)(.*)", Pattern.DOTALL);

    /** Digits that a scaled number is written with: finer than any rule here. */
    private static final MathContext DIGITS = new MathContext(4);

    /** Keys whose texts are words, whatever they begin with. */
    private static final Set<String> WORDS =
            Set.of("about", "source", "because", "port", "between", "label", "kind", "circuit");

    private Amounts() {}

    /** The number times a factor, with the same unit; what is no number stays. */
    static String times(String text, double factor) {
        Matcher matcher = AMOUNT.matcher(AssumedMark.without(text));
        if (!matcher.matches() || factor == 1) {
            return text;
        }
        BigDecimal scaled = new BigDecimal(matcher.group(1)).multiply(BigDecimal.valueOf(factor));
        return plain(scaled) + matcher.group(2) + matcher.group(3);
    }

    /** A number with a unit. */
    static String of(double value, String unit) {
        return (plain(BigDecimal.valueOf(value)) + " " + unit).strip();
    }

    private static String plain(BigDecimal number) {
        BigDecimal rounded = number.round(DIGITS).stripTrailingZeros();
        return (rounded.scale() < 0 ? rounded.setScale(0) : rounded).toPlainString();
    }

    /** A length times a factor plus another length, as the sizes of a bore whose clearance stays. */
    static String plus(String text, double factor, double more) {
        Matcher matcher = AMOUNT.matcher(AssumedMark.without(text));
        if (!matcher.matches()) {
            return text;
        }
        double value = Double.parseDouble(matcher.group(1)) * factor + more;
        return BigDecimal.valueOf(value)
                        .setScale(3, java.math.RoundingMode.HALF_UP)
                        .toPlainString()
                + matcher.group(2)
                + matcher.group(3);
    }

    /** A length and some more [m], to the micrometre; what is no length stays. */
    static String longer(String text, double more) {
        Matcher matcher = AMOUNT.matcher(AssumedMark.without(text));
        if (more == 0 || !matcher.matches()) {
            return text;
        }
        double metres = Units.parse(AssumedMark.without(text), Dimension.LENGTH);
        double number = Double.parseDouble(matcher.group(1));
        return plus(text, 1, more * number / metres);
    }

    /** The number of a text; empty where it has none. */
    static OptionalDouble number(String text) {
        Matcher matcher = AMOUNT.matcher(AssumedMark.without(text));
        return matcher.matches() ? OptionalDouble.of(Double.parseDouble(matcher.group(1))) : OptionalDouble.empty();
    }

    /** The number of a text less that of another; empty where one has none. */
    static OptionalDouble difference(String text, String other) {
        OptionalDouble one = number(text);
        OptionalDouble two = number(other);
        return one.isPresent() && two.isPresent()
                ? OptionalDouble.of(one.getAsDouble() - two.getAsDouble())
                : OptionalDouble.empty();
    }

    /** Marks every number of a mapping as assumed but zeros, which are where something is counted from. */
    static void mark(Map<String, Object> keys) {
        keys.replaceAll((key, value) -> WORDS.contains(key) ? value : marked(value));
    }

    private static Object marked(Object value) {
        if (value instanceof String text) {
            boolean number = AMOUNT.matcher(text).matches() && number(text).orElse(0) != 0;
            return number ? AssumedMark.MARK + text : text;
        }
        Draft.map(value).ifPresent(Amounts::mark);
        Draft.list(value).ifPresent((List<Object> list) -> list.replaceAll(Amounts::marked));
        return value;
    }
}
