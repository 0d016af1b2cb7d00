package hotidle.plots;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
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

    private static final double PAD = 3;

    /** Behind the letter of a cell at which a limit is left out. */
    static final String OPEN = "*";

    private static final double MARK = 6;

    /** Round a mark, free of letters [px]. */
    private static final double FREE = MARK + 4;

    private static final double NEAR = 16;
    private static final BasicStroke CASING = new BasicStroke(6, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    static final BasicStroke ZERO = new BasicStroke(3.2f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    static final BasicStroke CLOSE = new BasicStroke(1.6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    private static final BasicStroke EDGE = new BasicStroke(0.5f);
    private static final BasicStroke RING = new BasicStroke(2);

    void paint(Graphics2D g, Rectangle2D area) {
        Style.paint(g, area, drawn(), new MapKey(chart).legend());
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
            List<Line2D> close = lines(pixel, chart.close());
            lines(g, close, CLOSE, Style.INK);
            lines(g, zero, CASING, Color.WHITE);
            lines(g, zero, ZERO, Color.BLACK);
            List<Line2D> limits = levels(pixel, area);
            g.setPaint(Style.INK);
            g.setStroke(Style.THIN_DASHED);
            limits.forEach(g::draw);
            Names names = names(g, pixel, area, zero, limits);
            letters(g, pixel, Stream.concat(zero.stream(), limits.stream()).toList(), close, names.taken());
            write(g, names);
        }
    }

    private void cells(Graphics2D g, UnaryOperator<Point2D> pixel) {
        each(pixel, (cell, box) -> ground(g, cell.headroom(), chart.close(), box));
    }

    /** Beside the lines; {@code heavy} are those that no letter may lie on. */
    private void letters(
            Graphics2D g,
            UnaryOperator<Point2D> pixel,
            List<Line2D> heavy,
            List<Line2D> close,
            List<Rectangle2D> taken) {
        MapLetters letters = new MapLetters(heavy, close, taken);
        each(pixel, (cell, box) -> {
            String open = cell.open() && !chart.openEverywhere() ? OPEN : "";
            letters.draw(g, cell.known() ? cell.letter() + open : "?", box);
        });
    }

    private void each(UnaryOperator<Point2D> pixel, BiConsumer<MapChart.Tile, Rectangle2D> drawn) {
        double[] x = MapChart.edges(chart.xs());
        double[] y = MapChart.edges(chart.ys());
        for (int row = 0; row < chart.ys().size(); row++) {
            for (int column = 0; column < chart.xs().size(); column++) {
                Point2D low = pixel.apply(new Point2D.Double(x[column], y[row]));
                Point2D high = pixel.apply(new Point2D.Double(x[column + 1], y[row + 1]));
                Rectangle2D box = new Rectangle2D.Double(
                        low.getX(), high.getY(), high.getX() - low.getX(), low.getY() - high.getY());
                drawn.accept(chart.cells().get(row).get(column), box);
            }
        }
    }

    /** The ground of a headroom [%]; hatched where it is not known, or not known by how much it fails. */
    static void ground(Graphics2D g, double headroom, double narrow, Rectangle2D box) {
        g.setPaint(HeadroomShade.fill(headroom, narrow));
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
        return lines(chart, pixel, level);
    }

    /** Where the headroom passes a level [%]. */
    static List<Line2D> lines(MapChart chart, UnaryOperator<Point2D> pixel, double level) {
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

    /** The level lines that lie in the field. */
    private List<Line2D> levels(UnaryOperator<Point2D> pixel, Rectangle2D area) {
        return inField(pixel, area).stream()
                .map(level -> y(pixel, level))
                .map(y -> (Line2D) new Line2D.Double(area.getMinX(), y, area.getMaxX(), y))
                .toList();
    }

    private List<MapChart.LevelLine> inField(UnaryOperator<Point2D> pixel, Rectangle2D area) {
        return chart.levels().stream()
                .filter(level -> y(pixel, level) > area.getMinY() && y(pixel, level) < area.getMaxY())
                .toList();
    }

    private double y(UnaryOperator<Point2D> pixel, MapChart.LevelLine level) {
        return pixel.apply(new Point2D.Double(scale.low(), level.y())).getY();
    }

    /**
     * Names and where they go: those of points first, then of level lines.
     *
     * @param points how many of them are of points
     */
    private record Names(List<String> texts, List<Placement.Wish> wishes, List<Rectangle2D> places, int points) {
        /** Where no letter stands: names and marks. */
        List<Rectangle2D> taken() {
            return Stream.concat(
                            places.stream(),
                            wishes.stream()
                                    .limit(points)
                                    .map(Placement.Wish::point)
                                    .map(at -> (Rectangle2D) new Rectangle2D.Double(
                                            at.getX() - FREE, at.getY() - FREE, 2 * FREE, 2 * FREE)))
                    .toList();
        }
    }

    /** None of them on a level line. */
    private Names names(
            Graphics2D g, UnaryOperator<Point2D> pixel, Rectangle2D area, List<Line2D> zero, List<Line2D> limits) {
        List<String> names = new ArrayList<>();
        List<Placement.Wish> wishes = new ArrayList<>();
        for (MapChart.NamedPoint mark : chart.marks()) {
            names.add(mark.name());
            wishes.add(wish(g, mark.name(), pixel.apply(new Point2D.Double(mark.x(), mark.y())), false));
        }
        for (MapChart.LevelLine level : inField(pixel, area)) {
            names.add(level.name());
            wishes.add(wish(g, level.name(), new Point2D.Double(area.getMaxX(), y(pixel, level)), true));
        }
        List<List<Line2D>> curves = zero.stream().map(List::of).toList();
        return new Names(
                names,
                wishes,
                Placement.places(wishes, area, curves, limits),
                chart.marks().size());
    }

    private static void write(Graphics2D g, Names names) {
        List<Placement.Wish> wishes = names.wishes();
        List<Rectangle2D> places = names.places();
        for (int i = 0; i < names.points(); i++) {
            Line2D leader = Placement.leader(wishes.get(i), places.get(i));
            if (Placement.length(leader) > NEAR) {
                g.setPaint(Color.BLACK);
                g.setStroke(Style.HAIRLINE);
                g.draw(leader);
            }
        }
        for (int i = 0; i < places.size(); i++) {
            if (i < names.points()) {
                mark(g, wishes.get(i).point());
            }
            text(g, names.texts().get(i), places.get(i));
        }
    }

    private static Placement.Wish wish(Graphics2D g, String name, Point2D at, boolean level) {
        FontMetrics font = g.getFontMetrics(Style.LABEL);
        return new Placement.Wish(
                at, font.stringWidth(name) + 2 * PAD, font.getAscent() + font.getDescent() + PAD, level);
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
}
