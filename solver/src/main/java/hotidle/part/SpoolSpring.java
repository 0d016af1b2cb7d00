package hotidle.part;

import java.util.OptionalDouble;

/**
 * The spring of a spool, with the stops that end its travel and the friction that holds it.
 *
 * @param rate     k [N/m]
 * @param preload  at x = 0, shims included [N]; above zero where it holds the valve shut
 * @param low      lower stop [m]
 * @param high     upper stop [m]
 * @param friction F [N]
 * @param bind     position at which its coils touch, above the lower stop [m]; empty where that is not known
 */
public record SpoolSpring(double rate, double preload, double low, double high, double friction, OptionalDouble bind) {

    /** A spring of which it is not known where its coils touch. */
    public SpoolSpring(double rate, double preload, double low, double high, double friction) {
        this(rate, preload, low, high, friction, OptionalDouble.empty());
    }

    public SpoolSpring {
        Check.positive("spring rate", rate);
        Check.notNegative("spool friction", friction);
        Check.within("upper stop", high, low, low + 0.1);
        if (bind.isPresent()) {
            Check.within("position at which coils touch", bind.getAsDouble(), low, low + 1);
        }
    }

    /** The same with another preload [N]. */
    public SpoolSpring withPreload(double other) {
        return new SpoolSpring(rate, other, low, high, friction, bind);
    }

    /** The same with another rate [N/m] and preload [N]. */
    public SpoolSpring with(double otherRate, double otherPreload) {
        return new SpoolSpring(otherRate, otherPreload, low, high, friction, bind);
    }

    /** The same pressed together by a shim more [m]; below zero by one less. Its coils touch earlier by as much. */
    public SpoolSpring shimmed(double shim) {
        return new SpoolSpring(
                rate,
                preload + rate * shim,
                low,
                high,
                friction,
                bind.isPresent() ? OptionalDouble.of(bind.getAsDouble() - shim) : bind);
    }

    /** How far the spool can move: to its upper stop, or to where the coils touch [m]. */
    public double end() {
        return Math.min(high, bind.orElse(high));
    }
}
