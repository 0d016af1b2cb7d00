package hotidle.study.gauge;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.fault.FaultKind;
import hotidle.fault.UnitFault;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.TreeMap;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Three readings that a fault moves in proportion to its size w, between 0 and 1, with normal errors: what is believed of w after them
 * is known in closed form. With m = d·C⁻¹·y / d·C⁻¹·d and s² = 1 / d·C⁻¹·d it is normal about m, cut off at 0 and 1.
 */
class CauseBeliefTest {

    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);
    private static final RealVector SOUND = new ArrayRealVector(new double[] {10e5, 9e5, 4e5});
    private static final RealVector MOVES = new ArrayRealVector(new double[] {-2e5, -5e5, 1e5});
    private static final double GAUGE = 2e4;
    private static final RealMatrix UNIT =
            new Array2DRowRealMatrix(new double[][] {{9e8, 6e8, 0}, {6e8, 8e8, 1e8}, {0, 1e8, 5e8}});
    private static final TestPoint POINT =
            new TestPoint(10, 383.15, "first", OptionalDouble.empty(), OptionalDouble.empty());

    /** All that varies: the covariance of the unit and the gauges'. */
    private static RealMatrix whole() {
        RealMatrix whole = UNIT.copy();
        for (int i = 0; i < 3; i++) {
            whole.addToEntry(i, i, GAUGE * GAUGE);
        }
        return whole;
    }

    private static Expectation expected(double way, double strength) {
        return new Expectation(SOUND.add(MOVES.mapMultiply(strength * way)), UNIT);
    }

    private static CauseCurve curve(FaultKind kind, double strength) {
        TreeMap<Double, Expectation> nodes = new TreeMap<>();
        for (double way : new double[] {0, 0.1, 0.35, 0.5, 0.8, 1}) {
            nodes.put(way, expected(way, strength));
        }
        return new CauseCurve(new UnitFault(kind, "any", List.of(), 0, 1, (unit, size) -> unit), nodes);
    }

    private static Misfit read(RealVector values) {
        List<GaugeReading> readings = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            Meter meter = new Meter("tap" + i, "node" + i, Meter.Reads.PRESSURE);
            readings.add(new GaugeReading(meter, POINT, GaugeReading.Sense.EXACT, values.getEntry(i), GAUGE));
        }
        return new Misfit(readings);
    }

    private static RealVector drawn(double way, double strength, Random random) {
        RealVector z =
                new ArrayRealVector(new double[] {random.nextGaussian(), random.nextGaussian(), random.nextGaussian()});
        return expected(way, strength)
                .mean()
                .add(new CholeskyDecomposition(whole()).getL().operate(z));
    }

    /** What is known in closed form, where all sizes are as likely before. */
    private record Exact(double mean, double deviation, double logEvidence) {

        static Exact of(RealVector values, double strength) {
            var solver = new CholeskyDecomposition(whole()).getSolver();
            RealVector moves = MOVES.mapMultiply(strength);
            RealVector off = values.subtract(SOUND);
            double known = moves.dotProduct(solver.solve(moves));
            double mean = moves.dotProduct(solver.solve(off)) / known;
            double deviation = 1 / Math.sqrt(known);
            RealVector left = off.subtract(moves.mapMultiply(mean));
            double log = -0.5
                            * (left.dotProduct(solver.solve(left))
                                    + Math.log(new CholeskyDecomposition(whole()).getDeterminant())
                                    + 3 * Math.log(2 * Math.PI))
                    // a likelihood is counted in deviations of the gauges
                    + 3 * Math.log(GAUGE);
            double inside = NORMAL.cumulativeProbability((1 - mean) / deviation)
                    - NORMAL.cumulativeProbability(-mean / deviation);
            return new Exact(mean, deviation, log + Math.log(deviation * Math.sqrt(2 * Math.PI) * inside));
        }

        double quantile(double share) {
            double low = NORMAL.cumulativeProbability(-mean / deviation);
            double high = NORMAL.cumulativeProbability((1 - mean) / deviation);
            return mean + deviation * NORMAL.inverseCumulativeProbability(low + share * (high - low));
        }
    }

    /** From a fault that hardly shows to one of which a hundredth of its way is plain: the likelihood is as narrow as that. */
    @ParameterizedTest
    @CsvSource({"0.1, 0.3", "1, 0.02", "1, 0.4", "1, 0.97", "30, 0.617", "300, 0.2"})
    void intervalAndEvidenceAreThoseOfTheClosedForm(double strength, double way) {
        RealVector values = drawn(way, strength, new Random(5));
        Exact exact = Exact.of(values, strength);
        CauseBelief belief = CauseBelief.of(curve(FaultKind.VALVE_STUCK, strength), read(values));
        assertEquals(exact.logEvidence(), belief.logEvidence(), 0.02);
        double near = 0.04 * exact.deviation();
        assertEquals(exact.quantile(0.05), belief.low(), near);
        assertEquals(exact.quantile(0.95), belief.high(), near);
        assertEquals(Math.min(Math.max(exact.mean(), 0), 1), belief.best(), 0.5 * exact.deviation());
    }

    /**
     * Sizes drawn evenly, errors by their covariance: nine in ten intervals hold the size. Of 2000 draws the share lies within
     * 0.02 of that with a probability of 0.997, three standard deviations.
     */
    @ParameterizedTest
    @CsvSource({"VALVE_STUCK, 0.3", "VALVE_STUCK, 40", "SPRING_WEAK, 0.3", "SPRING_WEAK, 3", "SPRING_WEAK, 40"})
    void nineInTenIntervalsHoldTheSize(FaultKind kind, double strength) {
        Random random = new Random(17);
        CauseCurve curve = curve(kind, strength);
        int draws = 2000;
        int held = 0;
        for (int i = 0; i < draws; i++) {
            double way = random.nextDouble();
            CauseBelief belief = CauseBelief.of(curve, read(drawn(way, strength, random)));
            held += belief.low() <= way && way <= belief.high() ? 1 : 0;
        }
        assertEquals(0.9, (double) held / draws, 0.02);
    }

    @Test
    void aFaultThatIsThereOrNotHasTheLikelihoodOfItsReadings() {
        UnitFault ball = new UnitFault(FaultKind.CHECK_BALL_MISSING, "any", List.of(), 1, 1, (unit, size) -> unit);
        TreeMap<Double, Expectation> node = new TreeMap<>();
        node.put(1.0, expected(1, 1));
        Misfit misfit = read(expected(1, 1).mean());
        CauseBelief belief = CauseBelief.of(new CauseCurve(ball, node), misfit);
        assertEquals(misfit.of(expected(1, 1)).logLikelihood(), belief.logEvidence(), 1e-12);
        assertEquals(1, belief.low());
        assertEquals(1, belief.high());
        assertEquals(0, belief.chiSquare(), 1e-12);
    }

    /** Beside the corner where a regulator lets go the curve is off by less than a tenth of what the readings fall in the next gap. */
    @Test
    void betweenSolvedSizesTheReadingsAreOnACurveThatDoesNotSwing() {
        TreeMap<Double, Expectation> nodes = new TreeMap<>();
        for (double way : new double[] {0, 0.2, 0.35, 0.5, 0.65, 0.8, 1}) {
            nodes.put(way, expected(Math.max(way - 0.5, 0), 1));
        }
        CauseCurve curve =
                new CauseCurve(new UnitFault(FaultKind.BORE_WORN, "any", List.of(), 0, 5, (unit, size) -> unit), nodes);
        double near = 0.1 * 0.15 * Math.abs(MOVES.getEntry(1));
        for (double way = 0; way <= 1; way += 0.01) {
            double truth = expected(Math.max(way - 0.5, 0), 1).mean().getEntry(1);
            boolean corner = way > 0.35 && way < 0.65;
            assertEquals(truth, curve.at(way).mean().getEntry(1), corner ? near : 1e-6, "at " + way);
        }
    }
}
