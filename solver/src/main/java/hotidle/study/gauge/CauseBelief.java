package hotidle.study.gauge;

/**
 * What readings say of the size of one cause, and of the cause itself.
 *
 * <pre>
 * Likelihood  ∫ p(w)·L(w) dw by the midpoint rule over the way w that is solved, L of {@link Misfit}, the curve straight between nodes
 * Prior       of a fault that has a degree p(w) = 2·(1 − w): small ones are more common than large ones (assumed); of others p = 1
 * Interval    5 % and 95 % of the same integral
 * </pre>
 *
 * @param logEvidence log of the likelihood of the readings given the cause
 * @param best        way at which p·L is largest
 * @param low         way below which lie 5 %
 * @param high        way above which lie 5 %
 * @param chiSquare   misfit at the best
 */
record CauseBelief(double logEvidence, double best, double low, double high, double chiSquare) {

    /** Steps of the integral (ours). */
    private static final int STEPS = 200;

    private static final double TAIL = 0.05;

    static CauseBelief of(CauseCurve curve, Misfit misfit) {
        double first = curve.nodes().firstKey();
        double last = curve.nodes().lastKey();
        boolean single = first == last;
        int steps = single ? 1 : STEPS;
        double width = single ? 1 : (last - first) / steps;
        double[] log = new double[steps];
        double[] chi = new double[steps];
        int top = 0;
        for (int i = 0; i < steps; i++) {
            double way = way(first, width, i, single);
            Misfit.ChiSquareFit fit = misfit.of(curve.at(way));
            log[i] = fit.logLikelihood() + Math.log(prior(curve, way, single) * width);
            chi[i] = fit.chiSquare();
            top = log[i] > log[top] ? i : top;
        }
        double sum = 0;
        for (double one : log) {
            sum += Math.exp(one - log[top]);
        }
        double low = first;
        double high = last;
        double before = 0;
        for (int i = 0; i < steps; i++) {
            double after = before + Math.exp(log[i] - log[top]) / sum;
            if (before < TAIL && after >= TAIL) {
                low = single ? first : first + width * (i + (TAIL - before) / (after - before));
            }
            if (before < 1 - TAIL && after >= 1 - TAIL) {
                high = single ? last : first + width * (i + (1 - TAIL - before) / (after - before));
            }
            before = after;
        }
        return new CauseBelief(log[top] + Math.log(sum), way(first, width, top, single), low, high, chi[top]);
    }

    private static double way(double first, double width, int i, boolean single) {
        return single ? first : first + width * (i + 0.5);
    }

    private static double prior(CauseCurve curve, double way, boolean single) {
        return single || !curve.fault().kind().graded() ? 1 : 2 * (1 - way);
    }

    /** A size drawn by the prior, as a share of the way, from an even number between 0 and 1. */
    static double drawn(boolean graded, double even) {
        return graded ? 1 - Math.sqrt(1 - even) : even;
    }
}
