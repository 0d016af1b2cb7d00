package hotidle.cli;

import hotidle.answer.format.Quantity;
import hotidle.study.Repairs;
import java.util.Locale;

/** Line pressure, with as many decimals as tell it from a set pressure that is not quite reached. */
final class LinePressure {

    private LinePressure() {}

    private static final int MOST_DECIMALS = 3;

    static String of(Quantity.UnitSystem units, Repairs.Effect effect) {
        Quantity.Shown shown = Quantity.PRESSURE.in(units);
        String text = Quantity.PRESSURE.number(units, effect.line());
        boolean shortOf = !Double.isNaN(effect.set()) && effect.line() < effect.set();
        for (int more = 1; more <= MOST_DECIMALS && shortOf; more++) {
            if (!text.equals(number(shown, effect.set(), more - 1))) {
                break;
            }
            text = number(shown, effect.line(), more);
        }
        return text + " " + shown.unit();
    }

    private static String number(Quantity.Shown shown, double value, int more) {
        return String.format(
                Locale.ROOT, "%." + (shown.decimals() + more) + "f", value * shown.factor() + shown.offset());
    }
}
