package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import java.util.List;
import java.util.OptionalDouble;

/** What the pump takes from the engine. */
public final class PumpPowerPhrase {

    private PumpPowerPhrase() {}

    /** One build with its power [W]; empty where it is not known. */
    public static String build(Quantity.UnitSystem units, String build, OptionalDouble power) {
        return build + " " + (power.isPresent() ? Quantity.POWER.with(units, power.getAsDouble()) : "not known");
    }

    /** The duty at which it is greatest, and each build there. */
    public static String greatest(String duty, List<String> builds) {
        return "Power for the pump is greatest at " + duty + ": " + String.join(", ", builds)
                + "; all of it ends as heat in the oil.";
    }
}
