package hotidle.study.gauge;

import hotidle.fault.UnitFault;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * What further readings would show if one cause is behind those that were taken, with its size and all else of the unit as open as
 * these leave it.
 *
 * <pre>
 * Sizes     {@link #NODES} solved from one end of its interval to the other, and the likeliest; {@link #CELLS} between them, straight.
 *           Each counts by the likelihood of what was read, times the prior
 * Reading   at a size: normal, about what is expected of it given what was read: m + cᵀ·C⁻¹·(y − m), variance v − cᵀ·C⁻¹·c with the
 *           gauge's, C the covariance of what was read, c that of it with the further reading. So tolerances that move both count once
 * </pre>
 */
final class OutcomeMixture {

    private static final int NODES = 5;
    private static final int CELLS = 16;

    /** Ends of an interval nearer than this are one size (ours) [-]. */
    private static final double NARROW = 1e-9;

    private final RealVector best;
    private final List<OutcomeCell> cells;

    /** A size: its share of what is believed of the cause, and what it makes of each further reading. */
    @SuppressWarnings("ArrayRecordComponent") // of this class alone, which changes none
    private record OutcomeCell(double share, double[] mean, double[] deviation) {}

    private OutcomeMixture(RealVector best, List<OutcomeCell> cells) {
        this.best = best;
        this.cells = cells;
    }

    /**
     * What a cause makes of some rows; empty where it cannot be solved at its likeliest size.
     *
     * @param model of rows that were read, those of {@code taken} in their order, and of further ones behind them
     * @param taken readings that were taken
     * @param gauge deviation of the gauge at each further row
     */
    static Optional<OutcomeMixture> of(Cause cause, GaugeModel model, List<GaugeReading> taken, double[] gauge) {
        UnitFault fault = cause.fault();
        double low = fault.wayTo(cause.low());
        double high = fault.wayTo(cause.high());
        double likely = fault.wayTo(cause.size());
        TreeSet<Double> ways = new TreeSet<>(List.of(likely));
        if (high - low > NARROW) {
            for (int k = 0; k < NODES; k++) {
                ways.add(low + (high - low) * k / (NODES - 1));
            }
        }
        List<Double> asked = List.copyOf(ways);
        List<Optional<GaugeModel.SweptPoints>> solved = model.swept(
                model.series(),
                asked.stream()
                        .map(way -> List.of(fault.of(way == likely ? cause.size() : fault.sizeAt(way))))
                        .toList(),
                StartStates.of(model.starts()));
        TreeMap<Double, SolvedRows> nodes = new TreeMap<>();
        for (int k = 0; k < asked.size(); k++) {
            double way = asked.get(k);
            solved.get(k).ifPresent(one -> nodes.put(way, SolvedRows.of(one.slopes(), model.rows(), taken, gauge)));
        }
        return nodes.containsKey(likely)
                ? Optional.of(new OutcomeMixture(nodes.get(likely).mean(), cells(cause, nodes, taken)))
                : Optional.empty();
    }

    /**
     * A solved size: means and covariance of what was read and of the further rows.
     *
     * @param taken    mean of each row that was read
     * @param own      covariance of these, gauges included
     * @param mean     of each further row
     * @param cross    of rows that were read, down, with further ones, across
     * @param variance of each further row, gauge included
     */
    private record SolvedRows(
            RealVector taken, RealMatrix own, RealVector mean, RealMatrix cross, RealVector variance) {

        static SolvedRows of(
                Expectation.Slopes slopes, List<GaugeReading.Row> rows, List<GaugeReading> read, double[] gauge) {
            int n = read.size();
            int columns = slopes.slopes().getColumnDimension();
            RealMatrix first = slopes.slopes().getSubMatrix(0, n - 1, 0, columns - 1);
            RealMatrix further = slopes.slopes().getSubMatrix(n, rows.size() - 1, 0, columns - 1);
            RealMatrix own = first.multiply(first.transpose());
            for (int i = 0; i < n; i++) {
                own.addToEntry(
                        i,
                        i,
                        alone(
                                rows.get(i),
                                slopes.mean().getEntry(i),
                                read.get(i).deviation()));
            }
            double[] variance = new double[gauge.length];
            for (int i = 0; i < gauge.length; i++) {
                RealVector moves = further.getRowVector(i);
                variance[i] = moves.dotProduct(moves)
                        + alone(rows.get(n + i), slopes.mean().getEntry(n + i), gauge[i]);
            }
            return new SolvedRows(
                    slopes.mean().getSubVector(0, n),
                    own,
                    slopes.mean().getSubVector(n, gauge.length),
                    first.multiply(further.transpose()),
                    new ArrayRealVector(variance));
        }

        /** Variance of a reading that no other shares: its gauge's, and of a flow that of its law. */
        private static double alone(GaugeReading.Row row, double mean, double gauge) {
            double law = row.meter().reads() == Meter.Reads.FLOW ? Tolerances.FLOW_LAW * mean : 0;
            return gauge * gauge + law * law;
        }

        SolvedRows between(SolvedRows other, double share) {
            return new SolvedRows(
                    taken.combine(1 - share, share, other.taken),
                    own.scalarMultiply(1 - share).add(other.own.scalarMultiply(share)),
                    mean.combine(1 - share, share, other.mean),
                    cross.scalarMultiply(1 - share).add(other.cross.scalarMultiply(share)),
                    variance.combine(1 - share, share, other.variance));
        }
    }

    private static List<OutcomeCell> cells(
            Cause cause, NavigableMap<Double, SolvedRows> nodes, List<GaugeReading> taken) {
        int count = nodes.size() == 1 ? 1 : CELLS;
        double first = nodes.firstKey();
        double width = (nodes.lastKey() - first) / count;
        List<Given> given = IntStream.range(0, count)
                .mapToObj(k -> Given.of(cause, first + width * (k + 0.5), nodes, taken))
                .toList();
        double likeliest = given.stream().mapToDouble(Given::log).max().orElseThrow();
        double all = given.stream()
                .mapToDouble(one -> Math.exp(one.log() - likeliest))
                .sum();
        List<OutcomeCell> cells = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            Given own = given.get(k);
            Given below = given.get(Math.max(k - 1, 0));
            Given above = given.get(Math.min(k + 1, count - 1));
            double steps = Math.max(Math.min(k + 1, count - 1) - Math.max(k - 1, 0), 1);
            double[] deviation = new double[own.mean().length];
            for (int i = 0; i < deviation.length; i++) {
                double across = (above.mean()[i] - below.mean()[i]) / steps;
                deviation[i] = Math.sqrt(own.variance()[i] + across * across / EVEN);
            }
            cells.add(new OutcomeCell(Math.exp(own.log() - likeliest) / all, own.mean(), deviation));
        }
        return cells;
    }

    /** The variance of what lies evenly over a width is its square over this [-]. */
    private static final double EVEN = 12;

    /**
     * Further rows at one size, given what was read.
     *
     * @param log of prior times likelihood
     */
    @SuppressWarnings("ArrayRecordComponent") // of this class alone, which changes none
    private record Given(double log, double[] mean, double[] variance) {

        static Given of(Cause cause, double way, NavigableMap<Double, SolvedRows> nodes, List<GaugeReading> taken) {
            SolvedRows rows = at(way, nodes);
            int[] exact = IntStream.range(0, taken.size())
                    .filter(i -> taken.get(i).sense() == GaugeReading.Sense.EXACT)
                    .toArray();
            double prior =
                    nodes.size() == 1 ? 1 : CauseBelief.density(cause.fault().kind(), way);
            if (exact.length == 0) {
                return new Given(
                        Math.log(prior), rows.mean().toArray(), rows.variance().toArray());
            }
            CholeskyDecomposition factors = new CholeskyDecomposition(scaled(rows.own(), exact, taken), SYMMETRIC, 0);
            RealVector off = new ArrayRealVector(exact.length);
            RealMatrix cross =
                    new Array2DRowRealMatrix(exact.length, rows.mean().getDimension());
            for (int k = 0; k < exact.length; k++) {
                double deviation = taken.get(exact[k]).deviation();
                off.setEntry(k, (taken.get(exact[k]).value() - rows.taken().getEntry(exact[k])) / deviation);
                cross.setRowVector(k, rows.cross().getRowVector(exact[k]).mapDivide(deviation));
            }
            RealVector told = factors.getSolver().solve(off);
            RealMatrix known = factors.getSolver().solve(cross);
            double[] mean = rows.mean().add(cross.preMultiply(told)).toArray();
            double[] variance = rows.variance().toArray();
            for (int i = 0; i < variance.length; i++) {
                double less = 0;
                for (int k = 0; k < exact.length; k++) {
                    less += cross.getEntry(k, i) * known.getEntry(k, i);
                }
                variance[i] -= less;
            }
            double log = -(off.dotProduct(told) + Math.log(factors.getDeterminant())) / 2;
            return new Given(log + Math.log(prior), mean, variance);
        }

        private static SolvedRows at(double way, NavigableMap<Double, SolvedRows> nodes) {
            Map.Entry<Double, SolvedRows> below = nodes.floorEntry(way);
            Map.Entry<Double, SolvedRows> above = nodes.higherEntry(way);
            return above == null
                    ? below.getValue()
                    : below.getValue()
                            .between(above.getValue(), (way - below.getKey()) / (above.getKey() - below.getKey()));
        }

        /** Pressures and flows beside each other, in the deviations of their gauges. */
        private static RealMatrix scaled(RealMatrix own, int[] exact, List<GaugeReading> taken) {
            RealMatrix scaled = own.getSubMatrix(exact, exact);
            for (int k = 0; k < exact.length; k++) {
                for (int l = 0; l < exact.length; l++) {
                    scaled.multiplyEntry(
                            k,
                            l,
                            1
                                    / (taken.get(exact[k]).deviation()
                                            * taken.get(exact[l]).deviation()));
                }
            }
            return scaled;
        }
    }

    /** Rounding by which a covariance may differ from its transpose, as a share [-]. */
    private static final double SYMMETRIC = 1e-9;

    /** What each further row reads at the likeliest size. */
    RealVector best() {
        return best;
    }

    /** Beyond so many deviations nothing is expected (ours). */
    private static final double REACH = 6;

    /** The least that a row may read. */
    double low(int row) {
        return cells.stream()
                .mapToDouble(cell -> cell.mean()[row] - REACH * cell.deviation()[row])
                .min()
                .orElseThrow();
    }

    /** The most that a row may read. */
    double high(int row) {
        return cells.stream()
                .mapToDouble(cell -> cell.mean()[row] + REACH * cell.deviation()[row])
                .max()
                .orElseThrow();
    }

    /** How narrowly a row is known at the size where it is known best. */
    double narrow(int row) {
        return cells.stream().mapToDouble(cell -> cell.deviation()[row]).min().orElseThrow();
    }

    /** Density of a reading, by √(2π) too large. */
    double density(int row, double reading) {
        double density = 0;
        for (OutcomeCell cell : cells) {
            double deviation = cell.deviation()[row];
            double off = (reading - cell.mean()[row]) / deviation;
            if (off * off < REACH * REACH) {
                density += cell.share() * Math.exp(-off * off / 2) / deviation;
            }
        }
        return density;
    }
}
