package hotidle.torture;

import hotidle.network.Conditions;
import hotidle.network.Network;
import hotidle.network.Placed;

/**
 * A circuit on the rack.
 *
 * @param origin     where it comes from
 * @param network    the circuit
 * @param conditions what it is put to
 */
public record Case(String origin, Network network, Conditions conditions) {

    /** The case in words, a part a line. */
    public String described() {
        StringBuilder text =
                new StringBuilder(origin).append('\n').append(conditions).append('\n');
        for (Placed placed : network.parts()) {
            text.append(placed.name())
                    .append(" at ")
                    .append(placed.nodes())
                    .append(' ')
                    .append(placed.part())
                    .append('\n');
        }
        return text.toString();
    }
}
