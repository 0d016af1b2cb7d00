package hotidle.study.gauge;

import hotidle.fault.UnitFault;
import java.util.ArrayList;
import java.util.List;

/**
 * A fault at many sizes, so near to each other that the readings move little from one to the next: by what factor each reading is
 * changed at each of them. Two faults change a reading by the product of both factors, which holds where each takes the same share of
 * whatever pressure is left, and is never below nil. Readings count from {@link #base} below nil on, so that one near nil has a factor.
 */
final class FaultSizes {

    /** What readings move by from one size to the next, at least (ours) [standard deviations]. */
    private static final double ACROSS = 1;

    /** Most sizes of a fault (ours). */
    private static final int MOST = 60;

    /** Sizes tried on either side of one (ours). */
    private static final int NEAR = 6;

    private final CauseCurve curve;
    private final String gallery;
    private final double[] sound;
    private final double[] bases;
    private final double[] ways;
    private final double[] weights;
    private final double[][] times;

    private FaultSizes(CauseCurve curve, String gallery, double[] sound, double[] bases, double[] ways) {
        this.curve = curve;
        this.gallery = gallery;
        this.sound = sound;
        this.bases = bases;
        this.ways = ways;
        weights = new double[ways.length];
        times = new double[ways.length][];
        for (int k = 0; k < ways.length; k++) {
            double low = k == 0 ? ways[k] : (ways[k - 1] + ways[k]) / 2;
            double high = k == ways.length - 1 ? ways[k] : (ways[k + 1] + ways[k]) / 2;
            weights[k] =
                    ways.length == 1 ? 1 : CauseBelief.density(curve.fault().kind(), ways[k]) * (high - low);
            times[k] = times(ways[k]);
        }
    }

    /** A fault over the sizes that were solved. */
    static FaultSizes of(CauseCurve curve, String gallery, Expectation sound, Misfit misfit) {
        List<Double> nodes = List.copyOf(curve.nodes().keySet());
        double[] apart = new double[nodes.size()];
        double all = 0;
        for (int k = 1; k < apart.length; k++) {
            apart[k] = misfit.whitened(sound)
                    .of(curve.nodes()
                            .get(nodes.get(k))
                            .mean()
                            .subtract(curve.nodes().get(nodes.get(k - 1)).mean()))
                    .getNorm();
            all += apart[k];
        }
        double step = Math.max(ACROSS, all / MOST);
        List<Double> ways = new ArrayList<>(nodes.subList(0, 1));
        for (int k = 1; k < apart.length; k++) {
            int count = (int) Math.max(1, Math.round(apart[k] / step));
            for (int i = 1; i <= count; i++) {
                ways.add(nodes.get(k - 1) + (nodes.get(k) - nodes.get(k - 1)) * i / count);
            }
        }
        return new FaultSizes(curve, gallery, sound.mean().toArray(), misfit.deviations(), array(ways));
    }

    private static double[] array(List<Double> ways) {
        return ways.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** The same about one of its sizes, nearer to each other. */
    FaultSizes about(int size) {
        double low = ways[Math.max(size - 1, 0)];
        double high = ways[Math.min(size + 1, ways.length - 1)];
        List<Double> near = new ArrayList<>();
        for (int i = -NEAR; i <= NEAR; i++) {
            near.add(i < 0 ? ways[size] + (low - ways[size]) * -i / NEAR : ways[size] + (high - ways[size]) * i / NEAR);
        }
        return new FaultSizes(
                curve, gallery, sound, bases, array(near.stream().distinct().toList()));
    }

    UnitFault fault() {
        return curve.fault();
    }

    String part() {
        return curve.fault().part();
    }

    /** {@link Galleries}. */
    String gallery() {
        return gallery;
    }

    int size() {
        return ways.length;
    }

    /** Share of the way at a size. */
    double way(int size) {
        return ways[size];
    }

    /** How much of the prior a size stands for. */
    double weight(int size) {
        return weights[size];
    }

    /** Factor of a reading at a size. */
    double times(int size, int reading) {
        return times[size][reading];
    }

    /** Factors of all readings at a share of the way. */
    double[] times(double way) {
        double[] mean = curve.mean(way).toArray();
        double[] factors = new double[mean.length];
        for (int i = 0; i < factors.length; i++) {
            factors[i] = Math.max(mean[i] + bases[i], LEAST * bases[i]) / (Math.abs(sound[i]) + bases[i]);
        }
        return factors;
    }

    /** A reading below nil counts as this share of {@link #base} (ours). */
    private static final double LEAST = 0.1;

    /** Factors where there is no fault. */
    double[] ones() {
        double[] ones = new double[sound.length];
        java.util.Arrays.fill(ones, 1);
        return ones;
    }

    /** From how far below nil a reading counts: the deviation of its gauge. */
    double base(int reading) {
        return bases[reading];
    }

    /** A reading changed by a factor. */
    static double joined(double reading, double base, double times) {
        return (Math.abs(reading) + base) * times - base;
    }
}
