package hotidle.answer.format;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers with as many digits as are worth reading. */
public final class Digits {

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
}
