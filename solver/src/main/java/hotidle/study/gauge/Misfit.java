package hotidle.study.gauge;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * Readings against what is expected.
 *
 * <pre>
 * Exact readings   χ² = rᵀ·C⁻¹·r, r reading less mean, C the covariance of the expectation with the gauges' own variances;
 *                  log likelihood −½·(χ² + log|C| + m·log 2π)
 * Below, above     log of the normal probability of what was seen, each by its own variance, as if independent of the others
 * Numerics         rows are scaled by the gauges' deviations, so that pressures and flows stand beside each other
 * </pre>
 */
final class Misfit {

    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);
    private static final double LEAST_PROBABILITY = 1e-300;

    /** Rounding by which a covariance may differ from its transpose, as a share [-]. */
    private static final double SYMMETRIC = 1e-9;

    private final List<GaugeReading> readings;
    private final List<Integer> exact = new ArrayList<>();

    Misfit(List<GaugeReading> readings) {
        this.readings = List.copyOf(readings);
        for (int i = 0; i < readings.size(); i++) {
            if (readings.get(i).sense() == GaugeReading.Sense.EXACT) {
                exact.add(i);
            }
        }
    }

    /** Readings that count in χ². */
    int degrees() {
        return exact.size();
    }

    /** Probability of a misfit at least as large by chance. */
    double chance(double chiSquare) {
        return chance(chiSquare, degrees());
    }

    /** The same of so many readings. */
    static double chance(double chiSquare, int degrees) {
        return degrees == 0 ? 1 : 1 - new ChiSquaredDistribution(null, degrees).cumulativeProbability(chiSquare);
    }

    /**
     * How well an expectation fits.
     *
     * @param chiSquare     of the exact readings [-]
     * @param logLikelihood of all readings
     */
    record ChiSquareFit(double chiSquare, double logLikelihood) {}

    ChiSquareFit of(Expectation expected) {
        int m = exact.size();
        double chiSquare = 0;
        double log = 0;
        if (m > 0) {
            CholeskyDecomposition factors = factors(scaled(
                    expected.covariance(),
                    exact.stream().mapToInt(Integer::intValue).toArray()));
            RealVector off = new ArrayRealVector(m);
            for (int k = 0; k < m; k++) {
                GaugeReading reading = readings.get(exact.get(k));
                off.setEntry(k, (reading.value() - expected.mean().getEntry(exact.get(k))) / reading.deviation());
            }
            chiSquare = off.dotProduct(factors.getSolver().solve(off));
            log = -0.5 * (chiSquare + Math.log(factors.getDeterminant()) + m * Math.log(2 * Math.PI));
        }
        for (int i = 0; i < readings.size(); i++) {
            if (readings.get(i).sense() != GaugeReading.Sense.EXACT) {
                log += Math.log(Math.max(seen(i, expected), LEAST_PROBABILITY));
            }
        }
        return new ChiSquareFit(chiSquare, log);
    }

    /** Probability of what was seen of a reading that is none of a value. */
    private double seen(int i, Expectation expected) {
        double above = off(i, expected);
        return NORMAL.cumulativeProbability(readings.get(i).sense() == GaugeReading.Sense.BELOW ? above : -above);
    }

    /** A reading less what is expected, in its own standard deviations [-]. */
    double off(int i, Expectation expected) {
        return (readings.get(i).value() - expected.mean().getEntry(i)) / deviation(i, expected);
    }

    /** Standard deviation of a reading about what is expected. */
    double deviation(int i, Expectation expected) {
        return Math.hypot(
                readings.get(i).deviation(), Math.sqrt(expected.covariance().getEntry(i, i)));
    }

    /** How far two expectations are from each other in all readings together, in standard deviations of the one [-]. */
    double distance(Expectation from, Expectation to) {
        RealVector off = to.mean().subtract(from.mean());
        for (int i = 0; i < readings.size(); i++) {
            off.setEntry(i, off.getEntry(i) / readings.get(i).deviation());
        }
        RealMatrix all =
                scaled(from.covariance(), IntStream.range(0, readings.size()).toArray());
        return Math.sqrt(off.dotProduct(factors(all).getSolver().solve(off)));
    }

    /** Values of all readings, those below or above a value with that value. */
    RealVector values() {
        return new ArrayRealVector(
                readings.stream().mapToDouble(GaugeReading::value).toArray());
    }

    /** Standard deviations of the gauges. */
    double[] deviations() {
        return readings.stream().mapToDouble(GaugeReading::deviation).toArray();
    }

    /** How differences of readings are counted in the deviations of an expectation. */
    Whitened whitened(Expectation expected) {
        RealMatrix all = expected.covariance().copy();
        for (int i = 0; i < readings.size(); i++) {
            all.addToEntry(i, i, Math.pow(readings.get(i).deviation(), 2));
        }
        return new Whitened(factors(all).getL());
    }

    private static CholeskyDecomposition factors(RealMatrix covariance) {
        return new CholeskyDecomposition(covariance, SYMMETRIC, 0);
    }

    /** The covariance of some readings with their gauges', in the gauges' deviations. */
    private RealMatrix scaled(RealMatrix covariance, int[] chosen) {
        RealMatrix own = covariance.getSubMatrix(chosen, chosen);
        for (int k = 0; k < chosen.length; k++) {
            for (int l = 0; l < chosen.length; l++) {
                own.multiplyEntry(
                        k,
                        l,
                        1
                                / (readings.get(chosen[k]).deviation()
                                        * readings.get(chosen[l]).deviation()));
            }
            own.addToEntry(k, k, 1);
        }
        return own;
    }
}
