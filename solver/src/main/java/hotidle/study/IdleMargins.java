package hotidle.study;

import hotidle.assess.Margin;
import hotidle.newton.SteadySolver;
import hotidle.result.Solution;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The margins of a unit's slowest duty point, or of another, at that point's own speed, without what is searched: to see fast what moves
 * them. Regulation is not among them. What a gauge reads there is found with them.
 */
public final class IdleMargins {

    private IdleMargins() {}

    /** By limit; none where no state is found. */
    public static Map<Judgement.Key, Margin> of(Transmission unit) {
        return of(unit, idle(unit).orElseThrow());
    }

    /** The same of another duty point at its own speed. */
    public static Map<Judgement.Key, Margin> of(Transmission unit, DutyPoint at) {
        return state(unit, at).map(one -> Judgement.at(unit, at, one)).orElse(Map.of());
    }

    /**
     * What a gauge on the line reads at that point [Pa]; empty where no state is found.
     *
     * @throws hotidle.transmission.NotCommandedException where nothing commands the line
     */
    public static OptionalDouble gauge(Transmission unit) {
        String line = unit.command().line();
        return state(unit, idle(unit).orElseThrow()).stream()
                .mapToDouble(state -> state.pressure(line))
                .findFirst();
    }

    /** The slowest duty point; empty where there is none. */
    public static Optional<DutyPoint> idle(Transmission unit) {
        return unit.duties().stream().min(Comparator.comparingDouble(DutyPoint::speed));
    }

    private static Optional<Solution> state(Transmission unit, DutyPoint idle) {
        return new SteadySolver(unit.network())
                .solve(unit.conditions(idle), Optional.empty())
                .state();
    }

    /** What a low line takes: the others are the inlet's, the relief valve's and the hub's own. */
    private static final Set<Margin.Kind> BY_LINE = Set.of(
            Margin.Kind.APPLY,
            Margin.Kind.APPLY_SLIDING,
            Margin.Kind.LOCKUP,
            Margin.Kind.LUBRICATION,
            Margin.Kind.COOLER,
            Margin.Kind.CONVERTER_CHARGE);

    /** The one with the least headroom of those that hang on the line and whose value is known; empty where none is. */
    public static Optional<Map.Entry<Judgement.Key, Margin>> least(Map<Judgement.Key, Margin> margins) {
        return margins.entrySet().stream()
                .filter(entry -> BY_LINE.contains(entry.getKey().kind()))
                .filter(entry -> Double.isFinite(entry.getValue().headroom()))
                .min(Comparator.comparingDouble(entry -> entry.getValue().headroom()));
    }
}
