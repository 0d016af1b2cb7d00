package hotidle.circuits.text;

import static java.util.Map.entry;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The units that users write, by dimension, each with its factor to SI. The first unit of a dimension is the one shown in
 * examples.
 *
 * <p>Inch 25.4 mm, pound-force 4.4482216152605 N, US gallon 3.785411784 L and so on are exact by definition: NIST Special
 * Publication 811 (2008), Appendix B (from memory). Sums are done in decimals, so that 14.030 mm is 0.01403 m to the last digit.
 */
public final class Units {

    /**
     * A unit: SI value = (number + offset)·times/by.
     *
     * @param word   as written, for example psi
     * @param times  numerator
     * @param by     denominator
     * @param offset added to the number first; zero but for temperatures
     */
    public record Unit(String word, BigDecimal times, BigDecimal by, BigDecimal offset) {
        private static Unit of(String word, String times) {
            return new Unit(word, new BigDecimal(times), BigDecimal.ONE, BigDecimal.ZERO);
        }

        private static Unit of(String word, String times, String by) {
            return new Unit(word, new BigDecimal(times), new BigDecimal(by), BigDecimal.ZERO);
        }

        private double toSi(BigDecimal number) {
            BigDecimal product = number.add(offset).multiply(times);
            return by.compareTo(BigDecimal.ONE) == 0
                    ? product.doubleValue()
                    : product.divide(by, MathContext.DECIMAL128).doubleValue();
        }
    }

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

    private static final Map<Dimension, List<Unit>> TABLE = Map.ofEntries(
            entry(Dimension.RATIO, List.of(Unit.of("", "1"), Unit.of("%", "0.01"))),
            entry(
                    Dimension.LENGTH,
                    List.of(
                            Unit.of("mm", "0.001"),
                            Unit.of("um", "0.000001"),
                            Unit.of("in", "0.0254"),
                            Unit.of("thou", "0.0000254"),
                            Unit.of("cm", "0.01"),
                            Unit.of("m", "1"))),
            entry(
                    Dimension.AREA,
                    List.of(
                            Unit.of("mm2", "1e-6"),
                            Unit.of("cm2", "1e-4"),
                            Unit.of("in2", "0.00064516"),
                            Unit.of("m2", "1"))),
            entry(
                    Dimension.PRESSURE,
                    List.of(
                            Unit.of("psi", "4.4482216152605", "0.00064516"),
                            Unit.of("bar", "1e5"),
                            Unit.of("kPa", "1e3"),
                            Unit.of("MPa", "1e6"),
                            Unit.of("Pa", "1"))),
            entry(
                    Dimension.TEMPERATURE,
                    List.of(
                            new Unit("degC", BigDecimal.ONE, BigDecimal.ONE, new BigDecimal("273.15")),
                            new Unit("degF", new BigDecimal(5), new BigDecimal(9), new BigDecimal("459.67")),
                            Unit.of("K", "1"))),
            entry(
                    Dimension.FLOW,
                    List.of(
                            Unit.of("L/min", "0.001", "60"),
                            Unit.of("mL/min", "0.000001", "60"),
                            Unit.of("gpm", "0.003785411784", "60"),
                            Unit.of("cm3/s", "1e-6"),
                            Unit.of("m3/s", "1"))),
            entry(Dimension.SPEED, List.of(Unit.of("rpm", "1", "60"), Unit.of("rev/s", "1"))),
            entry(
                    Dimension.DISPLACEMENT,
                    List.of(Unit.of("cm3/rev", "1e-6"), Unit.of("in3/rev", "0.000016387064"), Unit.of("m3/rev", "1"))),
            entry(Dimension.TORQUE, List.of(Unit.of("N.m", "1"), Unit.of("lbf.ft", "1.3558179483314004"))),
            entry(
                    Dimension.FORCE,
                    List.of(Unit.of("N", "1"), Unit.of("lbf", "4.4482216152605"), Unit.of("kN", "1000"))),
            entry(
                    Dimension.SPRING_RATE,
                    List.of(
                            Unit.of("N/mm", "1000"),
                            Unit.of("lbf/in", "4.4482216152605", "0.0254"),
                            Unit.of("N/m", "1"))),
            entry(
                    Dimension.ANGLE,
                    List.of(Unit.of("deg", "3.14159265358979323846264338327950288", "180"), Unit.of("rad", "1"))),
            entry(
                    Dimension.KINEMATIC_VISCOSITY,
                    List.of(Unit.of("mm2/s", "1e-6"), Unit.of("cSt", "1e-6"), Unit.of("m2/s", "1"))),
            entry(Dimension.VISCOSITY, List.of(Unit.of("mPa.s", "1e-3"), Unit.of("cP", "1e-3"), Unit.of("Pa.s", "1"))),
            entry(Dimension.DENSITY, List.of(Unit.of("kg/m3", "1"), Unit.of("g/cm3", "1000"))),
            entry(Dimension.DENSITY_SLOPE, List.of(Unit.of("kg/m3/K", "1"))),
            entry(Dimension.EXPANSION, List.of(Unit.of("1/K", "1"), Unit.of("um/m/K", "1e-6"))),
            entry(
                    Dimension.PRESSURE_COEFFICIENT,
                    List.of(
                            Unit.of("1/GPa", "1e-9"),
                            Unit.of("1/MPa", "1e-6"),
                            Unit.of("1/bar", "1e-5"),
                            Unit.of("1/Pa", "1"))),
            entry(
                    Dimension.OPENING,
                    List.of(
                            Unit.of("um/bar", "1e-11"),
                            Unit.of("um/MPa", "1e-12"),
                            Unit.of("mm/bar", "1e-8"),
                            Unit.of("in/psi", "0.0254", "6894.757293168361"),
                            Unit.of("m/Pa", "1"))),
            entry(
                    Dimension.POWER,
                    List.of(Unit.of("W", "1"), Unit.of("kW", "1000"), Unit.of("hp", "745.69987158227022"))));

    /** A number, then perhaps a unit, with or without a blank; short enough that its decimals stay cheap. */
    private static final Pattern QUANTITY = Pattern.compile(
            "(?<number>[+-]?(?:\\d{1,20}(?:\\.\\d{0,20})?|\\.\\d{1,20})(?:[eE][+-]?\\d{1,2})?)\\s*(?<unit>.*)",
            Pattern.DOTALL);

    private static final Pattern DECIMAL_COMMA = Pattern.compile("[+-]?\\d+,\\d+.*", Pattern.DOTALL);

    private static final Pattern FRACTION =
            Pattern.compile("(?<over>\\d{1,3})\\s*/\\s*(?<under>\\d{1,3})\\s*(?<unit>[a-zA-Z]*)");

    private static final String PLAIN = "[+-]?\\d{1,9}(?:\\.\\d{0,9})?";

    private static final Pattern SERIES = Pattern.compile(
            "(?<from>" + PLAIN + ")\\.\\.(?<to>" + PLAIN + ")/(?<step>" + PLAIN + ")(?<unit>.*)", Pattern.DOTALL);

    private static final BigDecimal MOST_STEPS = new BigDecimal(10_000);

    private Units() {}

    /** The units of a dimension, as words. */
    public static List<String> of(Dimension dimension) {
        return TABLE.get(dimension).stream().map(Unit::word).toList();
    }

    /**
     * Reads a quantity; never throws. Signs that a keyboard or a data sheet may have in place of plain letters are taken as
     * these: µm, °C, mm², a hard blank, a long minus.
     */
    public static Amount read(String written, Dimension dimension) {
        String text = plain(written);
        Matcher matcher = QUANTITY.matcher(text);
        if (text.indexOf('/') >= 0 && FRACTION.matcher(text).matches()) {
            return fraction(FRACTION.matcher(text));
        }
        if (!matcher.matches()
                || (text.indexOf(',') >= 0 && DECIMAL_COMMA.matcher(text).matches())) {
            return noNumber(text, dimension);
        }
        String word = matcher.group("unit").strip();
        BigDecimal number = new BigDecimal(matcher.group("number"));
        return unit(word, dimension)
                .map(unit -> new Amount(unit.toSi(number), "", "", Remedy.NONE))
                .orElseGet(() -> noUnit(matcher.group("number"), word, dimension));
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
        return TABLE.get(dimension).stream()
                .filter(unit -> unit.toSi(number) >= low && unit.toSi(number) <= high)
                .map(unit -> (matcher.group("number") + " " + unit.word()).strip())
                .findFirst();
    }

    /** A value in SI as a text that reads back as the same value. */
    public static String inSi(double value, Dimension dimension) {
        String word = TABLE.get(dimension).stream()
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
                .strip();
    }

    private static Optional<Unit> unit(String word, Dimension dimension) {
        for (Unit unit : TABLE.get(dimension)) {
            if (unit.word().equals(word)) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }

    private static Amount fraction(Matcher fraction) {
        Remedy mend = Remedy.NONE;
        if (fraction.matches()) {
            double value = Double.parseDouble(fraction.group("over")) / Double.parseDouble(fraction.group("under"));
            mend = Double.isFinite(value)
                    ? Remedy.write(String.valueOf(value), fraction.group("unit"), "")
                    : Remedy.NONE;
        }
        return new Amount(0, "which is a fraction", "numbers are written with a decimal point", mend);
    }

    private static Amount noNumber(String text, Dimension dimension) {
        String rule = dimension.words() + " is a number" + (dimension == Dimension.RATIO ? "" : " with its unit");
        if (DECIMAL_COMMA.matcher(text).matches()) {
            String[] halves = text.replaceFirst(",", ".").split(" ", 2);
            Remedy mend =
                    halves.length == 2 ? Remedy.write(halves[0], halves[1], "") : Remedy.words("write " + halves[0]);
            return new Amount(0, "which has a decimal comma", "numbers are written with a decimal point", mend);
        }
        return new Amount(0, "which is not " + dimension.words(), rule, example(usual(dimension), dimension));
    }

    /** A number that makes sense in the first unit of a dimension. */
    private static String usual(Dimension dimension) {
        return switch (dimension) {
            case SPEED -> "650";
            case PRESSURE -> "150";
            case TEMPERATURE -> "95";
            case DENSITY -> "850";
            default -> "3";
        };
    }

    private static Amount noUnit(String number, String word, Dimension dimension) {
        String known = Stream.of(Dimension.values())
                .filter(other -> !word.isEmpty() && unit(word, other).isPresent())
                .map(Dimension::words)
                .findFirst()
                .orElse("");
        String rule = dimension == Dimension.RATIO
                ? "a ratio is a bare number or a percentage"
                : dimension.words() + " needs its unit: " + String.join(", ", of(dimension));
        Remedy mend = example(number, dimension);
        if (word.isEmpty()) {
            Remedy either = dimension == Dimension.TEMPERATURE
                    ? Remedy.write(number, "degF", " or " + number + " degC, whichever is meant")
                    : mend;
            return new Amount(0, "a number without its unit", rule, either);
        }
        String wrong = known.isEmpty()
                ? "and '" + word + "' is no unit of " + bare(dimension)
                : "and '" + word + "' is the unit of " + known + ", not of " + dimension.words();
        List<String> near = known.isEmpty() ? Nearest.closest(word, of(dimension)) : List.of();
        if (near.size() > 1) {
            return new Amount(0, wrong, rule, Remedy.words("did you mean " + String.join(" or ", near) + "?"));
        }
        return new Amount(0, wrong, rule, near.isEmpty() ? mend : Remedy.write(number, near.get(0), ""));
    }

    private static String bare(Dimension dimension) {
        return dimension.words().replaceFirst("^an? ", "");
    }

    private static Remedy example(String number, Dimension dimension) {
        return Remedy.write(number, of(dimension).get(0), ", for example");
    }
}
