package hotidle.answer.draw;

import hotidle.result.Solution;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What a drawing shows besides the circuit.
 *
 * @param unit   the build
 * @param range  the range that the selector stands in
 * @param duty   the duty point; empty where no pressures are shown
 * @param state  its state there; empty where none is shown or it could not be solved
 * @param against the build that changes are marked against
 * @param before its state at the same duty point
 */
public record DrawnState(
        Transmission unit,
        String range,
        Optional<DutyPoint> duty,
        Optional<Solution> state,
        Optional<Transmission> against,
        Optional<Solution> before) {

    /** The range that the selector stands in: that of the duty shown, else of the first one, else the unit's first. */
    public static String range(Transmission unit, Optional<DutyPoint> shown) {
        return shown.or(() -> unit.duties().stream().findFirst())
                .map(DutyPoint::range)
                .orElseGet(() -> unit.ranges().get(0).name());
    }

    /** Oil through a part from a node, less what comes back to it [m³/s]; NaN where no state is known. */
    double flow(String part, String node) {
        return flow(part, node, stream -> true);
    }

    private double flow(String part, String node, Predicate<Solution.PartStream> counted) {
        return state.map(known -> streams(known, part).stream()
                        .filter(counted)
                        .mapToDouble(stream -> (stream.from().equals(node) ? stream.volume() : 0)
                                - (stream.to().equals(node) ? stream.volume() : 0))
                        .sum())
                .orElse(Double.NaN);
    }

    /** The largest flow that a part has at any node [m³/s]; NaN where no state is known. */
    double flow(String part, List<String> nodes) {
        return flow(part, nodes, stream -> true);
    }

    /** The same of some of its streams. */
    double flow(String part, List<String> nodes, Predicate<Solution.PartStream> counted) {
        return nodes.stream()
                .mapToDouble(node -> Math.abs(flow(part, node, counted)))
                .max()
                .orElse(Double.NaN);
    }

    private static List<Solution.PartStream> streams(Solution state, String part) {
        return state.streams().stream()
                .filter(stream -> stream.part().equals(part))
                .toList();
    }

    /** Gauge pressure of a node [Pa]; NaN where it is not known. */
    double pressure(String node) {
        return pressure(state, node);
    }

    /** The same in the build that this one is compared with. */
    double pressureBefore(String node) {
        return pressure(before, node);
    }

    private static double pressure(Optional<Solution> of, String node) {
        return of.map(known -> known.pressures().getOrDefault(node, Double.NaN)).orElse(Double.NaN);
    }

    /** Whether a part has other sizes than in the build that this one is compared with. */
    boolean changed(String part) {
        return against.isPresent()
                && !against.get().network().part(part).equals(unit.network().part(part));
    }
}
