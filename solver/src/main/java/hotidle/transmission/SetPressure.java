package hotidle.transmission;

import hotidle.network.Network;
import hotidle.network.Placed;
import hotidle.part.SpoolValve;

/** Another set pressure for a unit: command and spring together. */
public final class SetPressure {

    /** How far set pressures are raised in the trade: about 270 psi, common practice [Pa]. */
    public static final double RAISED = 270 * 4.4482216152605 / 0.00064516;

    private SetPressure() {}

    /**
     * Scales the command so that its highest value is the pressure asked for, and solves the regulator's preload so that it
     * balances there in the forward ranges; reverse follows by its areas.
     *
     * @param unit     as it is
     * @param pressure highest set pressure in the forward ranges [Pa], above zero
     * @throws IllegalArgumentException where the unit has no forward range or the pressure is not above zero
     */
    public static Transmission of(Transmission unit, double pressure) {
        if (!(pressure > 0)) {
            throw new IllegalArgumentException("set pressure is " + pressure + " Pa and must be above zero");
        }
        Command scaled = unit.command().scaledTo(pressure);
        String forward = unit.ranges().stream()
                .filter(Range::forward)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(unit.circuit() + " has no forward range"))
                .name();
        double pilot =
                scaled.pilot().map(made -> made.pilotByLine().at(pressure)).orElse(0.0);
        double preload = scaled.preloadFor(unit.network(), forward, pilot, pressure);
        return unit.with(withPreload(unit.network(), scaled.regulator(), preload), scaled);
    }

    private static Network withPreload(Network network, String regulator, double preload) {
        Placed placed = network.part(regulator).orElseThrow();
        SpoolValve valve = (SpoolValve) placed.part();
        return network.with(placed.with(valve.with(valve.spring().withPreload(preload))));
    }
}
