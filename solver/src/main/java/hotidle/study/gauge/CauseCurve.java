package hotidle.study.gauge;

import hotidle.fault.UnitFault;
import hotidle.newton.Series;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.apache.commons.math3.analysis.interpolation.AkimaSplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealVector;

/**
 * What is expected of a unit with one fault, over the fault's size.
 *
 * <pre>
 * Nodes     solved at {@link #FIRST}; then gaps are halved, and both halves again where the curve was off by more than {@link #NEAR}
 *           standard deviations of all readings together in the middle, those first that were off most, up to {@link #MOST} nodes
 * Between   means by the spline of H. Akima, J. ACM 17 (1970) 589 (from memory), which does not swing where a regulator lets go;
 *           straight where there are too few nodes for one; covariance straight
 * </pre>
 */
final class CauseCurve {

    /** Shares of the way that are solved first (ours). */
    private static final List<Double> FIRST = List.of(0.0, 0.08, 0.16, 0.24, 0.36, 0.5, 0.7, 1.0);

    /** A curve that is off by less is near enough (ours) [standard deviations]. */
    private static final double NEAR = 0.3;

    /** A gap no wider than this is not halved (ours). */
    private static final double NARROWEST = 0.005;

    /** Most nodes of a fault (ours). */
    private static final int MOST = 32;

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
        NavigableMap<Double, GaugeModel.SolvedPoints> solved = new TreeMap<>();
        Series series = model.series();
        if (fault.least() == fault.most()) {
            solve(fault, series, model, List.of(1.0), StartStates.of(model.starts()), solved);
            return new CauseCurve(fault, expected(solved));
        }
        if (fault.kind().graded()) {
            solved.put(0.0, new GaugeModel.SolvedPoints(sound, model.starts()));
        }
        solve(fault, series, model, FIRST, StartStates.of(model.starts()), solved);
        refine(fault, series, model, misfit, solved);
        return new CauseCurve(fault, expected(solved));
    }

    private static NavigableMap<Double, Expectation> expected(NavigableMap<Double, GaugeModel.SolvedPoints> solved) {
        NavigableMap<Double, Expectation> nodes = new TreeMap<>();
        solved.forEach((way, one) -> nodes.put(way, one.expected()));
        return nodes;
    }

    /**
     * A gap between two nodes.
     *
     * @param off by how much the curve may be off in it
     */
    private record NodeGap(double low, double high, double off) {}

    private static void refine(
            UnitFault fault,
            Series series,
            GaugeModel model,
            Misfit misfit,
            NavigableMap<Double, GaugeModel.SolvedPoints> solved) {
        PriorityQueue<NodeGap> gaps = new PriorityQueue<>(
                Comparator.comparingDouble((NodeGap gap) -> -gap.off()).thenComparingDouble(NodeGap::low));
        Map.Entry<Double, GaugeModel.SolvedPoints> before = null;
        for (Map.Entry<Double, GaugeModel.SolvedPoints> node : solved.entrySet()) {
            if (before != null) {
                double apart = misfit.distance(
                        before.getValue().expected(), node.getValue().expected());
                gaps.add(new NodeGap(before.getKey(), node.getKey(), apart));
            }
            before = node;
        }
        while (!gaps.isEmpty() && solved.size() < MOST) {
            NodeGap gap = gaps.remove();
            if (gap.off() > NEAR && gap.high() - gap.low() > NARROWEST) {
                double middle = (gap.low() + gap.high()) / 2;
                Expectation drawn = new CauseCurve(fault, expected(solved)).at(middle);
                solve(
                        fault,
                        series,
                        model,
                        List.of(middle),
                        new StartStates(
                                solved.get(gap.low()).states(),
                                solved.get(gap.high()).states()),
                        solved);
                if (solved.containsKey(middle)) {
                    double off = misfit.distance(solved.get(middle).expected(), drawn);
                    gaps.add(new NodeGap(gap.low(), middle, off));
                    gaps.add(new NodeGap(middle, gap.high(), off));
                }
            }
        }
    }

    private static void solve(
            UnitFault fault,
            Series series,
            GaugeModel model,
            List<Double> ways,
            StartStates from,
            NavigableMap<Double, GaugeModel.SolvedPoints> solved) {
        List<Double> asked =
                ways.stream().filter(way -> !solved.containsKey(way)).toList();
        List<Optional<GaugeModel.SolvedPoints>> found = model.along(
                series,
                asked.stream().map(way -> List.of(fault.of(fault.sizeAt(way)))).toList(),
                from);
        for (int k = 0; k < asked.size(); k++) {
            double way = asked.get(k);
            found.get(k).ifPresent(one -> solved.put(way, one));
        }
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
        return means.isEmpty() ? straight : new Expectation(splined(way), straight.covariance());
    }

    /** The mean of what is expected there, without its covariance. */
    RealVector mean(double way) {
        return means.isEmpty() || way <= nodes.firstKey() || way >= nodes.lastKey() ? at(way).mean() : splined(way);
    }

    private RealVector splined(double way) {
        return new ArrayRealVector(
                means.stream().mapToDouble(mean -> mean.value(way)).toArray());
    }
}
