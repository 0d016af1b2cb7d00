package hotidle.transmission;

import hotidle.network.Network;
import hotidle.network.Placed;
import hotidle.part.SpoolValve;
import java.util.List;

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
        double preload = controls(unit, scaled, pressure).stream()
                .mapToDouble(control -> scaled.preloadFor(unit.network(), control, pressure))
                .min()
                .orElseThrow();
        return unit.with(withPreload(unit.network(), scaled.regulator(), preload), scaled);
    }

    /** Under which the line is to stand at the pressure; by the spring alone it is the first of them to reach it. */
    private static List<Control> controls(Transmission unit, Command scaled, double pressure) {
        if (scaled.pilot().isEmpty()) {
            return unit.forwardControls();
        }
        String forward = unit.ranges().stream()
                .filter(Range::forward)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(unit.circuit() + " has no forward range"))
                .name();
        return List.of(scaled.control(forward, pressure));
    }

    private static Network withPreload(Network network, String regulator, double preload) {
        Placed placed = network.part(regulator).orElseThrow();
        SpoolValve valve = (SpoolValve) placed.part();
        return network.with(placed.with(valve.with(valve.spring().withPreload(preload))));
    }
}
