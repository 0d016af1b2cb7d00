package hotidle.study;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What all ranges of a build hold.
 *
 * @param ranges each with its torque, in the order of the circuit
 */
public record HeldRanges(List<TorqueHeld> ranges) {

    public HeldRanges {
        ranges = List.copyOf(ranges);
    }

    /** The range that holds least; empty where there is none, or one is not known. */
    public Optional<TorqueHeld> least() {
        return ranges.stream().anyMatch(range -> range.held().isEmpty())
                ? Optional.empty()
                : ranges.stream()
                        .min(Comparator.comparingDouble(
                                range -> range.held().orElseThrow().torque()));
    }

    /** Engine torque that every range holds [N·m]; empty where there is none, or one is not known. */
    public OptionalDouble torque() {
        return least().stream()
                .mapToDouble(range -> range.held().orElseThrow().torque())
                .findFirst();
    }
}
