package hotidle.study;

import hotidle.assess.Margin;
import hotidle.newton.SteadySolver;
import hotidle.result.Solution;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The margins of a unit's slowest duty point at that point's own speed, without what is searched: to see fast what moves them.
 * Regulation is not among them.
 */
public final class IdleMargins {

    private IdleMargins() {}

    /** By limit; none where no state is found. */
    public static Map<Judgement.Key, Margin> of(Transmission unit) {
        DutyPoint idle = unit.duties().stream()
                .min(Comparator.comparingDouble(DutyPoint::speed))
                .orElseThrow();
        Optional<Solution> state = new SteadySolver(unit.network())
                .solve(unit.conditions(idle), Optional.empty())
                .state();
        return state.map(one -> Judgement.at(unit, idle, one)).orElse(Map.of());
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
