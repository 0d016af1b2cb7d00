package hotidle.plots;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Map;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/**
 * One number against another, as one line.
 *
 * @param title    of the chart
 * @param subtitle what stays the same; may be empty
 * @param across   title of the level axis, with its unit
 * @param axis     title of the upright axis, with its unit
 * @param missing  what a gap in the line means
 * @param points   with rising x
 */
public record LineChart(String title, String subtitle, String across, String axis, String missing, List<Point> points)
        implements Chart {

    private static final double ROOM = 0.06;

    /**
     * A point.
     *
     * @param x on the level axis
     * @param y on the upright axis, NaN where it is not known
     */
    public record Point(double x, double y) {}

    /** Checks that the points make a line. */
    public LineChart {
        points = List.copyOf(points);
        Require.that(points.size() >= 2, "a line chart has " + points.size() + " points; it needs at least 2");
        for (int i = 1; i < points.size(); i++) {
            Require.that(
                    points.get(i).x() > points.get(i - 1).x(), "the points of a line chart must rise along its axis");
        }
        Require.that(
                points.stream().anyMatch(point -> Double.isFinite(point.y())), "a line chart has no point to show");
    }

    @Override
    public Axes scale() {
        double top = points.stream()
                .mapToDouble(Point::y)
                .filter(Double::isFinite)
                .max()
                .orElseThrow();
        return new Axes(
                points.get(0).x(),
                points.get(points.size() - 1).x(),
                Map.of(axis, top > 0 ? top * (1 + ROOM) : Math.max(-bottom() * ROOM, Double.MIN_NORMAL)),
                List.of(),
                false);
    }

    /** The least value, or zero where all are above. */
    private double bottom() {
        return points.stream().mapToDouble(Point::y).filter(Double::isFinite).reduce(0, Math::min);
    }

    @Override
    public void paint(Graphics2D graphics, Rectangle2D area, Axes scale) {
        long gaps = points.stream().filter(point -> Double.isNaN(point.y())).count();
        Legend legend = gaps == 0
                ? new Legend(List.of())
                : new Legend(List.of(new Legend.KeySample(
                        missing + " at " + gaps + " of " + points.size() + " points (gap)", (g, box) -> {})));
        Style.paint(graphics, area, drawn(scale), legend);
    }

    /** The chart without its legend. */
    JFreeChart drawn(Axes scale) {
        XYSeries series = new XYSeries(axis, false);
        points.forEach(point -> series.add(point.x(), point.y()));
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        renderer.setSeriesPaint(0, Palette.BLUE);
        renderer.setSeriesStroke(0, new BasicStroke(2.4f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
        JFreeChart chart = Style.chart(title, subtitle, new XYSeriesCollection(series), renderer, scale, axis);
        NumberAxis level = (NumberAxis) chart.getXYPlot().getDomainAxis();
        level.setLabel(across);
        level.setNumberFormatOverride(Style.format(scale.high() - scale.low()));
        NumberAxis upright = (NumberAxis) chart.getXYPlot().getRangeAxis();
        double top = scale.tops().get(axis);
        double bottom = bottom() * (1 + ROOM);
        upright.setRange(bottom, top);
        upright.setNumberFormatOverride(Style.format(top - bottom));
        return chart;
    }
}
