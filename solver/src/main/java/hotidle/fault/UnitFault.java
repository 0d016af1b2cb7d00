package hotidle.fault;

import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A fault that a unit can have: what, where, and how large it can be.
 *
 * @param kind   what
 * @param part   where; empty where it concerns the whole unit
 * @param wears  sizes of the part that wear with it; empty where it changes the part otherwise
 * @param least  smallest size, in what {@link FaultKind#sizeOf} counts
 * @param most   largest size
 * @param change what it makes of a unit beside the sizes that wear
 */
public record UnitFault(
        FaultKind kind, String part, List<WearSize> wears, double least, double most, FaultEffect change) {

    /** Makes a changed unit. */
    public interface FaultEffect {
        /** The unit with the fault of a size. */
        Transmission of(Transmission unit, double size);
    }

    /** A part blocked by a share s passes 1 − s: sizes of blocked parts are even in the decades of what is left (ours). */
    private static final double DECADES = 3;

    public UnitFault {
        wears = List.copyOf(wears);
    }

    /** As it is written behind {@code --fault}, without its size. */
    public String name() {
        return kind.word() + (part.isEmpty() ? "" : "@" + part);
    }

    /** A fault and its size. */
    public record Sized(UnitFault fault, double size) {}

    /** The fault with a size. */
    public Sized of(double size) {
        return new Sized(this, size);
    }

    /**
     * The size at a share of the way from the smallest to the largest, evenly over what a gauge may see of it: decades of what a
     * blocked part still passes, powers of a diameter, everything else as it is.
     *
     * @param way 0 to 1
     */
    public double sizeAt(double way) {
        return switch (kind) {
            case FILTER_BLOCKED, COOLER_BLOCKED -> 1 - Math.pow(10, -DECADES * way);
            case ORIFICE_WRONG -> least * Math.pow(most / least, way);
            default -> least + way * (most - least);
        };
    }

    /** Share of the way at which a size lies, the inverse of {@link #sizeAt}. */
    public double wayTo(double size) {
        return switch (kind) {
            case FILTER_BLOCKED, COOLER_BLOCKED -> -Math.log10(1 - size) / DECADES;
            case ORIFICE_WRONG -> Math.log(size / least) / Math.log(most / least);
            default -> most > least ? (size - least) / (most - least) : 1;
        };
    }

    /** A size of the part that the fault of a size wears [m] or [m²]. */
    public double worn(WearSize wear, double size) {
        return wear.value() + size * wear.allowance();
    }

    /**
     * A unit with faults, one laid over the other.
     *
     * @param build as it would be without them
     * @return empty where a size is impossible
     */
    public static Optional<Transmission> in(Adjustable build, List<Sized> faults) {
        return in(build, Map.of(), faults);
    }

    /**
     * A unit with faults whose sizes differ from its build beside them.
     *
     * @param build as it would be without both
     * @param more  by how much each of some sizes differs [m] or [m²], by name
     * @return empty where a size is impossible
     */
    public static Optional<Transmission> in(Adjustable build, Map<String, Double> more, List<Sized> faults) {
        try {
            return Optional.of(new LaidFaults(faults).over(build, more).unit());
        } catch (IllegalArgumentException impossible) {
            return Optional.empty();
        }
    }

    /** A unit with this fault alone; empty where the size is impossible. */
    public Optional<Transmission> in(Adjustable build, double size) {
        return in(build, List.of(of(size)));
    }
}
