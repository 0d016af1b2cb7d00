package hotidle.transmission;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;

/**
 * A unit whose sizes can be changed.
 *
 * @param unit       as its build has it
 * @param dimensions what can be changed
 * @param remake     makes the unit anew with other sizes
 */
public record Adjustable(Transmission unit, List<WearSize> dimensions, Remake remake) {

    /** Makes a unit anew. */
    public interface Remake {
        /**
         * The unit with some of its sizes changed; its set pressure is kept by the spring, where the build sets one.
         *
         * @param sizes by part and key, [m] or [m²]
         * @throws IllegalArgumentException where a size is impossible, with the reason
         */
        Transmission with(Map<String, Double> sizes);

        /** Further sizes that it can change, which no study tries of its own accord: those that do not wear. */
        default List<WearSize> others() {
            return List.of();
        }

        /** A build made by it at another set pressure; what lies over the unit, as a fault, lies over it then too. */
        default Adjustable setTo(Adjustable build, double pressure, SetPressure.By by) {
            return new Adjustable(
                    SetPressure.of(build.unit(), pressure, by),
                    build.dimensions(),
                    changed(sizes -> SetPressure.of(with(sizes), pressure, by)));
        }

        /** Another way of making the unit, of which the same further sizes can be changed. */
        default Remake changed(Remake made) {
            Remake same = this;
            return new Remake() {
                @Override
                public Transmission with(Map<String, Double> sizes) {
                    return made.with(sizes);
                }

                @Override
                public List<WearSize> others() {
                    return same.others();
                }
            };
        }
    }

    public Adjustable {
        dimensions = List.copyOf(dimensions);
    }

    /** A unit of which no size can be changed. */
    public static Adjustable fixed(Transmission unit) {
        return new Adjustable(unit, List.of(), sizes -> {
            if (!sizes.isEmpty()) {
                throw new IllegalArgumentException("no size of " + unit.build() + " can be changed");
            }
            return unit;
        });
    }

    /** The same under another name. */
    public Adjustable named(String build) {
        return new Adjustable(
                unit.named(build),
                dimensions,
                remake.changed(sizes -> remake.with(sizes).named(build)));
    }

    /** The unit with one size changed; empty where the size is impossible. */
    public Optional<Transmission> with(WearSize dimension, double value) {
        return with(Map.of(dimension.name(), value));
    }

    /** The unit with sizes changed; empty where one is impossible. */
    public Optional<Transmission> with(Map<String, Double> sizes) {
        try {
            return Optional.of(remake.with(sizes));
        } catch (IllegalArgumentException impossible) {
            return Optional.empty();
        }
    }

    /**
     * The same with sizes changed for good: what is changed from then on comes on top of them.
     *
     * @param sizes by part and key, [m] or [m²]
     * @throws IllegalArgumentException where a size is impossible, with the reason
     */
    public Adjustable resized(Map<String, Double> sizes) {
        return changed(sizes, WearSize::at);
    }

    /**
     * The same with sizes brought to what they are to be, as a shop does: nobody need measure them.
     *
     * @param sizes by part and key, [m] or [m²]
     * @throws IllegalArgumentException where a size is impossible, with the reason
     */
    public Adjustable madeTo(Map<String, Double> sizes) {
        return changed(sizes, WearSize::madeTo);
    }

    private Adjustable changed(Map<String, Double> sizes, BiFunction<WearSize, Double, WearSize> changed) {
        if (sizes.isEmpty()) {
            return this;
        }
        return new Adjustable(
                remake.with(sizes),
                dimensions.stream()
                        .map(size ->
                                sizes.containsKey(size.name()) ? changed.apply(size, sizes.get(size.name())) : size)
                        .toList(),
                remake.changed(more -> {
                    Map<String, Double> all = new HashMap<>(sizes);
                    all.putAll(more);
                    return remake.with(all);
                }));
    }

    /** The dimension of a name. */
    public Optional<WearSize> dimension(String name) {
        return dimensions.stream()
                .filter(dimension -> dimension.name().equals(name))
                .findFirst();
    }

    /**
     * The same at another set pressure.
     *
     * @param pressure [Pa]
     * @throws IllegalArgumentException where the build cannot be set to it
     */
    public Adjustable setTo(double pressure, SetPressure.By by) {
        return remake.setTo(this, pressure, by);
    }
}
