package hotidle.answer;

import hotidle.assess.Roles;
import hotidle.network.Placed;
import hotidle.part.Bushing;
import hotidle.result.Solution;
import hotidle.transmission.Transmission;

/**
 * What the hub bushing of a unit reports in a state; NaN throughout where the unit has none.
 *
 * @param least   least film [m], NaN in metal contact
 * @param allowed least film allowed [m]
 * @param load    [N]
 * @param contact whether metal touches
 */
public record HubReading(double least, double allowed, double load, boolean contact) {

    public static HubReading of(Transmission unit, Solution state) {
        String hub = Roles.of(unit).hub().map(Placed::name).orElse("");
        return new HubReading(
                state.measure(hub, Bushing.LEAST_FILM).orElse(Double.NaN),
                state.measure(hub, Bushing.PERMISSIBLE_FILM).orElse(Double.NaN),
                state.measure(hub, Bushing.LOAD).orElse(Double.NaN),
                state.measure(hub, Bushing.METAL_CONTACT).orElse(0) > 0);
    }
}
