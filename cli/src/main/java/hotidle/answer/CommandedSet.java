package hotidle.answer;

import hotidle.network.Conditions;
import hotidle.transmission.Transmission;

/** The set pressure that is commanded, known without a state. */
public final class CommandedSet {

    private CommandedSet() {}

    /** The set pressure [Pa]; NaN where none is commanded. */
    public static double of(Transmission unit, Conditions conditions) {
        return unit.commanded()
                .map(command ->
                        command.setPressure(unit.network(), conditions.range(), command.pilot(conditions.commands())))
                .orElse(Double.NaN);
    }
}
