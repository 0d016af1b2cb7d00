package hotidle.plots;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * The bands of an oil chart as shapes on the page, and where a text fits into them.
 *
 * @param chart the numbers
 * @param x     from speed [rpm] to the page [px]
 * @param y     from flow [display unit] to the page [px]
 */
record Stack(OilChart chart, DoubleUnaryOperator x, DoubleUnaryOperator y) {
    /** Half the width of a state that stands alone between gaps [px]. */
    private static final double ALONE = 2;

    private static final double STRIDE = 4;
    private static final double ROOMY = 3;
    private static final double CENTRED = 0.03;

    /**
     * A stretch of solved speeds.
     *
     * @param from first number
     * @param to   last number
     */
    private record Run(int from, int to) {}

    /** The band of this number; more than one shape where there are gaps. */
    List<Shape> shapes(int band) {
        return runs().stream().map(run -> shape(band, run)).toList();
    }

    /** The roomiest place for a text of this size [px] within the band of this number, near the middle; empty if none. */
    Optional<Rectangle2D> place(int band, double width, double height) {
        double[] xs = places(chart.speeds().size(), this::x);
        double[] upper = places(xs.length, i -> y(band, i));
        double[] lower = places(xs.length, i -> y(band - 1, i));
        double middle = (xs[0] + xs[xs.length - 1]) / 2;
        Rectangle2D best = null;
        double most = Double.NEGATIVE_INFINITY;
        for (Run run : runs()) {
            double first = xs[run.from()];
            double last = xs[run.to()];
            for (double left = first + STRIDE; left + width <= last - STRIDE; left += STRIDE) {
                double top = edge(xs, upper, run, left, width, true);
                double foot = edge(xs, lower, run, left, width, false);
                double merit = Math.min(foot - top, ROOMY * height) - CENTRED * Math.abs(left + width / 2 - middle);
                if (foot - top >= height && merit > most) {
                    most = merit;
                    best = new Rectangle2D.Double(left, (top + foot - height) / 2, width, height);
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** Each asked once: a place for a text is looked for at hundreds of stretches of the page. */
    private static double[] places(int count, IntToDoubleFunction place) {
        return IntStream.range(0, count).mapToDouble(place).toArray();
    }

    private List<Run> runs() {
        List<Run> runs = new ArrayList<>();
        int size = chart.speeds().size();
        for (int from = 0; from < size; from++) {
            int to = from;
            while (to < size && chart.solved(to)) {
                to++;
            }
            if (to > from) {
                runs.add(new Run(from, to - 1));
                from = to;
            }
        }
        return runs;
    }

    private Shape shape(int band, Run run) {
        double wide = run.from() == run.to() ? ALONE : 0;
        Path2D path = new Path2D.Double();
        path.moveTo(x(run.from()) - wide, y(band, run.from()));
        for (int i = run.from() + 1; i <= run.to(); i++) {
            path.lineTo(x(i), y(band, i));
        }
        path.lineTo(x(run.to()) + wide, y(band, run.to()));
        path.lineTo(x(run.to()) + wide, y(band - 1, run.to()));
        for (int i = run.to() - 1; i >= run.from(); i--) {
            path.lineTo(x(i), y(band - 1, i));
        }
        path.lineTo(x(run.from()) - wide, y(band - 1, run.from()));
        path.closePath();
        return path;
    }

    /** Lowest (or highest) place on the page of an edge of a band over a stretch of the page [px]. */
    private static double edge(double[] xs, double[] ys, Run run, double left, double width, boolean lowest) {
        double edge = lowest ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
        for (int i = run.from(); i <= run.to(); i++) {
            if (xs[i] > left && xs[i] < left + width) {
                edge = lowest ? Math.max(edge, ys[i]) : Math.min(edge, ys[i]);
            }
        }
        for (double end : new double[] {left, left + width}) {
            double there = between(xs, ys, run, end);
            edge = lowest ? Math.max(edge, there) : Math.min(edge, there);
        }
        return edge;
    }

    private static double between(double[] xs, double[] ys, Run run, double at) {
        int i = run.from() + 1;
        while (i < run.to() && xs[i] < at) {
            i++;
        }
        double share = (at - xs[i - 1]) / (xs[i] - xs[i - 1]);
        return ys[i - 1] + share * (ys[i] - ys[i - 1]);
    }

    private double x(int i) {
        return x.applyAsDouble(chart.speeds().get(i));
    }

    private double y(int band, int i) {
        return y.applyAsDouble(chart.top(band, i));
    }
}
