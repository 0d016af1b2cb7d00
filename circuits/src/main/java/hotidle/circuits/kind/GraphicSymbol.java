package hotidle.circuits.kind;

/** What a kind of part looks like in a drawing of the circuit; how each is drawn is the drawing's affair. */
public enum GraphicSymbol {
    PUMP,
    VARIABLE_PUMP,
    SPOOL_VALVE,
    SELECTOR,
    SOLENOID_VALVE,
    SIGNAL_VALVE,
    CHECK_VALVE,
    RELIEF_VALVE,
    ORIFICE,
    PASSAGE,
    FILTER,
    COOLER,
    CONVERTER,
    CLUTCH,
    BAND,
    /** A bearing or a planet set that is fed. */
    LUBRICATED,
    /** The piston of an accumulator, which leaks: gathered like a bore. */
    ACCUMULATOR,
    /** A bore and what turns or slides in it: gathered with the other leaks of its node where it leaks to the sump. */
    GAP,
    /** A ring in its groove; gathered like a bore. */
    SEALING_RING,
    /** Two faces bolted together, with or without a gasket; gathered like a bore. */
    JOINT,
    /** A resistance without a symbol of its own; of a kind that states none. */
    RESTRICTION,
    /** Nothing: it belongs to another part that is drawn. */
    NONE;

    /** Whether it is a fit that is meant to seal, so that what passes it is a leak. */
    public boolean leaks() {
        return this == GAP || this == SEALING_RING || this == JOINT || this == ACCUMULATOR;
    }
}
