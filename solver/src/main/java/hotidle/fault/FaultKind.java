package hotidle.fault;

import java.util.Arrays;
import java.util.Optional;

/**
 * A kind of fault: its word, what it is, and what its size counts.
 *
 * <p>A fit that wears is given by how much further it is worn than in the build, as a share of the way from new to its wear limit: all
 * sizes of the part by the same share. Blocked parts count the share that is blocked.
 */
public enum FaultKind {
    BORE_WORN("bore-worn", "bore worn", SizeOf.WEAR),
    PLATE_WARPED("plate-warped", "face warped or gasket blown", SizeOf.WEAR),
    HUB_WORN("hub-worn", "hub or bushing worn", SizeOf.WEAR),
    FACE_WORN("face-worn", "gear face worn", SizeOf.WEAR),
    RINGS_WORN("rings-worn", "sealing rings worn or broken", SizeOf.WEAR),
    SEAL_LEAKING("seal-leaking", "piston seal hard or cut", SizeOf.WEAR),
    PUMP_SLIPPING("pump-slipping", "pump chamber worn", SizeOf.WEAR),
    CHECK_BALL_MISSING("check-ball-missing", "check ball missing or off its seat", SizeOf.NOTHING),
    VALVE_STUCK("valve-stuck", "spool stuck", SizeOf.POSITION),
    SPRING_WEAK("spring-weak", "spring weak or broken", SizeOf.SHARE),
    FILTER_BLOCKED("filter-blocked", "filter blocked", SizeOf.SHARE),
    COOLER_BLOCKED("cooler-blocked", "cooler blocked", SizeOf.SHARE),
    OIL_AERATED("oil-aerated", "air in the oil", SizeOf.SHARE),
    ORIFICE_WRONG("orifice-wrong", "wrong or partly blocked orifice", SizeOf.DIAMETER),
    SOLENOID_STUCK("solenoid-stuck", "solenoid stuck", SizeOf.SHARE);

    /** What a size counts. */
    public enum SizeOf {
        /** Wear beyond the build's as a share of the way from new to the wear limit [-]. */
        WEAR,
        /** A share of a whole [-]. */
        SHARE,
        /** A position of a spool [m]. */
        POSITION,
        /** A diameter [m]. */
        DIAMETER,
        /** Nothing: it is there or not. */
        NOTHING
    }

    private final String word;
    private final String about;
    private final SizeOf sizeOf;

    FaultKind(String word, String about, SizeOf sizeOf) {
        this.word = word;
        this.about = about;
        this.sizeOf = sizeOf;
    }

    /** As it is written behind {@code --fault}. */
    public String word() {
        return word;
    }

    /** What it is, in a few words. */
    public String about() {
        return about;
    }

    /** What its size counts. */
    public SizeOf sizeOf() {
        return sizeOf;
    }

    /** Whether its size says how much is wrong; otherwise where something stands, so that a sound unit has one in the middle. */
    public boolean graded() {
        return this != VALVE_STUCK && this != ORIFICE_WRONG && this != SOLENOID_STUCK;
    }

    /** The kind of a word. */
    public static Optional<FaultKind> of(String word) {
        return Arrays.stream(values()).filter(kind -> kind.word.equals(word)).findFirst();
    }
}
