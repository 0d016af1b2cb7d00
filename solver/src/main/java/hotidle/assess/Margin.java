package hotidle.assess;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One limit at one duty point: what is there, what is needed or allowed, and what that leaves.
 *
 * @param kind   which limit
 * @param part   the part that decides
 * @param value  what is there [SI]; empty where it is not known, which fails
 * @param needed what is needed, or allowed where it is an upper limit [SI]
 * @param unsure between what is needed and this it is not known whether it holds [SI]; empty where it always is
 * @param scale  in what both are counted
 * @param zero   from which headroom counts both [SI]: the air's temperature for one of oil, 0 for all else
 * @param speed  engine speed at which it is least [rev/s]; empty where only the duty's own speed was asked
 * @param notes  what a reader should know about it
 */
public record Margin(
        Kind kind,
        String part,
        OptionalDouble value,
        double needed,
        OptionalDouble unsure,
        Scale scale,
        double zero,
        OptionalDouble speed,
        List<MarginNote> notes) {

    public Margin {
        notes = List.copyOf(notes);
    }

    /** Up to this headroom a margin is close (assumed) [-]. */
    public static final double CLOSE = 0.10;

    /** Headroom beyond this is not worth a number (chosen) [-]. */
    private static final double AMPLE = 9.99;

    /** Whether a headroom is so large that its number says nothing. */
    public static boolean ample(double headroom) {
        return headroom > AMPLE;
    }

    /** The limits of a unit, in the order in which they are shown. */
    public enum Kind {
        REGULATION("regulation", false),
        APPLY("apply", false),
        APPLY_SLIDING("apply-sliding", false),
        LOCKUP("lockup", false),
        LUBRICATION("lubrication", false),
        COOLER("cooler", false),
        CONVERTER_CHARGE("converter-charge", false),
        FILM("film", false),
        UNIT_LOAD("unit-load", true),
        FILM_OIL("film-oil", false),
        PUMP_INLET("pump-inlet", false),
        RELIEF("relief-valve", true),
        OIL_TEMPERATURE("oil-temperature", true),
        CONVERTER_TEMPERATURE("converter-temperature", true),
        RATED_TORQUE("rated-torque", true),
        RATED_PRESSURE("rated-pressure", true);

        private final String word;
        private final boolean upper;

        /** @param word its name in JSON and CSV, which stays as it is; what a reader is told is a phrase */
        Kind(String word, boolean upper) {
            this.word = word;
            this.upper = upper;
        }

        /** Its name in JSON and CSV. */
        public String word() {
            return word;
        }

        /** Whether more is worse. */
        public boolean upper() {
            return upper;
        }
    }

    /** What value and need are counted in. */
    public enum Scale {
        PRESSURE("Pa"),
        FLOW("m3/s"),
        LENGTH("m"),
        SHARE("1"),
        TEMPERATURE("K"),
        TORQUE("N.m");

        private final String word;

        Scale(String word) {
            this.word = word;
        }

        /** The SI unit, as JSON names it. */
        public String word() {
            return word;
        }
    }

    /** What a margin comes to, the worst first. */
    public enum Verdict {
        FAILS("fails"),
        /** Neither that it fails nor that it holds can be told. It is no failure. */
        NOT_KNOWN("not_known"),
        CLOSE("close"),
        HOLDS("holds");

        private final String word;

        Verdict(String word) {
            this.word = word;
        }

        /** Its name in JSON and CSV. */
        public String word() {
            return word;
        }
    }

    /** A flow needed below this is a trickle: about 0.2 gpm (chosen by us) [m³/s]. */
    private static final double TRICKLE = 1.25e-5;

    /** A margin at the duty's own speed without a note. */
    public static Margin of(Kind kind, String part, double value, double needed, Scale scale) {
        return new Margin(
                kind,
                part,
                OptionalDouble.of(value),
                needed,
                OptionalDouble.empty(),
                scale,
                0,
                OptionalDouble.empty(),
                List.of());
    }

    /** The same where what is there is not known: it fails by an amount that is not known. */
    public static Margin notKnown(Kind kind, String part, double needed, Scale scale) {
        return new Margin(
                kind,
                part,
                OptionalDouble.empty(),
                needed,
                OptionalDouble.empty(),
                scale,
                0,
                OptionalDouble.empty(),
                List.of());
    }

    /** The same with notes. */
    public Margin noted(MarginNote... other) {
        return new Margin(kind, part, value, needed, unsure, scale, zero, speed, List.of(other));
    }

    /** A temperature of oil against its limit [K], in air of another. */
    public static Margin warmth(Kind kind, String part, double value, double limit, double air) {
        return new Margin(
                kind,
                part,
                OptionalDouble.of(value),
                limit,
                OptionalDouble.empty(),
                Scale.TEMPERATURE,
                air,
                OptionalDouble.empty(),
                List.of());
    }

    /** The same at an engine speed [rev/s]. */
    public Margin at(double other) {
        return new Margin(kind, part, value, needed, unsure, scale, zero, OptionalDouble.of(other), notes);
    }

    /** The same, not known between what is needed and another value [SI]. */
    public Margin unsureTo(double other) {
        return new Margin(kind, part, value, needed, OptionalDouble.of(other), scale, zero, speed, notes);
    }

    /**
     * Value over need less 1, or limit over value less 1 [-]: below zero it fails. Infinite where nothing is needed, minus infinity
     * where the value is not known.
     */
    public double headroom() {
        if (value.isEmpty()) {
            return Double.NEGATIVE_INFINITY;
        }
        double is = value.getAsDouble();
        double more = (kind.upper ? needed : is) - zero;
        double less = (kind.upper ? is : needed) - zero;
        return less > 0 ? more / less - 1 : Double.POSITIVE_INFINITY;
    }

    /**
     * Not known between what is needed and {@link #unsure}; else fails below 0 and where there is no value, close up to
     * {@link #CLOSE}, holds above.
     */
    public Verdict verdict() {
        if (unsure.isPresent() && value.isPresent() && between(value.getAsDouble(), unsure.getAsDouble())) {
            return Verdict.NOT_KNOWN;
        }
        double headroom = headroom();
        if (headroom < 0) {
            return Verdict.FAILS;
        }
        return headroom <= CLOSE ? Verdict.CLOSE : Verdict.HOLDS;
    }

    private boolean between(double is, double other) {
        return needed < other ? is >= needed && is < other : is > other && is < needed;
    }

    /** Whether it is known to fail or to hold. */
    public boolean known() {
        return verdict() != Verdict.NOT_KNOWN;
    }

    /** Whether it is a flow so small that a digit more is needed to read its headroom from value and need. */
    public boolean trickle() {
        return scale == Scale.FLOW && needed < TRICKLE;
    }

    /**
     * Whether a reader asks why: it is known not to hold with ease, or regulation holds with something to be said of it. What is
     * not known is told once a build.
     */
    public boolean asksWhy() {
        return (known() && verdict() != Verdict.HOLDS) || (kind == Kind.REGULATION && !notes.isEmpty());
    }

    /** The worst first: fails, not known, close, holds, in each the least headroom first. */
    public static Comparator<Margin> worstFirst() {
        return Comparator.comparing(Margin::verdict).thenComparingDouble(Margin::headroom);
    }
}
