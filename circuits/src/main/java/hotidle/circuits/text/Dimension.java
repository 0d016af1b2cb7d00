package hotidle.circuits.text;

/** What a quantity measures; its units stand in {@link Units}. */
public enum Dimension {
    RATIO("a ratio"),
    LENGTH("a length"),
    AREA("an area"),
    PRESSURE("a pressure"),
    TEMPERATURE("a temperature"),
    FLOW("a flow"),
    SPEED("a speed"),
    DISPLACEMENT("a displacement"),
    TORQUE("a torque"),
    FORCE("a force"),
    SPRING_RATE("a spring rate"),
    ANGLE("an angle"),
    KINEMATIC_VISCOSITY("a kinematic viscosity"),
    VISCOSITY("a dynamic viscosity"),
    DENSITY("a density"),
    DENSITY_SLOPE("a loss of density with temperature"),
    SPECIFIC_HEAT("a specific heat"),
    CONDUCTIVITY("a thermal conductivity"),
    EXPANSION("a thermal expansion"),
    PRESSURE_COEFFICIENT("a pressure coefficient"),
    OPENING("an opening with pressure"),
    POWER("a power"),
    MASS("a mass"),
    TIME("a time"),
    HEAT_LOSS("a heat loss for each kelvin"),
    INERTIA("a moment of inertia");

    private final String words;

    Dimension(String words) {
        this.words = words;
    }

    /** With its article, for example "a length". */
    public String words() {
        return words;
    }
}
