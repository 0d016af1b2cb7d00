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
import java.util.stream.IntStream;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.data.xy.IntervalXYDataset;
import org.jfree.data.xy.XYDataset;

/** Short texts beside points, placed by {@link Placement}. */
final class Callouts extends AbstractXYAnnotation {
    private static final double PAD = 3;
    private static final double NEAR = 16;
    private static final double TICK = 12;
    private static final double DOT = 4;

    /** Along a leader, what is still at its own point [px]. */
    private static final double OWN = 16;

    /** A longer leader is not followed by an eye (chosen) [px]. */
    private static final double FAR = 110;

    /** Heavier than the grid, so that it is seen whose text it is (chosen). */
    private static final BasicStroke LEADER = new BasicStroke(1.2f);

    private final transient List<Callout> callouts;
    private final transient List<Double> uprights;
    private transient Legend told = new Legend(List.of());

    /**
     * A text beside a point or along a level line that ends there.
     *
     * @param text  as it is to be read
     * @param ink   its colour
     * @param speed of the point [rpm]
     * @param value of the point [display unit]
     * @param level whether it may move along the level to the left of the point
     */
    record Callout(String text, Color ink, double speed, double value, boolean level) {
        static Callout beside(String text, Color ink, double speed, double value) {
            return new Callout(text, ink, speed, value, false);
        }

        static Callout along(String text, Color ink, double speed, double value) {
            return new Callout(text, ink, speed, value, true);
        }
    }

    Callouts(List<Callout> callouts) {
        this(callouts, List.of());
    }

    /** The same, off upright lines at some speeds. */
    Callouts(List<Callout> callouts, List<Double> uprights) {
        this.callouts = List.copyOf(callouts);
        this.uprights = List.copyOf(uprights);
    }

    /**
     * Texts with the places that they find in an area.
     *
     * @param curves pieces of curves and marks
     * @param limits on which no text may lie either, but across which a leader is followed
     */
    private record Placed(
            List<Placement.Wish> wishes,
            List<Rectangle2D> places,
            Rectangle2D area,
            List<Line2D> curves,
            List<Line2D> limits) {

        /** Whether it lies on nothing else, and whose it is can be seen. */
        boolean readable(int text) {
            Rectangle2D place = places.get(text);
            return area.contains(place)
                    && !Placement.covers(places, text)
                    && curves.stream().noneMatch(place::intersectsLine)
                    && limits.stream().noneMatch(place::intersectsLine)
                    && (wishes.get(text).level() || led(Placement.leader(wishes.get(text), place)));
        }

        /** A leader that is short, or at least crosses no curve once it has left its own. */
        private boolean led(Line2D leader) {
            double length = Placement.length(leader);
            double share = OWN / length;
            return length <= OWN
                    || (length <= FAR
                            && curves.stream()
                                    .noneMatch(new Line2D.Double(
                                            leader.getX1() + share * (leader.getX2() - leader.getX1()),
                                            leader.getY1() + share * (leader.getY2() - leader.getY1()),
                                            leader.getX2(),
                                            leader.getY2())::intersectsLine));
        }
    }

    /** What finds no room in an area, for the legend to tell. */
    List<Legend.KeySample> withoutRoom(Graphics2D g, XYPlot plot, Rectangle2D area) {
        Placed placed = placed(g, plot, area, plot.getDomainAxis(), plot.getRangeAxis());
        return IntStream.range(0, callouts.size())
                .filter(i -> !placed.readable(i))
                .mapToObj(i -> sample(callouts.get(i)))
                .toList();
    }

    private static Legend.KeySample sample(Callout callout) {
        return new Legend.KeySample(callout.text(), (g, box) -> {
            g.setPaint(callout.ink());
            if (callout.level()) {
                g.setStroke(Style.THIN_DASHED);
                g.draw(new Line2D.Double(box.getMinX(), box.getCenterY(), box.getMaxX(), box.getCenterY()));
            } else {
                g.fill(new Ellipse2D.Double(box.getCenterX() - DOT, box.getCenterY() - DOT, 2 * DOT, 2 * DOT));
            }
        });
    }

    /** Draws no text that a legend tells. */
    void leave(Legend legend) {
        told = legend;
    }

    /** The texts by themselves. */
    List<String> texts() {
        return callouts.stream().map(Callout::text).toList();
    }

    @Override
    public void draw(
            Graphics2D g,
            XYPlot plot,
            Rectangle2D area,
            ValueAxis speed,
            ValueAxis value,
            int index,
            PlotRenderingInfo info) {
        Placed placed = placed(g, plot, area, speed, value);
        List<Integer> readable = IntStream.range(0, callouts.size())
                .filter(i -> placed.readable(i) && !told.tells(List.of(sample(callouts.get(i)))))
                .boxed()
                .toList();
        readable.forEach(i ->
                lead(g, callouts.get(i), placed.wishes().get(i), placed.places().get(i)));
        readable.forEach(i -> write(g, callouts.get(i), placed.places().get(i)));
    }

    private Placed placed(Graphics2D g, XYPlot plot, Rectangle2D area, ValueAxis speed, ValueAxis value) {
        FontMetrics font = g.getFontMetrics(Style.LABEL);
        List<Placement.Wish> wishes = callouts.stream()
                .map(callout -> new Placement.Wish(
                        pixel(callout.speed(), callout.value(), area, speed, value),
                        font.stringWidth(callout.text()) + 2 * PAD,
                        font.getAscent() + font.getDescent() + PAD,
                        callout.level()))
                .toList();
        List<Line2D> limits = callouts.stream()
                .filter(Callout::level)
                .map(callout -> pixel(callout.speed(), callout.value(), area, speed, value)
                        .getY())
                .map(y -> (Line2D) new Line2D.Double(area.getMinX(), y, area.getMaxX(), y))
                .toList();
        List<List<Line2D>> curves = curves(plot, area, speed, value);
        uprights.forEach(upright -> {
            double x = speed.valueToJava2D(upright, area, RectangleEdge.BOTTOM);
            curves.add(List.of(new Line2D.Double(x, area.getMinY(), x, area.getMaxY())));
        });
        List<Rectangle2D> places = Placement.places(wishes, area, curves, limits);
        return new Placed(
                wishes, places, area, curves.stream().flatMap(List::stream).toList(), limits);
    }

    /** The pieces of all curves, the ticks on them, the crosses below and the readings of gauges. */
    private static List<List<Line2D>> curves(XYPlot plot, Rectangle2D area, ValueAxis speed, ValueAxis value) {
        List<List<Line2D>> curves = new ArrayList<>();
        XYDataset data = plot.getDataset();
        for (int s = 0; s < data.getSeriesCount(); s++) {
            List<Line2D> pieces = new ArrayList<>();
            for (int i = 1; i < data.getItemCount(s); i++) {
                Point2D a = pixel(data.getXValue(s, i - 1), data.getYValue(s, i - 1), area, speed, value);
                Point2D b = pixel(data.getXValue(s, i), data.getYValue(s, i), area, speed, value);
                if (!Double.isNaN(a.getY() + b.getY())) {
                    pieces.add(new Line2D.Double(a, b));
                }
            }
            curves.add(pieces);
        }
        for (int marks : new int[] {SpeedDrawing.UNLOADS, SpeedDrawing.UNSOLVED}) {
            XYDataset ticks = plot.getDataset(marks);
            for (int s = 0; s < ticks.getSeriesCount(); s++) {
                for (int i = 0; i < ticks.getItemCount(s); i++) {
                    Point2D at = pixel(ticks.getXValue(s, i), ticks.getYValue(s, i), area, speed, value);
                    curves.add(List.of(new Line2D.Double(at.getX(), at.getY() - TICK, at.getX(), at.getY() + TICK)));
                }
            }
        }
        if (plot.getDataset(GaugePoints.READ) instanceof IntervalXYDataset read) {
            for (int i = 0; i < read.getItemCount(0); i++) {
                Point2D low = pixel(read.getXValue(0, i), read.getStartYValue(0, i), area, speed, value);
                Point2D high = pixel(read.getXValue(0, i), read.getEndYValue(0, i), area, speed, value);
                curves.add(List.of(new Line2D.Double(low.getX(), low.getY() + TICK, high.getX(), high.getY() - TICK)));
            }
        }
        return curves;
    }

    private static void lead(Graphics2D g, Callout callout, Placement.Wish wish, Rectangle2D place) {
        Line2D leader = Placement.leader(wish, place);
        if (!wish.level() && Placement.length(leader) > NEAR) {
            g.setPaint(callout.ink());
            g.setStroke(LEADER);
            g.draw(leader);
        }
    }

    private static void write(Graphics2D g, Callout callout, Rectangle2D place) {
        g.setPaint(Style.PLATE);
        g.fill(place);
        g.setPaint(callout.ink());
        g.setFont(Style.LABEL);
        g.drawString(callout.text(), (float) (place.getMinX() + PAD), (float)
                (place.getMaxY() - PAD / 2 - g.getFontMetrics().getDescent()));
    }

    private static Point2D pixel(double x, double y, Rectangle2D area, ValueAxis speed, ValueAxis value) {
        return new Point2D.Double(
                speed.valueToJava2D(x, area, RectangleEdge.BOTTOM), value.valueToJava2D(y, area, RectangleEdge.LEFT));
    }
}
