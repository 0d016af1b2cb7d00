package hotidle.plots;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/**
 * Draws a chart of rows.
 *
 * @param chart what to draw
 */
record RowsDrawing(RowsChart chart) {

    /** Of a bar, over the height of its row, and at most [px]. */
    private static final double THICK = 0.62;

    private static final double THICKEST = 24;
    private static final double DOT = 5;
    private static final double CAP = 5;
    private static final double HALF = 0.5;
    private static final BasicStroke WHISKER = new BasicStroke(2.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);
    private static final BasicStroke CASING = new BasicStroke(5, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);

    /** Share of a page that bars must have between names and texts (chosen). */
    private static final double BARS = 0.3;

    /** Whether texts have room beside the bars on a page so wide [px]; else the legend tells them. */
    boolean textsBeside(Graphics2D g, double width) {
        return widest(g, RowsChart.ChartRow::name) + widest(g, RowsChart.ChartRow::text) <= (1 - BARS) * width;
    }

    private double widest(Graphics2D g, Function<RowsChart.ChartRow, String> text) {
        FontMetrics font = g.getFontMetrics(Style.SMALL);
        return chart.rows().stream().map(text).mapToInt(font::stringWidth).max().orElse(0);
    }

    /** The chart without its legend. */
    JFreeChart drawn(boolean textsBeside) {
        JFreeChart drawn = Style.chart(
                chart.title(),
                chart.subtitle(),
                marks(),
                new XYLineAndShapeRenderer(false, false),
                chart.scale(),
                chart.scale().tops().keySet().iterator().next());
        XYPlot plot = drawn.getXYPlot();
        NumberAxis across = (NumberAxis) plot.getDomainAxis();
        across.setLabel(chart.across());
        across.setNumberFormatOverride(Style.format(chart.high() - chart.low()));
        plot.setRangeGridlinesVisible(false);
        plot.setRangeAxis(0, names(RowsChart.ChartRow::name));
        if (textsBeside && chart.rows().stream().anyMatch(row -> !row.text().isEmpty())) {
            plot.setRangeAxis(1, names(RowsChart.ChartRow::text));
            plot.setRangeAxisLocation(1, AxisLocation.BOTTOM_OR_RIGHT);
        }
        plot.addAnnotation(new Bars(), false);
        return drawn;
    }

    private SymbolAxis names(Function<RowsChart.ChartRow, String> text) {
        SymbolAxis axis = new SymbolAxis("", chart.rows().stream().map(text).toArray(String[]::new));
        axis.setGridBandsVisible(false);
        axis.setInverted(true);
        axis.setRange(-HALF, Math.max(chart.rows().size(), RowsChart.LEAST_ROWS) - HALF);
        axis.setTickLabelFont(Style.SMALL);
        axis.setTickLabelPaint(Color.BLACK);
        axis.setTickMarksVisible(false);
        axis.setAxisLinePaint(Style.INK);
        return axis;
    }

    /** A point a mark, by row; rows without one have none. */
    private XYSeriesCollection marks() {
        XYSeries series = new XYSeries(chart.mark(), false);
        for (int i = 0; i < chart.rows().size(); i++) {
            int row = i;
            chart.rows().get(i).mark().ifPresent(mark -> series.add(mark.at(), row));
        }
        return new XYSeriesCollection(series);
    }

    /** Looks in the order of the key, then the mark, then the place; then what has no room beside the bars. */
    Legend legend(boolean textsBeside) {
        List<Legend.KeySample> entries = new ArrayList<>();
        chart.key().forEach((look, text) -> entries.add(new Legend.KeySample(text, look::paint)));
        if (!chart.mark().isEmpty()) {
            entries.add(new Legend.KeySample(
                    chart.mark(),
                    (g, box) -> dot(g, box.getCenterX(), box.getCenterY(), box.getMinX(), box.getMaxX())));
        }
        chart.places()
                .ifPresent(place -> entries.add(new Legend.KeySample(place.text(), (g, box) -> {
                    g.setPaint(Style.INK);
                    g.setStroke(Style.THIN_DASHED);
                    g.draw(new Line2D.Double(box.getCenterX(), box.getMinY(), box.getCenterX(), box.getMaxY()));
                })));
        if (!textsBeside) {
            chart.rows().stream()
                    .filter(row -> !row.text().isEmpty())
                    .forEach(row -> entries.add(new Legend.KeySample(row.name() + ": " + row.text(), (g, box) -> {})));
        }
        return new Legend(entries);
    }

    /** Bars and marks, drawn when the axes are known. */
    private final class Bars extends AbstractXYAnnotation {
        private static final long serialVersionUID = 1L;

        @Override
        public void draw(
                Graphics2D g,
                XYPlot plot,
                Rectangle2D area,
                ValueAxis across,
                ValueAxis upright,
                int index,
                PlotRenderingInfo info) {
            double row = Math.abs(upright.valueToJava2D(1, area, RectangleEdge.LEFT)
                    - upright.valueToJava2D(0, area, RectangleEdge.LEFT));
            double thick = Math.min(THICK * row, THICKEST);
            for (int i = 0; i < chart.rows().size(); i++) {
                double y = upright.valueToJava2D(i, area, RectangleEdge.LEFT);
                for (RowsChart.RowPiece piece : chart.rows().get(i).pieces()) {
                    double from = x(across, area, piece.from());
                    double to = x(across, area, piece.to());
                    if (to > from) {
                        piece.look().paint(g, new Rectangle2D.Double(from, y - thick / 2, to - from, thick));
                    }
                }
            }
            chart.places().ifPresent(place -> place(g, x(across, area, place.at()), area));
            for (int i = 0; i < chart.rows().size(); i++) {
                double y = upright.valueToJava2D(i, area, RectangleEdge.LEFT);
                chart.rows().get(i).mark().ifPresent(mark -> mark(g, mark, y, across, area));
            }
        }

        /** Over the bars: how far they reach past it is what counts. */
        private void place(Graphics2D g, double x, Rectangle2D area) {
            g.setPaint(Style.INK);
            g.setStroke(Style.THIN_DASHED);
            g.draw(new Line2D.Double(x, area.getMinY(), x, area.getMaxY()));
        }

        private void mark(Graphics2D g, RowsChart.RowMark mark, double y, ValueAxis across, Rectangle2D area) {
            if (mark.at() > chart.high() || mark.at() < chart.low()) {
                arrow(g, x(across, area, mark.at()), y, mark.at() > chart.high() ? 1 : -1);
            } else {
                dot(g, x(across, area, mark.at()), y, x(across, area, mark.low()), x(across, area, mark.high()));
            }
        }

        private double x(ValueAxis across, Rectangle2D area, double value) {
            return across.valueToJava2D(
                    Math.max(chart.low(), Math.min(value, chart.high())), area, RectangleEdge.BOTTOM);
        }
    }

    private static void dot(Graphics2D g, double x, double y, double from, double to) {
        Path2D whiskers = new Path2D.Double();
        if (to - from > 2 * DOT) {
            whiskers.append(new Line2D.Double(from, y, to, y), false);
            whiskers.append(new Line2D.Double(from, y - CAP, from, y + CAP), false);
            whiskers.append(new Line2D.Double(to, y - CAP, to, y + CAP), false);
        }
        g.setPaint(Color.WHITE);
        g.setStroke(CASING);
        g.draw(whiskers);
        g.setPaint(Color.BLACK);
        g.setStroke(WHISKER);
        g.draw(whiskers);
        cased(g, new Ellipse2D.Double(x - DOT, y - DOT, 2 * DOT, 2 * DOT));
    }

    private static void arrow(Graphics2D g, double x, double y, int way) {
        Path2D head = new Path2D.Double();
        head.moveTo(0, 0);
        head.lineTo(-way * 2 * DOT, -DOT);
        head.lineTo(-way * 2 * DOT, DOT);
        head.closePath();
        cased(g, AffineTransform.getTranslateInstance(x, y).createTransformedShape(head));
    }

    /** Black with a white edge, so that it is seen on any bar. */
    private static void cased(Graphics2D g, Shape shape) {
        g.setPaint(Color.BLACK);
        g.fill(shape);
        g.setPaint(Color.WHITE);
        g.setStroke(Style.HAIRLINE);
        g.draw(shape);
    }
}
