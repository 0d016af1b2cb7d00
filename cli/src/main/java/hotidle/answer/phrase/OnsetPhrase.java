package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import java.util.OptionalDouble;

/** The onset of regulation, and other speeds from which something holds at all higher speeds searched; speeds in [rev/s]. */
public record OnsetPhrase(Quantity.UnitSystem units) {

    /** It regulates at none of the speeds any more. */
    public static final String LOST = "It no longer regulates at any speed searched.";

    /** In a sentence, with the lowest and the highest speed searched. */
    public String regulates(OptionalDouble onset, double lowest, double highest) {
        if (onset.isEmpty()) {
            return "Holds at no speed up to " + Quantity.SPEED.with(units, highest) + ".";
        }
        return onset.getAsDouble() <= lowest
                ? "Holds from " + Quantity.SPEED.with(units, lowest) + " or below."
                : "Holds from " + Quantity.SPEED.with(units, onset.getAsDouble()) + " up.";
    }

    /** What a repair does to it. */
    public String moves(double was, double is, double lowest) {
        return "The speed from which it holds moves from " + Quantity.SPEED.number(units, was) + orBelow(was, lowest)
                + " to " + Quantity.SPEED.with(units, is) + orBelow(is, lowest) + ".";
    }

    /** Behind what begins there. */
    public String from(OptionalDouble speed, double lowest) {
        return speed.isPresent()
                ? Quantity.SPEED.with(units, speed.getAsDouble()) + orBelow(speed.getAsDouble(), lowest)
                : "none in the speeds asked";
    }

    /** In the cell of a table. */
    public String cell(OptionalDouble speed, double lowest) {
        return speed.isPresent()
                ? (speed.getAsDouble() <= lowest ? "<= " : "") + Quantity.SPEED.number(units, speed.getAsDouble())
                : "none";
    }

    private static String orBelow(double speed, double lowest) {
        return speed <= lowest ? " or below" : "";
    }
}
