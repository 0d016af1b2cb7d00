package hotidle.study.gauge;

import hotidle.fault.FaultKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What readings say of the size of one cause, and of the cause itself.
 *
 * <pre>
 * Likelihood  ∫ p(w)·L(w) dw by the midpoint rule over the way w that is solved, L of {@link Misfit} on the {@link CauseCurve}
 * Cells       first so narrow that the readings move by {@link #COARSE} of their deviations from one to the next, then, where anything
 *             speaks for them, by {@link #FINE}: where a small change of a size moves the readings far, as at a spool that sticks
 *             about its edge, the likelihood is that narrow
 * Prior       of a fault that has a degree p(w) = 2·(1 − w): small ones are more common than large ones (assumed); of others p = 1
 * Interval    5 % and 95 % of ∫ L(w) dw, all sizes as likely before: so that it holds nine in ten truths whatever their size; under
 *             the prior it would lie too low for the large ones, which are those that show
 * </pre>
 *
 * @param logEvidence log of the likelihood of the readings given the cause
 * @param best        way at which p·L is largest
 * @param low         lower end of the interval
 * @param high        upper end of it
 * @param chiSquare   misfit at the best
 */
record CauseBelief(double logEvidence, double best, double low, double high, double chiSquare) {

    /** What the readings move by from one cell to the next, before and after a second look (ours) [standard deviations]. */
    private static final double COARSE = 2;

    private static final double FINE = 0.4;

    /** Cells between two solved sizes at first, at least and at most (ours). */
    private static final int FEWEST = 6;

    private static final int MOST = 400;

    /** A cell whose likelihood is less than that of the likeliest by so many powers of e is not looked at again (ours). */
    private static final double UNLIKELY = 15;

    private static final double TAIL = 0.05;

    /**
     * A piece of the way.
     *
     * @param way    its middle
     * @param width  of it; 1 for a fault that is there or not
     * @param across what the readings move by over it [standard deviations]
     * @param fit    of its middle
     * @param prior  there
     */
    private record Cell(double way, double width, double across, Misfit.ChiSquareFit fit, double prior) {

        static Cell of(CauseCurve curve, Misfit misfit, double way, double width, double across) {
            Misfit.ChiSquareFit fit = misfit.of(curve.at(way));
            return new Cell(way, width, across, fit, density(curve, way));
        }

        /** Log of prior times likelihood. */
        double log() {
            return fit.logLikelihood() + Math.log(prior);
        }

        /** The same piece in as many as it takes. */
        Stream<Cell> split(CauseCurve curve, Misfit misfit) {
            int count = (int) Math.ceil(across / FINE);
            return count < 2 ? Stream.of(this) : pieces(curve, misfit, way - width / 2, way + width / 2, across, count);
        }
    }

    private static Stream<Cell> pieces(
            CauseCurve curve, Misfit misfit, double from, double to, double across, int count) {
        double width = (to - from) / count;
        return IntStream.range(0, count)
                .mapToObj(i -> Cell.of(curve, misfit, from + width * (i + 0.5), width, across / count));
    }

    static CauseBelief of(CauseCurve curve, Misfit misfit) {
        List<Cell> coarse = cells(curve, misfit);
        double likely = densest(coarse).log() - UNLIKELY;
        List<Cell> cells = coarse.stream()
                .flatMap(cell -> cell.log() < likely ? Stream.of(cell) : cell.split(curve, misfit))
                .toList();
        Cell best = densest(cells);
        double[] likelihood = cells.stream()
                .mapToDouble(cell -> cell.width()
                        * Math.exp(cell.fit().logLikelihood() - best.fit().logLikelihood()))
                .toArray();
        double evidence = IntStream.range(0, likelihood.length)
                .mapToDouble(i -> likelihood[i] * cells.get(i).prior())
                .sum();
        double sum = DoubleStream.of(likelihood).sum();
        return new CauseBelief(
                best.fit().logLikelihood() + Math.log(evidence),
                best.way(),
                below(cells, likelihood, TAIL * sum),
                below(cells, likelihood, (1 - TAIL) * sum),
                best.fit().chiSquare());
    }

    private static Cell densest(List<Cell> cells) {
        return cells.stream().max(Comparator.comparingDouble(Cell::log)).orElseThrow();
    }

    private static List<Cell> cells(CauseCurve curve, Misfit misfit) {
        List<Cell> cells = new ArrayList<>();
        Map.Entry<Double, Expectation> before = null;
        for (Map.Entry<Double, Expectation> node : curve.nodes().entrySet()) {
            if (before != null) {
                double across = Math.max(
                        misfit.distance(before.getValue(), node.getValue()),
                        misfit.distance(node.getValue(), before.getValue()));
                int count = (int) Math.min(Math.max(Math.ceil(across / COARSE), FEWEST), MOST);
                pieces(curve, misfit, before.getKey(), node.getKey(), across, count)
                        .forEach(cells::add);
            }
            before = node;
        }
        return cells.isEmpty() ? List.of(Cell.of(curve, misfit, curve.nodes().firstKey(), 1, 0)) : cells;
    }

    /** The way below which lies a sum of shares; each cell holds its own evenly. */
    private static double below(List<Cell> cells, double[] share, double sum) {
        if (cells.size() == 1) {
            return cells.get(0).way();
        }
        double before = 0;
        int i = 0;
        while (i < share.length - 1 && before + share[i] < sum) {
            before += share[i++];
        }
        Cell cell = cells.get(i);
        return cell.way() + cell.width() * (Math.min((sum - before) / share[i], 1) - 0.5);
    }

    private static double density(CauseCurve curve, double way) {
        return curve.nodes().size() == 1 ? 1 : density(curve.fault().kind(), way);
    }

    /** The prior of a size, by its way. */
    static double density(FaultKind kind, double way) {
        return kind.graded() ? 2 * (1 - way) : 1;
    }

    /** A size drawn by the prior, as a share of the way, from an even number between 0 and 1. */
    static double drawn(boolean graded, double even) {
        return graded ? 1 - Math.sqrt(1 - even) : even;
    }
}
