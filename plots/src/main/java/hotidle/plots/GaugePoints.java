package hotidle.plots;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYErrorRenderer;
import org.jfree.data.xy.XYIntervalSeries;
import org.jfree.data.xy.XYIntervalSeriesCollection;

/** Readings over the curves of a chart against speed: points as high as the gauge may be off. */
final class GaugePoints {

    /** Data set of the plot that has them; those of {@link SpeedDrawing} stand before it. */
    static final int READ = 4;

    private static final String MEANS = "gauge reading, as high as the gauge may be off";
    private static final double DOT = 6;
    private static final double CAP = 5;
    private static final BasicStroke LINE = new BasicStroke(1.8f);

    private GaugePoints() {}

    static void add(XYPlot plot, List<GaugePoint> points) {
        if (points.isEmpty()) {
            return;
        }
        XYIntervalSeries series = new XYIntervalSeries(MEANS);
        points.forEach(point ->
                series.add(point.speed(), point.speed(), point.speed(), point.value(), point.low(), point.high()));
        XYIntervalSeriesCollection data = new XYIntervalSeriesCollection();
        data.addSeries(series);
        XYErrorRenderer renderer = new XYErrorRenderer();
        renderer.setDrawXError(false);
        renderer.setCapLength(2 * CAP);
        renderer.setErrorPaint(Color.BLACK);
        renderer.setErrorStroke(LINE);
        renderer.setSeriesPaint(0, Color.WHITE);
        renderer.setSeriesShape(0, diamond(0, 0));
        renderer.setDrawOutlines(true);
        renderer.setUseOutlinePaint(true);
        renderer.setSeriesOutlinePaint(0, Color.BLACK);
        renderer.setSeriesOutlineStroke(0, LINE);
        plot.setDataset(READ, data);
        plot.setRenderer(READ, renderer);
    }

    /** What they mean; nothing where there are none. */
    static List<Legend.KeySample> legend(List<GaugePoint> points) {
        return points.isEmpty() ? List.of() : List.of(new Legend.KeySample(MEANS, GaugePoints::sample));
    }

    /** No other mark on a curve has this shape. */
    private static Path2D diamond(double x, double y) {
        Path2D path = new Path2D.Double();
        path.moveTo(x - DOT, y);
        path.lineTo(x, y - DOT);
        path.lineTo(x + DOT, y);
        path.lineTo(x, y + DOT);
        path.closePath();
        return path;
    }

    private static void sample(Graphics2D g, Rectangle2D box) {
        double x = box.getCenterX();
        g.setPaint(Color.BLACK);
        g.setStroke(LINE);
        g.draw(new Line2D.Double(x, box.getMinY(), x, box.getMaxY()));
        g.draw(new Line2D.Double(x - CAP, box.getMinY(), x + CAP, box.getMinY()));
        g.draw(new Line2D.Double(x - CAP, box.getMaxY(), x + CAP, box.getMaxY()));
        Path2D dot = diamond(x, box.getCenterY());
        g.setPaint(Color.WHITE);
        g.fill(dot);
        g.setPaint(Color.BLACK);
        g.draw(dot);
    }
}
