package hotidle.circuits.text;

/**
 * What is wrong, a value for each rule, for those who decide or test by it; the sentence is for reading only. A rule stands where
 * its value is used: {@code git grep NO_SUMP} finds it.
 */
public enum ProblemCode {

    // What is no text of this language.

    NOT_UTF8,
    TOO_LONG,
    /** Nested too deep, or too many values. */
    TOO_MUCH,
    NO_YAML,
    UNPRINTABLE,
    TAB,
    OPEN_QUOTE,
    OPEN_BRACKET,
    NEVER_OPENED,
    NO_COMMA,
    NO_COLON,
    NO_BLANK_AFTER_COLON,
    SECOND_COLON,
    INDENTED_TOO_DEEP,
    NO_SUCH_COLUMN,
    ITEM_AMONG_KEYS,
    KEY_AMONG_ITEMS,
    RESERVED_CHARACTER,
    SECOND_DOCUMENT,
    ALIAS,
    ANCHOR,
    TAG,
    KEY_IS_NO_WORD,
    NO_KEY_AND_VALUE,
    NO_CIRCUIT,

    // Any key of any group.

    /** A key that is needed is not there. */
    MISSING_KEY,
    /** A key that there is none of. */
    UNKNOWN_KEY,
    /** A key stands there without a value. */
    NO_VALUE,
    /** A name of nothing that is declared, or a word that is none of those allowed. */
    UNKNOWN_NAME,
    /** A list or a group where one value belongs, or the other way round. */
    WRONG_SHAPE,
    /** A text that is no quantity of its dimension. */
    NO_QUANTITY,
    /** A quantity outside what is allowed. */
    OUT_OF_BOUNDS,
    /** A quantity outside what is usual. */
    UNUSUAL,
    /** A key that stands or is written twice. */
    TWICE,
    /** Values that do not rise as they must. */
    NOT_RISING,
    /** A measured size or a limit on the wrong side of the new one. */
    AGAINST_WEAR,
    NO_NAME,

    // What a file is based on, and what is like another.

    BASE_NOT_FOUND,
    BASED_ON_ITSELF,
    LEAVES_OUT_NOTHING,
    LIKE_NO_PART,
    LIKE_ITSELF,
    TOO_MANY_LIKES,

    // Builds and their changes.

    TOO_MANY_BUILDS,
    BUILD_ON_ITSELF,
    BUILD_WITHOUT_REASON,
    CHANGE_WITHOUT_ONE_WAY,
    CHANGE_OF_NO_KEY,
    CHANGE_OF_NO_PART,
    CHANGE_OF_UNKNOWN_KEY,
    CHANGE_OF_NO_QUANTITY,
    CHANGE_OF_NOTHING,
    CHANGE_OF_A_COUNT,
    NO_SUCH_SIZE,
    SIZE_NOT_WRITTEN,

    // Any part.

    NO_KIND,
    UNKNOWN_KIND,
    /** What the solver's own checks refuse. */
    NOT_TO_BE_BUILT,
    NOT_ON_ITS_OWN,
    BOTH_ENDS_AT_ONE_NODE,

    // Gaps and holes.

    FIT_WITHOUT_CLEARANCE,
    GAP_WITHOUT_SIZES,
    LAND_OF_ANOTHER_SIZE,
    FACES_OF_ANOTHER_SIZE,
    FACES_OF_ANOTHER_SPEED,
    FACES_WITHOUT_SIZES,
    NOT_ONE_GAP,
    TAPERED_AND_BOWED,
    FEELER_NOT_ALONE,
    FEELER_BELOW_GAP,
    HOLE_AS_WIDE_AS_CHANNEL,
    DIAMETERS_EXCHANGED,
    BUSHING_OF_UNKNOWN_FILM,
    TILT_GIVEN_TWICE,
    NOT_ONE_END_OF_BRANCH,
    WALLS_TOO_ROUGH,

    // Valves and their springs.

    NOT_ONE_PRELOAD,
    SPRING_NOT_KNOWN,
    SPRING_GIVEN_TWICE,
    SPRING_TOO_STIFF,
    SPRING_HEIGHT_ALONE,
    COILS_TOUCH_AT_ONCE,
    COILS_TOUCH_BEFORE_STOP,
    SET_EDGE_WITHOUT_PRESSURE,
    SET_EDGE_IS_NO_OPENING,
    NOTHING_OPENS_UP,
    NOT_ONE_NODE_OPENS,
    SPOOL_WITHOUT_AREAS,
    STUCK_BEYOND_STOPS,
    HOLES_WITHOUT_DIAMETER,
    HOLES_OVERLAP,
    NOTCHES_WITHOUT_SIZE,
    NOTCHES_AND_HOLES,
    NOTCHES_TAKE_ALL,
    OPENINGS_SHARE_TOO_MUCH,
    OPENINGS_OPEN_TOGETHER,
    OPENING_OUT_OF_REACH,
    NO_PORT,
    GOVERNOR_WITHOUT_WEIGHTS,

    // Clutches, converter, cooler.

    BALANCE_WITHOUT_OIL_SPACE,
    OIL_SPACE_HALF_GIVEN,
    OIL_DIAMETER_WITHOUT_SPACE,
    OIL_DIAMETER_TOO_LARGE,
    LOCKUP_HALF_GIVEN,
    HEAT_HALF_GIVEN,
    HEAT_TOO_GREAT,

    // Pumps.

    DISPLACEMENT_AGAINST_GEOMETRY,
    NO_DISPLACEMENT,
    NO_SLIP,
    SLIP_WITHOUT_TEST,
    SLIP_GIVEN_TWICE,
    INLET_ELSEWHERE,
    TEETH_EXCHANGED,
    ROTOR_IN_RING,
    SLIDE_WITHOUT_WAY,

    // How the parts hang together.

    NO_NODE_HELD,
    NODE_WITHOUT_PART,
    NODE_SHUT_IN,
    PUMP_WITHOUT_RELIEF,
    CLUTCH_NEVER_APPLIED,
    NO_CLUTCH,
    APPLIED_BUT_VENTED,
    APPLIED_BUT_NOT_FED,
    FED_BUT_NOT_APPLIED,
    FED_AND_VENTED,
    CLUTCH_SHUT_IN,

    // The gear train.

    NOT_TWO_MEMBERS,
    TOO_MANY_ONE_WAYS,
    TEETH_DO_NOT_MESH,
    /** Planets at equal angles cannot be put in. */
    TEETH_NOT_ASSEMBLED,
    NOTHING_TO_CARRY,
    NO_SUCH_SHAFT,
    CLUTCH_NOT_IN_TRAIN,
    RANGE_DOES_NOT_DRIVE,
    SHARE_AGAINST_TRAIN,
    DRUM_AGAINST_TRAIN,

    // Regions, oil and duty points.

    NO_SUMP,
    REGION_WITHOUT_TEMPERATURE,
    NO_VISCOSITY_LINE,
    NO_DUTY_POINT,
    DUTY_WITHOUT_TORQUE,
    NO_LOCKUP,
    LINE_SOLENOID_COMMANDED,

    // Gears of pumps.

    FACES_BEYOND_A_CIRCLE,
    SIDE_LOAD_OF_ONE_MESH,

    // Temperatures that follow from heat.

    AFTER_WITHOUT_TIME,
    AFTER_ITSELF,
    HEAT_NOT_GIVEN,

    // The command of line pressure.

    EDGE_IS_NO_OPENING,
    COMMAND_TABLE_MISSING,
    TABLES_WITHOUT_SOLENOID,
    SET_PRESSURE_WITHOUT_COMMAND,
    SET_BY_WITHOUT_PRESSURE,
    SET_PRESSURE_OUT_OF_REACH,
    LINE_OPENS_NO_REGULATOR,
    PILOT_ACTS_NOT_ON_REGULATOR,
    SIGNAL_NOT_KNOWN,
    LINE_SHUTS_REGULATOR,
    COMMAND_AGAINST_SPRING,
    TORQUE_BEYOND_COMMAND_TABLE,
    COMMAND_ABOVE_RELIEF,
    COMMAND_BEYOND_SLIDE,
    COMMAND_BEFORE_EDGE,

    // Measurement sheets.

    SHEET_TOO_LONG,
    SHEET_NOT_READ,
    SHEET_OF_A_BUILD,
    SHEET_OF_UNKNOWN_PART,
    SHEET_OF_UNKNOWN_SIZE,
    SHEET_WITHOUT_UNIT,
    UNKNOWN_COLUMN,
    NO_COLUMN,
    TOO_MANY_CELLS,
    CELL_IN_WRONG_COLUMN,
    CELL_IS_NO_NUMBER,
    MEASURED_TWICE,
    /** A measured size of which the same number in another unit, or with its point elsewhere, would fit. */
    SIZE_SLIPPED,
    SIZE_OF_ANOTHER_FIT,
    BORE_AND_VALVE_SWAPPED,
    FAR_PAST_LIMIT,
    READING_WITHOUT_CLEARANCE,
    /** More bores are measured than the row stands for. */
    READINGS_OF_MORE_BORES,
    MISSING_BUSHING_WITHOUT_BORE,

    // Air and vacuum readings on a measurement sheet.

    AIR_READING_IMPOSSIBLE,
    AIR_READING_BESIDE_BORE,
    AIR_READING_OF_NO_LAND,
    AIR_READING_BEYOND_STAND,
    AIR_READING_DOUBTFUL,
    STAND_ROW_NOT_KNOWN,
    STAND_OF_TWO_KINDS,
    STAND_NOT_CALIBRATED,

    // Sheets of gauge readings.

    READINGS_TOO_LONG,
    READINGS_UNKNOWN_COLUMN,
    READINGS_WITHOUT_COLUMN,
    READINGS_TOO_MANY_CELLS,
    NO_SUCH_TAP,
    NO_SUCH_RANGE,
    READ_AT_NOTHING,
    READING_IS_NO_QUANTITY,
    READING_IMPOSSIBLE,
    READING_WITHOUT_ACCURACY,
    COMMANDED_TWICE,
    NO_READINGS
}
