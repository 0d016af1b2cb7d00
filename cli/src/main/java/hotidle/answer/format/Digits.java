package hotidle.answer.format;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** Numbers with as many digits as are worth reading. */
public final class Digits {

    /** Numbers that read alike with so many digits more are the same to a reader. */
    private static final int MOST_MORE = 9;

    private Digits() {}

    /** Four digits that count, without a power of ten where it can be helped. */
    public static String four(double value) {
        if (!Double.isFinite(value)) {
            return "-";
        }
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(4)).stripTrailingZeros();
        double size = Math.abs(value);
        if (size < 1e-4 || size >= 1e9) {
            return rounded.toString().replace("E", "e").replace("e+", "e");
        }
        return rounded.toPlainString();
    }

    /**
     * A number among others, with as many digits more as it takes to read different ones differently.
     *
     * @param all        all of them, this one too
     * @param conversion f or g
     * @param digits     where that is enough
     */
    public static String apart(double value, List<Double> all, char conversion, int digits) {
        long different = all.stream().distinct().count();
        int more = digits;
        while (more < digits + MOST_MORE
                && all.stream().map(text(conversion, more)).distinct().count() < different) {
            more++;
        }
        return text(conversion, more).apply(value);
    }

    private static Function<Double, String> text(char conversion, int digits) {
        return value -> String.format(Locale.ROOT, "%." + digits + conversion, value);
    }
}
