package hotidle.transmission;

import java.util.OptionalDouble;

/**
 * A size of a unit that can be changed.
 *
 * @param part     the part
 * @param key      its key, for example bore
 * @param kind     what it is
 * @param value    as the build has it [m] or [m²]
 * @param fresh    as new
 * @param limit    wear limit, where one is written
 * @param measured as measured, where it was
 * @param origin   where the build's value comes from
 */
public record WearSize(
        String part,
        String key,
        SizeKind kind,
        double value,
        double fresh,
        OptionalDouble limit,
        OptionalDouble measured,
        Origin origin) {

    /** Where the value of a build comes from. */
    public enum Origin {
        /** A gauge: the build, or its sheet, takes what was measured. */
        MEASURED,
        /** The build says what it is made to: new again, or another size. */
        MADE,
        /** No build says anything of it: it stands as the file has it, as new. Nobody has looked. */
        WRITTEN
    }

    /** A size whose origin its value tells: as measured, made to another size, or as new. */
    public WearSize(
            String part,
            String key,
            SizeKind kind,
            double value,
            double fresh,
            OptionalDouble limit,
            OptionalDouble measured) {
        this(part, key, kind, value, fresh, limit, measured, origin(value, fresh, measured));
    }

    private static Origin origin(double value, double fresh, OptionalDouble measured) {
        if (measured.isPresent() && Math.abs(value - measured.getAsDouble()) <= SAME * value) {
            return Origin.MEASURED;
        }
        return Math.abs(value - fresh) <= SAME * fresh ? Origin.WRITTEN : Origin.MADE;
    }

    /** The same size with another value. */
    WearSize at(double other) {
        return new WearSize(part, key, kind, other, fresh, limit, measured);
    }

    /** The same size brought to a value by who builds the unit. */
    WearSize madeTo(double other) {
        return new WearSize(part, key, kind, other, fresh, limit, measured, Origin.MADE);
    }

    /** What a dimension is. */
    public enum SizeKind {
        /** Of a fit: a bore, a clearance, a gap. */
        LENGTH,
        /** Of scores and nicks, through which thick oil slips as fast as thin; no other area wears. A piston has one too, which does not. */
        AREA
    }

    /** A size closer to another than this share of it is the same: rounding (ours) [-]. */
    private static final double SAME = 1e-9;

    /** Name of part and key. */
    public String name() {
        return part + "." + key;
    }

    /** Whether it stands for scores and nicks, which only new or reground parts take away. */
    public boolean scores() {
        return kind == SizeKind.AREA;
    }

    /** Whether the build has it as new. */
    public boolean isNew() {
        return Math.abs(value - fresh) <= SAME * fresh;
    }

    /** Whether it is one of a fit that wears: another value than new is written for it or used by the build. */
    public boolean wears() {
        return limit.isPresent() || measured.isPresent() || !isNew();
    }

    /** Whether the build has it worn: further from new than nothing, the way that it wears. */
    public boolean worn() {
        return !isNew() && (value - fresh) * allowance() > 0;
    }

    /** What it may wear: from new to its limit, else to what was measured, else what it differs from new, upwards [m]; signed. */
    public double allowance() {
        double end = limit.orElse(measured.orElse(fresh));
        return end == fresh ? Math.abs(value - fresh) : end - fresh;
    }
}
