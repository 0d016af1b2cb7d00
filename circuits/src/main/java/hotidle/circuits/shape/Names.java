package hotidle.circuits.shape;

/** What a name in the file can stand for. */
public enum Names {
    OIL("oil"),
    MATERIAL("material"),
    BEARING_MATERIAL("bearing material"),
    REGION("region"),
    NODE("node"),
    PART("part"),
    RANGE("range"),
    CLUTCH("clutch"),
    SOLENOID("solenoid"),
    SPOOL_VALVE("spool-valve"),
    FACE_GAP("face-gap"),
    PUMP_CHAMBER("pump"),
    PUMP_INLET("pump-inlet"),
    BUSHING("bushing"),
    BUILD("build"),
    DUTY("driving condition"),
    MEMBER("member of the gear train");

    private final String word;

    Names(String word) {
        this.word = word;
    }

    /** In one word; for a kind of part the word of that kind. */
    public String word() {
        return word;
    }

    /** Whether it is a part, of any kind or of one. */
    public boolean isPart() {
        return switch (this) {
            case PART, CLUTCH, SOLENOID, SPOOL_VALVE, FACE_GAP, PUMP_CHAMBER, PUMP_INLET, BUSHING -> true;
            case OIL, MATERIAL, BEARING_MATERIAL, REGION, NODE, RANGE, BUILD, DUTY, MEMBER -> false;
        };
    }

    /** For messages, for example "an oil". */
    public String withArticle() {
        return (this == OIL ? "an " : "a ") + word;
    }
}
