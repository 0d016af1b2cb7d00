package hotidle.study.gauge;

import hotidle.fault.UnitFault;
import hotidle.newton.Series;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What is expected of a unit with one fault, over the fault's size.
 *
 * <pre>
 * Nodes     solved at {@link #FIRST}; then the gap whose ends differ most is halved, as long as they differ by more than
 *           {@link #APART} standard deviations of all readings together, up to {@link #MOST} nodes
 * Between   straight, mean and covariance
 * </pre>
 */
final class CauseCurve {

    /** Shares of the way that are solved first (ours). */
    private static final List<Double> FIRST = List.of(0.0, 0.08, 0.16, 0.24, 0.36, 0.5, 0.7, 1.0);

    /** Ends that differ by less are near enough (ours) [-]. */
    private static final double APART = 2;

    /** A gap no wider than this is not halved (ours). */
    private static final double NARROWEST = 0.02;

    /** Most nodes of a fault (ours). */
    private static final int MOST = 14;

    private final UnitFault fault;
    private final NavigableMap<Double, Expectation> nodes = new TreeMap<>();

    private CauseCurve(UnitFault fault) {
        this.fault = fault;
    }

    UnitFault fault() {
        return fault;
    }

    /** Solved sizes, as shares of the way. */
    NavigableMap<Double, Expectation> nodes() {
        return nodes;
    }

    /** Where no size was solved, nothing is known of the fault. */
    boolean known() {
        return !nodes.isEmpty();
    }

    /**
     * Solves a fault.
     *
     * @param misfit by which the curve is judged; its readings' values do not count
     */
    static CauseCurve of(UnitFault fault, Adjustable build, GaugeModel model, Misfit misfit, Expectation sound) {
        CauseCurve curve = new CauseCurve(fault);
        Series series = model.series();
        boolean single = fault.least() == fault.most();
        curve.solve(series, build, model, single ? List.of(1.0) : FIRST, sound);
        for (boolean any = !single; any && curve.nodes.size() < MOST; ) {
            any = curve.halve(series, build, model, misfit, sound);
        }
        return curve;
    }

    private void solve(Series series, Adjustable build, GaugeModel model, List<Double> ways, Expectation sound) {
        List<Double> made = new ArrayList<>();
        List<Transmission> units = new ArrayList<>();
        for (double way : ways) {
            if (way == 0 && fault.kind().graded()) {
                nodes.put(way, sound);
            } else {
                fault.in(build, fault.sizeAt(way)).ifPresent(unit -> {
                    made.add(way);
                    units.add(unit);
                });
            }
        }
        List<Optional<Expectation>> found = model.along(series, units);
        for (int k = 0; k < made.size(); k++) {
            double way = made.get(k);
            found.get(k).ifPresent(expected -> nodes.put(way, expected));
        }
    }

    /** Solves the middle of the gap that is widest for the gauges; false where none is worth it. */
    private boolean halve(Series series, Adjustable build, GaugeModel model, Misfit misfit, Expectation sound) {
        double worst = APART;
        double middle = Double.NaN;
        Map.Entry<Double, Expectation> before = null;
        for (Map.Entry<Double, Expectation> node : nodes.entrySet()) {
            if (before != null && node.getKey() - before.getKey() > NARROWEST) {
                double step = misfit.distance(before.getValue(), node.getValue());
                if (step > worst) {
                    worst = step;
                    middle = (before.getKey() + node.getKey()) / 2;
                }
            }
            before = node;
        }
        if (Double.isNaN(middle)) {
            return false;
        }
        int count = nodes.size();
        solve(series, build, model, List.of(middle), sound);
        return nodes.size() > count;
    }

    /** What is expected at a share of the way, between the first and the last that were solved. */
    Expectation at(double way) {
        Map.Entry<Double, Expectation> below = nodes.floorEntry(way);
        Map.Entry<Double, Expectation> above = nodes.ceilingEntry(way);
        if (below == null || above == null) {
            return (below == null ? nodes.firstEntry() : nodes.lastEntry()).getValue();
        }
        return below.getKey().equals(above.getKey())
                ? below.getValue()
                : below.getValue()
                        .between(above.getValue(), (way - below.getKey()) / (above.getKey() - below.getKey()));
    }
}
