package hotidle.plots;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

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
        Rectangle2D best = null;
        double most = Double.NEGATIVE_INFINITY;
        for (Run run : runs()) {
            double first = x(run.from());
            double last = x(run.to());
            for (double left = first + STRIDE; left + width <= last - STRIDE; left += STRIDE) {
                double upper = edge(band, run, left, width, true);
                double lower = edge(band - 1, run, left, width, false);
                double off =
                        Math.abs(left + width / 2 - (x(0) + x(chart.speeds().size() - 1)) / 2);
                double merit = Math.min(lower - upper, ROOMY * height) - CENTRED * off;
                if (lower - upper >= height && merit > most) {
                    most = merit;
                    best = new Rectangle2D.Double(left, (upper + lower - height) / 2, width, height);
                }
            }
        }
        return Optional.ofNullable(best);
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

    /** Lowest (or highest) place on the page of the top of a band over a stretch of the page [px]. */
    private double edge(int band, Run run, double left, double width, boolean lowest) {
        double edge = lowest ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
        for (int i = run.from(); i <= run.to(); i++) {
            if (x(i) > left && x(i) < left + width) {
                edge = lowest ? Math.max(edge, y(band, i)) : Math.min(edge, y(band, i));
            }
        }
        for (double end : new double[] {left, left + width}) {
            double there = between(band, run, end);
            edge = lowest ? Math.max(edge, there) : Math.min(edge, there);
        }
        return edge;
    }

    private double between(int band, Run run, double at) {
        int i = run.from() + 1;
        while (i < run.to() && x(i) < at) {
            i++;
        }
        double share = (at - x(i - 1)) / (x(i) - x(i - 1));
        return y(band, i - 1) + share * (y(band, i) - y(band, i - 1));
    }

    private double x(int i) {
        return x.applyAsDouble(chart.speeds().get(i));
    }

    private double y(int band, int i) {
        return y.applyAsDouble(chart.top(band, i));
    }
}
