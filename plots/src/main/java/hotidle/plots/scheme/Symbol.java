package hotidle.plots.scheme;

/** What a box shows: symbols after ISO 1219-1, and those that it lacks (converter, clutch pack, band, bearing, leaking fits). */
public enum Symbol {
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
    LUBRICATED,
    ACCUMULATOR,
    /** A bore and what turns or slides in it. */
    GAP,
    /** A ring in its groove. */
    SEALING_RING,
    /** Two faces bolted together, with or without a gasket. */
    JOINT,
    RESTRICTION
}
