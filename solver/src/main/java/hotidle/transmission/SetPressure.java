package hotidle.transmission;

import hotidle.network.Network;
import hotidle.network.Placed;
import hotidle.part.SpoolValve;
import java.util.List;
import java.util.Locale;

/** Another set pressure for a unit: command and spring together, or the spring alone. */
public final class SetPressure {

    /** What is changed for another set pressure. */
    public enum By {
        /** The tables of the command are scaled and the spring is made to agree; without a solenoid the spring alone. */
        COMMAND_AND_SPRING,
        /** The spring of the regulator; pilot and throttle pressure stay as they are. */
        SPRING
    }

    /** Pound-force per square inch, in which set pressures are tried and told: 4.4482216152605 N over (0.0254 m)² [Pa]. */
    public static final double PSI = 6894.757293168362;

    /** A unit without preload stands at the lowest, but for rounding (ours) [-]. */
    private static final double ROUNDING = 1e-9;

    private SetPressure() {}

    /** A pressure [Pa] in a message, in both units of the trade. */
    public static String told(double pressure) {
        return String.format(Locale.ROOT, "%.0f psi (%.1f bar)", pressure / PSI, pressure / 1e5);
    }

    /** Command and spring together, see the other one. */
    public static Transmission of(Transmission unit, double pressure) {
        return of(unit, pressure, By.COMMAND_AND_SPRING);
    }

    /**
     * Solves the regulator's preload so that it balances at the pressure asked for in the forward ranges; reverse follows by its
     * areas. Together with it the command is scaled so that its highest value is that pressure.
     *
     * @param unit     as it is
     * @param pressure highest set pressure in the forward ranges [Pa], above zero
     * @param by       what is changed
     * @throws IllegalArgumentException where the unit has no forward range, or the pressure is not above zero or lies below the
     *     {@link #lowest}, for no spring pulls
     */
    public static Transmission of(Transmission unit, double pressure, By by) {
        if (!(pressure > 0)) {
            throw new IllegalArgumentException("set pressure is " + pressure + " Pa and must be above zero");
        }
        double lowest = lowest(unit, by);
        if (pressure < lowest * (1 - ROUNDING)) {
            throw new IllegalArgumentException("by its spring alone the line cannot be set below " + told(lowest)
                    + ": pilot and throttle pressure hold that without a spring");
        }
        if (by == By.SPRING) {
            return bySpring(unit, pressure);
        }
        Command scaled = unit.command().scaledTo(pressure);
        double preload = controls(unit, scaled, pressure).stream()
                .mapToDouble(control -> scaled.preloadFor(unit.network(), control, pressure))
                .min()
                .orElseThrow();
        return unit.with(withPreload(unit.network(), scaled.regulator(), preload), scaled);
    }

    /**
     * The lowest pressure that a unit can be set to [Pa]: by its spring alone what pilot and throttle pressure hold without any; by its
     * command too anything above zero, unless it has no solenoid, so that the spring alone is changed all the same.
     *
     * @throws NotCommandedException where nothing commands the line
     */
    public static double lowest(Transmission unit, By by) {
        return by == By.SPRING || unit.command().pilot().isEmpty() ? withoutSpring(unit) : 0;
    }

    private static double withoutSpring(Transmission unit) {
        Command command = unit.command().onOtherSpring();
        return unit.forwardControls().stream()
                .mapToDouble(control -> command.withoutSpring(unit.network(), command.atHighest(control)))
                .max()
                .orElseThrow();
    }

    private static Transmission bySpring(Transmission unit, double pressure) {
        Command command = unit.command().onOtherSpring();
        List<Control> controls =
                unit.forwardControls().stream().map(command::atHighest).toList();
        double preload = controls.stream()
                .mapToDouble(control -> command.preloadFor(unit.network(), control, pressure))
                .min()
                .orElseThrow();
        return unit.with(withPreload(unit.network(), command.regulator(), preload), command);
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
