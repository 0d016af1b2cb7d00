package hotidle.study.gauge;

import hotidle.newton.Series;
import hotidle.transmission.Adjustable;
import hotidle.transmission.WearSize;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;

/**
 * The most likely sizes of all fits together.
 *
 * <pre>
 * Least     Σ((reading − expected(s))/σ)² + Σ((s − build)/τ)²; σ of the gauge with speed and temperature, τ of each size:
 *           {@link #UNMEASURED} of the way from new to the wear limit, {@link #MEASURED} of it where it was measured (assumed)
 * Solver    Levenberg and Marquardt, of Commons Math, on the exact slopes of {@link GaugeModel}, taken anew at each step
 * Interval  1.645 standard deviations to both sides, of the inverse of the normal matrix at the end: to first order
 * </pre>
 *
 * @param sizes     the one that moved most against its prior first
 * @param chiSquare misfit of the readings that showed a value, left at these sizes
 * @param settled   whether the least was found
 */
public record FitsTogether(List<FittedSize> sizes, double chiSquare, boolean settled) {

    private static final double UNMEASURED = 0.5;
    private static final double MEASURED = 0.05;
    private static final int ITERATIONS = 40;
    private static final double INTERVAL = 1.645;

    /** Between these deviations a size is searched: a fit is not much tighter than new (ours). */
    private static final double LEAST_MOVED = -1;

    private static final double MOST_MOVED = 20;

    /** Of the differences for the slopes, as a share of a deviation (ours) [-]. */
    private static final double STEP = 0.02;

    /**
     * A size.
     *
     * @param value most likely [m] or [m²]
     * @param low   lower end of an interval of 90 %
     * @param high  upper end of it
     * @param moved value less the build's, in deviations of what was believed before [-]
     * @param known deviation left over the one before [-]: 1 where the readings tell nothing of it
     */
    public record FittedSize(WearSize size, double value, double low, double high, double moved, double known) {

        /** Whether it is held near its measurement; if not, as loosely as nobody has looked. */
        public boolean held() {
            return size.origin() == WearSize.Origin.MEASURED;
        }
    }

    /** With more than this share of its deviation left, and moved by less than {@link #MOVED}, nothing was learnt (chosen) [-]. */
    private static final double LEARNT = 0.9;

    private static final double MOVED = 0.25;

    /** The sizes of which the readings tell something. */
    public List<FittedSize> told() {
        return sizes.stream()
                .filter(fit -> fit.known() < LEARNT || Math.abs(fit.moved()) > MOVED)
                .toList();
    }

    public FitsTogether {
        sizes = List.copyOf(sizes);
    }

    /** Fits the sizes of a build to readings that showed a value. */
    public static FitsTogether of(Adjustable build, List<GaugeReading> readings) {
        List<GaugeReading> exact = readings.stream()
                .filter(reading -> reading.sense() == GaugeReading.Sense.EXACT)
                .toList();
        Map<String, Double> wide = new HashMap<>();
        List<WearSize> sizes = new ArrayList<>();
        for (WearSize size : build.dimensions()) {
            double deviation =
                    Math.abs(size.allowance()) * (size.origin() == WearSize.Origin.MEASURED ? MEASURED : UNMEASURED);
            if (deviation > 0 && Tolerances.movable(build, size, deviation)) {
                wide.put(size.name(), deviation);
                sizes.add(size);
            }
        }
        GaugeModel meters = new GaugeModel(
                Tolerances.of(build),
                List.of(),
                exact.stream().map(GaugeReading::row).toList());
        if (!meters.unsolved().isEmpty()) {
            return new FitsTogether(List.of(), Double.NaN, false);
        }
        Series series = meters.series();
        RealVector spread = spread(meters.sound(series), exact);
        int m = exact.size();
        MultivariateJacobianFunction model = point -> {
            Expectation.Slopes at = at(meters, series, new Searched(build, sizes, wide), point);
            RealVector value = new ArrayRealVector(m + sizes.size());
            RealMatrix slopes = new Array2DRowRealMatrix(m + sizes.size(), sizes.size());
            for (int i = 0; i < m; i++) {
                value.setEntry(i, at.mean().getEntry(i) / spread.getEntry(i));
                for (int k = 0; k < sizes.size(); k++) {
                    slopes.setEntry(i, k, at.slopes().getEntry(i, k) / spread.getEntry(i));
                }
            }
            for (int k = 0; k < sizes.size(); k++) {
                value.setEntry(m + k, point.getEntry(k));
                slopes.setEntry(m + k, k, 1);
            }
            return new Pair<>(value, slopes);
        };
        double[] target = new double[m + sizes.size()];
        for (int i = 0; i < m; i++) {
            target[i] = exact.get(i).value() / spread.getEntry(i);
        }
        try {
            return found(
                    sizes,
                    wide,
                    m,
                    new LevenbergMarquardtOptimizer()
                            .optimize(new LeastSquaresBuilder()
                                    .model(model)
                                    .target(target)
                                    .start(new double[sizes.size()])
                                    .parameterValidator(
                                            at -> at.map(moved -> Math.min(Math.max(moved, LEAST_MOVED), MOST_MOVED)))
                                    .maxEvaluations(ITERATIONS)
                                    .maxIterations(ITERATIONS)
                                    .build()));
        } catch (MathIllegalStateException | NoStateException notFound) {
            return new FitsTogether(List.of(), Double.NaN, false);
        }
    }

    /** A step of the search led where no state was found. */
    private static final class NoStateException extends IllegalStateException {
        private static final long serialVersionUID = 1;
    }

    private static FitsTogether found(
            List<WearSize> sizes, Map<String, Double> wide, int m, LeastSquaresOptimizer.Optimum least) {
        RealVector sigma = least.getSigma(1e-12);
        List<FittedSize> fitted = new ArrayList<>();
        for (int k = 0; k < sizes.size(); k++) {
            WearSize size = sizes.get(k);
            double deviation = wide.get(size.name());
            double moved = least.getPoint().getEntry(k);
            double value = size.value() + deviation * moved;
            double band = INTERVAL * sigma.getEntry(k) * deviation;
            fitted.add(new FittedSize(size, value, value - band, value + band, moved, sigma.getEntry(k)));
        }
        double chiSquare = 0;
        for (int i = 0; i < m; i++) {
            chiSquare += Math.pow(least.getResiduals().getEntry(i), 2);
        }
        fitted.sort(Comparator.comparingDouble((FittedSize size) -> -Math.abs(size.moved())));
        return new FitsTogether(fitted, chiSquare, true);
    }

    /** Deviation of each reading on a unit of known sizes: gauge, and what is set on the test. */
    private static RealVector spread(Expectation sound, List<GaugeReading> readings) {
        RealVector spread = new ArrayRealVector(readings.size());
        for (int i = 0; i < readings.size(); i++) {
            spread.setEntry(
                    i,
                    Math.hypot(
                            readings.get(i).deviation(),
                            Math.sqrt(sound.covariance().getEntry(i, i))));
        }
        return spread;
    }

    /** Sizes of a build that are searched, and the deviation of each. */
    private record Searched(Adjustable build, List<WearSize> sizes, Map<String, Double> wide) {}

    private static Expectation.Slopes at(GaugeModel meters, Series series, Searched searched, RealVector point) {
        Map<String, Double> wide = searched.wide();
        Map<String, Double> values = new HashMap<>();
        for (int k = 0; k < searched.sizes().size(); k++) {
            WearSize size = searched.sizes().get(k);
            values.put(size.name(), size.value() + wide.get(size.name()) * point.getEntry(k));
        }
        Adjustable there;
        try {
            there = new Tolerances.Twin(searched.build(), values, Map.of(), 1).adjustable();
        } catch (IllegalArgumentException impossible) {
            throw new NoStateException();
        }
        Map<String, Double> small = new HashMap<>();
        wide.forEach((name, deviation) -> small.put(name, STEP * deviation));
        List<Tolerances.Shift> shifts = new Tolerances(there, small)
                .shifts()
                .subList(0, searched.sizes().size());
        Expectation.Slopes slopes = meters.slopes(series, there.unit(), shifts).orElseThrow(NoStateException::new);
        return new Expectation.Slopes(slopes.mean(), slopes.slopes().scalarMultiply(1 / STEP));
    }
}
