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
    /** A fit that leaks: gathered with the others of its node where it leaks to the sump. */
    GAP,
    /** A resistance without a symbol of its own; of a kind that states none. */
    RESTRICTION,
    /** Nothing: it belongs to another part that is drawn. */
    NONE
}
