package hotidle.plots;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** Patterns as lines, not textures, so that PNG and SVG show the same. */
enum Hatch {
    PLAIN,
    RISING,
    FALLING,
    UPRIGHT,
    PAIRS,
    CROSSED,
    DOTS;

    private static final double STEP = 8;
    private static final double ROW = 5;
    private static final double PAIR_STEP = 12;
    private static final double PAIR = 3.5;
    private static final BasicStroke LINE = new BasicStroke(1.3f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);
    private static final BasicStroke POINTS =
            new BasicStroke(2.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {2.2f, 5.8f}, 0);

    /** Covers the bounds with the pattern, anchored to the page so that neighbouring pieces meet. */
    void paint(Graphics2D g, Rectangle2D bounds) {
        Path2D path = new Path2D.Double();
        switch (this) {
            case PLAIN -> {
                return;
            }
            case RISING -> slanting(path, bounds, 1);
            case FALLING -> slanting(path, bounds, -1);
            case UPRIGHT -> upright(path, bounds, STEP, 0);
            case PAIRS -> {
                upright(path, bounds, PAIR_STEP, 0);
                upright(path, bounds, PAIR_STEP, PAIR);
            }
            case CROSSED -> {
                slanting(path, bounds, 1);
                slanting(path, bounds, -1);
            }
            case DOTS -> level(path, bounds);
        }
        g.setStroke(this == DOTS ? POINTS : LINE);
        g.draw(path);
    }

    /** Rows that stand close, so that a thin band holds at least one; the dots of every second are shifted. */
    private static void level(Path2D path, Rectangle2D b) {
        for (double y = first(b.getMinY(), ROW); y <= b.getMaxY(); y += ROW) {
            double shift = Math.round(y / ROW) % 2 * STEP / 2;
            line(path, first(b.getMinX(), STEP) - STEP - shift, y, b.getMaxX(), y);
        }
    }

    private static void upright(Path2D path, Rectangle2D b, double step, double shift) {
        for (double x = first(b.getMinX(), step) - step + shift; x <= b.getMaxX(); x += step) {
            line(path, x, b.getMinY(), x, b.getMaxY());
        }
    }

    /** Lines at 45 degrees; x + way·y is the same along each. */
    private static void slanting(Path2D path, Rectangle2D b, int way) {
        double one = b.getMinX() + way * b.getMinY();
        double two = b.getMaxX() + way * b.getMaxY();
        double three = b.getMinX() + way * b.getMaxY();
        double four = b.getMaxX() + way * b.getMinY();
        double least = Math.min(Math.min(one, two), Math.min(three, four));
        double most = Math.max(Math.max(one, two), Math.max(three, four));
        double step = STEP * Math.sqrt(2);
        for (double sum = Math.ceil(least / step) * step; sum <= most; sum += step) {
            line(path, sum - way * b.getMinY(), b.getMinY(), sum - way * b.getMaxY(), b.getMaxY());
        }
    }

    private static double first(double least, double step) {
        return Math.ceil(least / step) * step;
    }

    private static void line(Path2D path, double x1, double y1, double x2, double y2) {
        path.moveTo(x1, y1);
        path.lineTo(x2, y2);
    }
}
