package hotidle.network;

/** What a part's oil is booked under in the oil budget. */
public enum Group {
    PUMP("pump", true),
    HUB("hub", true),
    VALVE_BODY("valve body", true),
    PLATE("plate", true),
    RINGS("rings", true),
    SOLENOIDS("solenoids", false),
    CONVERTER("converter", false),
    COOLER("cooler", false),
    LUBE("lube", false);

    private final String label;
    private final boolean leak;

    Group(String label, boolean leak) {
        this.label = label;
        this.leak = leak;
    }

    /** The word that users read and write. */
    public String label() {
        return label;
    }

    /** Whether oil that ends in the sump under this heading is lost rather than used. */
    public boolean leak() {
        return leak;
    }
}
