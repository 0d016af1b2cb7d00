package hotidle.plots;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/**
 * Draws a map: cells by colour and letter, the lines of no headroom and of narrow, named points, key.
 *
 * @param chart what to draw
 * @param scale of the picture
 */
record MapDrawing(MapChart chart, Axes scale) {

    private static final Font LETTER = Style.SMALL;
    private static final double PAD = 3;

    /** Behind the letter of a cell at which a limit is left out. */
    private static final String OPEN = "*";

    private static final double ROOM = 1.1;
    private static final double MARK = 6;
    private static final double NEAR = 16;
    private static final BasicStroke CASING = new BasicStroke(6, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    private static final BasicStroke ZERO = new BasicStroke(3.2f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    private static final BasicStroke CLOSE = new BasicStroke(1.6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    private static final BasicStroke EDGE = new BasicStroke(0.5f);
    private static final BasicStroke RING = new BasicStroke(2);

    void paint(Graphics2D g, Rectangle2D area) {
        Style.paint(g, area, drawn(), legend());
    }

    /** The chart without its legend. */
    JFreeChart drawn() {
        XYSeries points = new XYSeries(chart.title(), false);
        chart.marks().forEach(mark -> points.add(mark.x(), mark.y()));
        JFreeChart drawn = Style.chart(
                chart.title(),
                chart.subtitle(),
                new XYSeriesCollection(points),
                new XYLineAndShapeRenderer(false, false),
                scale,
                chart.axis());
        XYPlot plot = drawn.getXYPlot();
        plot.setDomainGridlinesVisible(false);
        plot.setRangeGridlinesVisible(false);
        plot.getDomainAxis().setLabel(chart.across());
        plot.getDomainAxis().setRange(scale.low(), scale.high());
        double top = scale.tops().get(chart.axis());
        NumberAxis upright = (NumberAxis) plot.getRangeAxis();
        upright.setRange(chart.bottom(), top);
        upright.setNumberFormatOverride(Style.format(top - chart.bottom()));
        plot.addAnnotation(new Field());
        return drawn;
    }

    /** Cells, lines and names, drawn when the axes are known. */
    private final class Field extends AbstractXYAnnotation {
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
            UnaryOperator<Point2D> pixel = point -> new Point2D.Double(
                    across.valueToJava2D(point.getX(), area, RectangleEdge.BOTTOM),
                    upright.valueToJava2D(point.getY(), area, RectangleEdge.LEFT));
            cells(g, pixel);
            List<Line2D> zero = lines(pixel, 0);
            lines(g, lines(pixel, chart.close()), CLOSE, Style.INK);
            lines(g, zero, CASING, Color.WHITE);
            lines(g, zero, ZERO, Color.BLACK);
            levels(g, pixel, area);
            marks(g, pixel, area, zero);
        }
    }

    private void cells(Graphics2D g, UnaryOperator<Point2D> pixel) {
        double[] x = MapChart.edges(chart.xs());
        double[] y = MapChart.edges(chart.ys());
        for (int row = 0; row < chart.ys().size(); row++) {
            for (int column = 0; column < chart.xs().size(); column++) {
                Point2D low = pixel.apply(new Point2D.Double(x[column], y[row]));
                Point2D high = pixel.apply(new Point2D.Double(x[column + 1], y[row + 1]));
                Rectangle2D box = new Rectangle2D.Double(
                        low.getX(), high.getY(), high.getX() - low.getX(), low.getY() - high.getY());
                cell(g, chart.cells().get(row).get(column), box);
            }
        }
    }

    private void cell(Graphics2D g, MapChart.Tile cell, Rectangle2D box) {
        ground(g, cell.headroom(), box);
        String letter = cell.known() ? cell.letter() + (cell.open() && !chart.openEverywhere() ? OPEN : "") : "?";
        FontMetrics font = g.getFontMetrics(LETTER);
        if (box.getHeight() > ROOM * font.getAscent() && box.getWidth() > ROOM * font.stringWidth(letter)) {
            g.setFont(LETTER);
            g.setPaint(Color.BLACK);
            g.drawString(letter, (float) (box.getCenterX() - font.stringWidth(letter) / 2.0), (float)
                    (box.getCenterY() + (font.getAscent() - font.getDescent()) / 2.0));
        }
    }

    private void ground(Graphics2D g, double headroom, Rectangle2D box) {
        g.setPaint(HeadroomShade.fill(headroom, chart.close()));
        g.fill(box);
        if (Double.isNaN(headroom) || headroom == Double.NEGATIVE_INFINITY) {
            java.awt.Shape before = g.getClip();
            g.clip(box);
            g.setPaint(Style.INK);
            (Double.isNaN(headroom) ? Hatch.CROSSED : Hatch.RISING).paint(g, box);
            g.setClip(before);
        }
        g.setPaint(Color.WHITE);
        g.setStroke(EDGE);
        g.draw(box);
    }

    private List<Line2D> lines(UnaryOperator<Point2D> pixel, double level) {
        List<List<Contour.Spot>> values = chart.cells().stream()
                .map(row -> row.stream()
                        .map(cell -> new Contour.Spot(cell.headroom(), cell.limits()))
                        .toList())
                .toList();
        return Contour.pieces(chart.xs(), chart.ys(), values, level).stream()
                .map(piece -> (Line2D) new Line2D.Double(pixel.apply(piece.getP1()), pixel.apply(piece.getP2())))
                .toList();
    }

    private static void lines(Graphics2D g, List<Line2D> lines, BasicStroke stroke, Color ink) {
        g.setStroke(stroke);
        g.setPaint(ink);
        lines.forEach(g::draw);
    }

    private void levels(Graphics2D g, UnaryOperator<Point2D> pixel, Rectangle2D area) {
        for (MapChart.LevelLine level : chart.levels()) {
            double y = pixel.apply(new Point2D.Double(scale.low(), level.y())).getY();
            if (y > area.getMinY() && y < area.getMaxY()) {
                g.setPaint(Style.INK);
                g.setStroke(Style.THIN_DASHED);
                g.draw(new Line2D.Double(area.getMinX(), y, area.getMaxX(), y));
                double width = g.getFontMetrics(Style.LABEL).stringWidth(level.name()) + 2 * PAD;
                text(g, level.name(), new Rectangle2D.Double(area.getMaxX() - width - PAD, y - 9, width, 18));
            }
        }
    }

    private void marks(Graphics2D g, UnaryOperator<Point2D> pixel, Rectangle2D area, List<Line2D> zero) {
        FontMetrics font = g.getFontMetrics(Style.LABEL);
        List<Placement.Wish> wishes = new ArrayList<>();
        for (MapChart.NamedPoint mark : chart.marks()) {
            wishes.add(new Placement.Wish(
                    pixel.apply(new Point2D.Double(mark.x(), mark.y())),
                    font.stringWidth(mark.name()) + 2 * PAD,
                    font.getAscent() + font.getDescent() + PAD,
                    false));
        }
        List<List<Line2D>> curves = zero.stream().map(List::of).toList();
        List<Rectangle2D> places = Placement.places(wishes, area, curves);
        for (int i = 0; i < places.size(); i++) {
            Line2D leader = Placement.leader(wishes.get(i), places.get(i));
            if (Placement.length(leader) > NEAR) {
                g.setPaint(Color.BLACK);
                g.setStroke(Style.HAIRLINE);
                g.draw(leader);
            }
        }
        for (int i = 0; i < places.size(); i++) {
            mark(g, wishes.get(i).point());
            text(g, chart.marks().get(i).name(), places.get(i));
        }
    }

    private static void mark(Graphics2D g, Point2D at) {
        Ellipse2D ring = new Ellipse2D.Double(at.getX() - MARK, at.getY() - MARK, 2 * MARK, 2 * MARK);
        g.setPaint(Color.WHITE);
        g.fill(ring);
        g.setPaint(Color.BLACK);
        g.setStroke(RING);
        g.draw(ring);
        g.fill(new Ellipse2D.Double(at.getX() - 2, at.getY() - 2, 4, 4));
    }

    private static void text(Graphics2D g, String text, Rectangle2D place) {
        g.setPaint(Style.PLATE);
        g.fill(place);
        g.setPaint(Color.BLACK);
        g.setFont(Style.LABEL);
        g.drawString(text, (float) (place.getMinX() + PAD), (float)
                (place.getMaxY() - PAD / 2 - g.getFontMetrics().getDescent()));
    }

    /** Colours that occur, the two lines, then the letters. */
    Legend legend() {
        List<Legend.KeySample> entries = new ArrayList<>();
        double low = Double.NEGATIVE_INFINITY;
        for (HeadroomShade shade : HeadroomShade.all(chart.close())) {
            double from = low;
            if (any(headroom -> headroom >= from && headroom < shade.below() && Double.isFinite(headroom))) {
                entries.add(new Legend.KeySample(
                        shade.text(), (g, box) -> ground(g, middle(from, shade.below()), box)));
            }
            low = shade.below();
        }
        if (any(headroom -> headroom == Double.NEGATIVE_INFINITY)) {
            entries.add(new Legend.KeySample(
                    "metal touches: fails, by how much is not known",
                    (g, box) -> ground(g, Double.NEGATIVE_INFINITY, box)));
        }
        if (any(headroom -> Double.isNaN(headroom))) {
            entries.add(
                    new Legend.KeySample("? not known: no steady state found", (g, box) -> ground(g, Double.NaN, box)));
        }
        entries.add(
                crossed(0)
                        ? new Legend.KeySample("no headroom left", (g, box) -> line(g, box, ZERO, Color.BLACK))
                        : new Legend.KeySample(noLine(), (g, box) -> {}));
        if (crossed(chart.close())) {
            entries.add(new Legend.KeySample(
                    Style.number(chart.close()) + " % headroom", (g, box) -> line(g, box, CLOSE, Style.INK)));
        }
        if (chart.openSomewhere()) {
            boolean all = chart.openEverywhere();
            entries.add(new Legend.KeySample(
                    "of some other limit it is not known" + (all ? " at any point" : " there")
                            + " whether it holds: left out",
                    (g, box) -> letter(g, box, all ? "" : OPEN)));
        }
        chart.key()
                .forEach((letter, meaning) ->
                        entries.add(new Legend.KeySample(meaning, (g, box) -> letter(g, box, letter))));
        return new Legend(entries);
    }

    private static void letter(Graphics2D g, Rectangle2D box, String letter) {
        g.setFont(Style.LABEL);
        g.setPaint(Color.BLACK);
        g.drawString(letter, (float) box.getCenterX() + 4, (float) box.getMaxY() - 1);
    }

    private boolean crossed(double level) {
        return !lines(point -> point, level).isEmpty();
    }

    private String noLine() {
        if (!any(headroom -> headroom >= 0)) {
            return any(headroom -> headroom < 0) ? "no line of no headroom: no point shown holds" : "nothing is known";
        }
        return any(headroom -> headroom < 0)
                ? "no line of no headroom: not enough points are known"
                : "no line of no headroom: no point shown fails";
    }

    private boolean any(java.util.function.DoublePredicate holds) {
        return chart.cells().stream()
                .flatMap(List::stream)
                .mapToDouble(MapChart.Tile::headroom)
                .anyMatch(holds);
    }

    private static double middle(double low, double high) {
        return Double.isInfinite(low) ? high - 1 : Double.isInfinite(high) ? low + 1 : (low + high) / 2;
    }

    private static void line(Graphics2D g, Rectangle2D box, BasicStroke stroke, Color ink) {
        g.setStroke(stroke);
        g.setPaint(ink);
        g.draw(new Line2D.Double(box.getMinX(), box.getCenterY(), box.getMaxX(), box.getCenterY()));
    }
}
