package hotidle.study;

import hotidle.part.Clutch;
import hotidle.transmission.Transmission;
import java.util.List;

/**
 * The capacity factors of the clutches that a unit applies in any range: by how much more torque they carry than they are counted with.
 *
 * @param least of them [-]
 * @param most  of them [-]
 */
public record ClutchFactors(double least, double most) {

    /** Of a unit; 1 and 1 where it applies none. */
    public static ClutchFactors of(Transmission unit) {
        List<Double> factors = unit.network().parts().stream()
                .filter(placed ->
                        unit.ranges().stream().anyMatch(range -> range.applied().containsKey(placed.name())))
                .flatMap(placed -> placed.part() instanceof Clutch clutch
                        ? List.of(clutch.factor()).stream()
                        : List.<Double>of().stream())
                .sorted()
                .toList();
        return factors.isEmpty()
                ? new ClutchFactors(1, 1)
                : new ClutchFactors(factors.get(0), factors.get(factors.size() - 1));
    }

    /** What counts for both. */
    public ClutchFactors with(ClutchFactors other) {
        return new ClutchFactors(Math.min(least, other.least), Math.max(most, other.most));
    }
}
