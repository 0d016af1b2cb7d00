package hotidle.assess;

import hotidle.network.Placed;
import hotidle.part.Bushing;
import hotidle.result.Solution;
import java.util.OptionalDouble;

/**
 * What the hub bushing of a unit reports in a state.
 *
 * @param least   least film, at the edge to which the hub leans [m]; empty in metal contact
 * @param allowed least film allowed [m]
 * @param known   film from which on it is known to hold, by Trumpler's rule [m]; empty where the bushing does not tell it
 * @param load    [N]
 * @param contact whether metal touches
 */
public record HubReading(OptionalDouble least, double allowed, OptionalDouble known, double load, boolean contact) {

    /**
     * Reads it.
     *
     * @throws java.util.NoSuchElementException where the unit has no hub bushing
     */
    public static HubReading of(Roles roles, Solution state) {
        String hub = roles.hub().map(Placed::name).orElseThrow();
        return new HubReading(
                state.measure(hub, Bushing.EDGE_FILM),
                state.measure(hub, Bushing.PERMISSIBLE_FILM).orElseThrow(),
                state.measure(hub, Bushing.TRUMPLER_FILM),
                state.measure(hub, Bushing.LOAD).orElseThrow(),
                state.measure(hub, Bushing.METAL_CONTACT).orElseThrow() > 0);
    }
}
