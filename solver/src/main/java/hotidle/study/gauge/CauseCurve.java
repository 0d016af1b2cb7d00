package hotidle.study.gauge;

import hotidle.fault.UnitFault;
import hotidle.newton.Series;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.apache.commons.math3.analysis.interpolation.AkimaSplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.apache.commons.math3.linear.ArrayRealVector;

/**
 * What is expected of a unit with one fault, over the fault's size.
 *
 * <pre>
 * Nodes     solved at {@link #FIRST}; then the gap whose ends differ most is halved, as long as they differ by more than
 *           {@link #APART} standard deviations of all readings together, up to {@link #MOST} nodes
 * Between   means by the spline of H. Akima, J. ACM 17 (1970) 589 (from memory), which does not swing where a regulator lets go;
 *           straight where there are too few nodes for one; covariance straight
 * </pre>
 */
final class CauseCurve {

    /** Shares of the way that are solved first (ours). */
    private static final List<Double> FIRST = List.of(0.0, 0.08, 0.16, 0.24, 0.36, 0.5, 0.7, 1.0);

    /** Ends that differ by less are near enough (ours) [-]. */
    private static final double APART = 2;

    /** A gap no wider than this is not halved (ours). */
    private static final double NARROWEST = 0.01;

    /** Most nodes of a fault (ours). */
    private static final int MOST = 14;

    /** Fewest nodes through which the spline goes. */
    private static final int SPLINE = 5;

    private final UnitFault fault;
    private final NavigableMap<Double, Expectation> nodes;
    private final List<PolynomialSplineFunction> means;

    /**
     * A curve through what was solved.
     *
     * @param nodes by share of the way
     */
    CauseCurve(UnitFault fault, NavigableMap<Double, Expectation> nodes) {
        this.fault = fault;
        this.nodes = new TreeMap<>(nodes);
        means = nodes.size() < SPLINE ? List.of() : splines(this.nodes);
    }

    /** A curve for each reading. */
    private static List<PolynomialSplineFunction> splines(NavigableMap<Double, Expectation> nodes) {
        double[] ways = nodes.keySet().stream().mapToDouble(Double::doubleValue).toArray();
        return IntStream.range(0, nodes.firstEntry().getValue().mean().getDimension())
                .mapToObj(i -> new AkimaSplineInterpolator()
                        .interpolate(
                                ways,
                                nodes.values().stream()
                                        .mapToDouble(expected -> expected.mean().getEntry(i))
                                        .toArray()))
                .toList();
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
    static CauseCurve of(UnitFault fault, GaugeModel model, Misfit misfit, Expectation sound) {
        NavigableMap<Double, Expectation> nodes = new TreeMap<>();
        Series series = model.series();
        boolean single = fault.least() == fault.most();
        if (!single && fault.kind().graded()) {
            nodes.put(0.0, sound);
        }
        solve(fault, series, model, single ? List.of(1.0) : FIRST, nodes);
        for (boolean any = !single; any && nodes.size() < MOST; ) {
            Optional<Double> middle = widest(nodes, misfit);
            int count = nodes.size();
            middle.ifPresent(way -> solve(fault, series, model, List.of(way), nodes));
            any = nodes.size() > count;
        }
        return new CauseCurve(fault, nodes);
    }

    private static void solve(
            UnitFault fault,
            Series series,
            GaugeModel model,
            List<Double> ways,
            NavigableMap<Double, Expectation> nodes) {
        List<Double> asked =
                ways.stream().filter(way -> !nodes.containsKey(way)).toList();
        List<Optional<Expectation>> found = model.along(
                series,
                asked.stream().map(way -> List.of(fault.of(fault.sizeAt(way)))).toList());
        for (int k = 0; k < asked.size(); k++) {
            double way = asked.get(k);
            found.get(k).ifPresent(expected -> nodes.put(way, expected));
        }
    }

    /** The middle of the gap that is widest for the gauges; empty where none is worth it. */
    private static Optional<Double> widest(NavigableMap<Double, Expectation> nodes, Misfit misfit) {
        double worst = APART;
        Optional<Double> middle = Optional.empty();
        Map.Entry<Double, Expectation> before = nodes.firstEntry();
        for (Map.Entry<Double, Expectation> node : nodes.entrySet()) {
            if (node.getKey() - before.getKey() > NARROWEST) {
                double step = misfit.distance(before.getValue(), node.getValue());
                if (step > worst) {
                    worst = step;
                    middle = Optional.of((before.getKey() + node.getKey()) / 2);
                }
            }
            before = node;
        }
        return middle;
    }

    /** What is expected at a share of the way, between the first and the last that were solved. */
    Expectation at(double way) {
        Map.Entry<Double, Expectation> below = nodes.floorEntry(way);
        Map.Entry<Double, Expectation> above = nodes.ceilingEntry(way);
        if (below == null || above == null) {
            return (below == null ? nodes.firstEntry() : nodes.lastEntry()).getValue();
        }
        if (below.getKey().equals(above.getKey())) {
            return below.getValue();
        }
        Expectation straight =
                below.getValue().between(above.getValue(), (way - below.getKey()) / (above.getKey() - below.getKey()));
        return means.isEmpty()
                ? straight
                : new Expectation(
                        new ArrayRealVector(means.stream()
                                .mapToDouble(mean -> mean.value(way))
                                .toArray()),
                        straight.covariance());
    }
}
