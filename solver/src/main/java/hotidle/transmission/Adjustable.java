package hotidle.transmission;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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
    }

    public Adjustable {
        dimensions = List.copyOf(dimensions);
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
        if (sizes.isEmpty()) {
            return this;
        }
        return new Adjustable(
                remake.with(sizes),
                dimensions.stream()
                        .map(size -> sizes.containsKey(size.name()) ? size.at(sizes.get(size.name())) : size)
                        .toList(),
                more -> {
                    Map<String, Double> all = new HashMap<>(sizes);
                    all.putAll(more);
                    return remake.with(all);
                });
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
        return new Adjustable(
                SetPressure.of(unit, pressure, by),
                dimensions,
                sizes -> SetPressure.of(remake.with(sizes), pressure, by));
    }
}
