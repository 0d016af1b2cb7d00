package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import java.util.Locale;
import java.util.OptionalDouble;

/** Line pressure, with as many decimals as tell it from a set pressure that is not quite reached. */
public final class LinePressurePhrase {

    private static final int MOST_DECIMALS = 3;

    private LinePressurePhrase() {}

    /**
     * The line pressure with its unit.
     *
     * @param line [Pa]
     * @param set  set pressure commanded [Pa]; empty where there is none
     */
    public static String of(Quantity.UnitSystem units, double line, OptionalDouble set) {
        return number(units, line, set) + " " + Quantity.PRESSURE.in(units).unit();
    }

    /** The same without its unit. */
    public static String number(Quantity.UnitSystem units, double line, OptionalDouble set) {
        Quantity.Shown shown = Quantity.PRESSURE.in(units);
        String text = Quantity.PRESSURE.number(units, line);
        boolean shortOf = set.isPresent() && line < set.getAsDouble();
        for (int more = 1; more <= MOST_DECIMALS && shortOf; more++) {
            if (!text.equals(digits(shown, set.getAsDouble(), more - 1))) {
                break;
            }
            text = digits(shown, line, more);
        }
        return text;
    }

    private static String digits(Quantity.Shown shown, double value, int more) {
        return String.format(
                Locale.ROOT, "%." + (shown.decimals() + more) + "f", value * shown.factor() + shown.offset());
    }
}
