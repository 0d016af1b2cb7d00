package hotidle.plots.scheme;

/** What a box shows: symbols after ISO 1219-1, and three of the trade that it lacks (converter, clutch pack, leaking fit). */
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
    GAP,
    RESTRICTION
}
