package hotidle.assess;

import java.util.OptionalDouble;

/**
 * Something that fails in a build at a driving condition, as far as its state and its sweep over engine speed tell.
 *
 * @param kind  what fails
 * @param part  that decides; empty where it is the line or the inlet
 * @param is    what is there [SI]; empty where it is not known
 * @param needs what is needed or allowed [SI]; empty where it is not known
 */
public record StateFault(Kind kind, String part, OptionalDouble is, OptionalDouble needs) {

    /** One of which both figures are known [SI]. */
    public StateFault(Kind kind, String part, double is, double needs) {
        this(kind, part, OptionalDouble.of(is), OptionalDouble.of(needs));
    }

    /** What can fail, the gravest first: what is wrong with the line takes the rest with it. */
    public enum Kind {
        NOT_KNOWN,
        LINE_LOW,
        LINE_HIGH,
        RELIEF_OPEN,
        INLET_STARVED,
        CLUTCH_SLIPS,
        CLUTCH_DRAGS,
        OVER_TORQUE,
        OVER_PRESSURE,
        SHORT_OF_OIL,
        METAL_CONTACT,
        FILM_THIN,
        HUB_LOAD
    }
}
