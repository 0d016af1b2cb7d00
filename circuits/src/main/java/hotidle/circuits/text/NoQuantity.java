package hotidle.circuits.text;

import java.util.List;
import java.util.regex.Matcher;
import java.util.stream.Stream;

/** What is wrong with a text that is no quantity of its dimension, and what to write in its place. */
final class NoQuantity {

    private NoQuantity() {}

    static Units.Amount fraction(Matcher fraction) {
        Remedy mend = Remedy.NONE;
        if (fraction.matches()) {
            double value = Double.parseDouble(fraction.group("over")) / Double.parseDouble(fraction.group("under"));
            mend = Double.isFinite(value)
                    ? Remedy.write(String.valueOf(value), fraction.group("unit"), "")
                    : Remedy.NONE;
        }
        return new Units.Amount(0, "which is a fraction", "numbers are written with a decimal point", mend);
    }

    static Units.Amount noNumber(String text, Dimension dimension) {
        String rule = dimension.words() + " is a number" + (dimension == Dimension.RATIO ? "" : " with its unit");
        if (Units.DECIMAL_COMMA.matcher(text).matches()) {
            String[] halves = text.replaceFirst(",", ".").split(" ", 2);
            Remedy mend =
                    halves.length == 2 ? Remedy.write(halves[0], halves[1], "") : Remedy.words("write " + halves[0]);
            return new Units.Amount(0, "which has a decimal comma", "numbers are written with a decimal point", mend);
        }
        return new Units.Amount(0, "which is not " + dimension.words(), rule, example(usual(dimension), dimension));
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

    static Units.Amount noUnit(String number, String word, Dimension dimension) {
        String known = Stream.of(Dimension.values())
                .filter(other -> !word.isEmpty() && UnitTable.find(word, other).isPresent())
                .map(Dimension::words)
                .findFirst()
                .orElse("");
        String rule = dimension == Dimension.RATIO
                ? "a ratio is a bare number or a percentage"
                : dimension.words() + " needs its unit: " + String.join(", ", Units.of(dimension));
        if (word.isEmpty()) {
            Remedy mend = example(number, dimension);
            Remedy either = dimension == Dimension.TEMPERATURE
                    ? Remedy.write(number, "degF", " or " + number + " degC, whichever is meant")
                    : mend;
            return new Units.Amount(0, "a number without its unit", rule, either);
        }
        String wrong = known.isEmpty()
                ? "and '" + word + "' is no unit of " + bare(dimension)
                : "and '" + word + "' is the unit of " + known + ", not of " + dimension.words();
        List<String> same = Units.of(dimension).stream()
                .filter(unit -> sameSigns(unit, word))
                .toList();
        return new Units.Amount(
                0,
                wrong,
                rule,
                same.size() == 1 && known.isEmpty()
                        ? Remedy.write(number, same.get(0), "")
                        : dimension == Dimension.RATIO
                                ? example(number, dimension)
                                : Remedy.words("give it in one of these, its number with it: "
                                        + String.join(", ", Units.of(dimension))));
    }

    /** Whether a word is a unit with its letters exchanged; another size is never guessed from likeness. */
    private static boolean sameSigns(String unit, String word) {
        return java.util.Arrays.equals(
                unit.chars().sorted().toArray(), word.chars().sorted().toArray());
    }

    private static String bare(Dimension dimension) {
        return dimension.words().replaceFirst("^an? ", "");
    }

    private static Remedy example(String number, Dimension dimension) {
        return Remedy.write(number, Units.of(dimension).get(0), ", for example");
    }
}
