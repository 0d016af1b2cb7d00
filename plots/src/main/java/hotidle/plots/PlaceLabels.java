package hotidle.plots;

import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleEdge;

/**
 * Places along the level axis: a dashed line up from the axis, at its top end the text, a row each. Rows step down to the right, so that
 * no text lies on the line of another; texts that would not fit to the right of their line stand left of it, above these. One that is
 * too long for both sides is broken to lines on the wider one.
 */
final class PlaceLabels extends AbstractXYAnnotation {
    private static final long serialVersionUID = 1L;

    /** Of a row, over the height of its letters. */
    private static final double STEP = 1.15;

    private static final double PAD = 5;

    private final transient List<LinesChart.AtPlace> places;

    /**
     * A text and its line.
     *
     * @param line  up to the row of the text
     * @param text  where it stands
     * @param words in lines
     */
    record Laid(LinesChart.AtPlace place, Line2D line, Rectangle2D text, List<String> words) {}

    PlaceLabels(List<LinesChart.AtPlace> places) {
        this.places = List.copyOf(places);
    }

    /** Share of the height to be left free above the curves for so many rows (ours). */
    static double room(int rows) {
        return 0.07 * rows;
    }

    @Override
    public void draw(
            Graphics2D g,
            XYPlot plot,
            Rectangle2D area,
            ValueAxis across,
            ValueAxis upright,
            int index,
            PlotRenderingInfo info) {
        FontMetrics font = g.getFontMetrics(Style.LABEL);
        for (Laid laid : laid(font, area, across)) {
            g.setPaint(Style.INK);
            g.setStroke(Style.THIN_DASHED);
            g.draw(laid.line());
            g.setFont(Style.LABEL);
            for (int i = 0; i < laid.words().size(); i++) {
                g.drawString(laid.words().get(i), (float) laid.text().getMinX(), (float)
                        (laid.text().getMinY() + font.getAscent() + i * STEP * height(font)));
            }
        }
    }

    /** Every text with its line, from the top row down. */
    List<Laid> laid(FontMetrics font, Rectangle2D area, ValueAxis across) {
        List<LinesChart.AtPlace> right = new ArrayList<>();
        List<LinesChart.AtPlace> left = new ArrayList<>();
        Map<LinesChart.AtPlace, Double> room = new HashMap<>();
        double free = area.getMaxX();
        for (LinesChart.AtPlace place : places.stream()
                .sorted(Comparator.comparingDouble(LinesChart.AtPlace::x).reversed())
                .toList()) {
            double width = font.stringWidth(place.text());
            double beside = free - x(across, area, place) - 2 * PAD;
            double before = x(across, area, place) - area.getMinX() - PAD;
            if (width < beside || (width > before && beside > before)) {
                room.put(place, beside);
                right.add(0, place);
            } else {
                room.put(place, before);
                left.add(place);
                free = x(across, area, place);
            }
        }
        List<Laid> all = new ArrayList<>();
        double down = 0;
        for (LinesChart.AtPlace place :
                Stream.concat(left.stream(), right.stream()).toList()) {
            List<String> words = Legend.broken(place.text(), font, room.get(place));
            all.add(laid(place, words, font, area, x(across, area, place), down, left.contains(place)));
            down += words.size() * STEP * height(font);
        }
        return all;
    }

    private static Laid laid(
            LinesChart.AtPlace place,
            List<String> words,
            FontMetrics font,
            Rectangle2D area,
            double x,
            double down,
            boolean left) {
        double top = area.getMinY() + PAD + down;
        double width = words.stream().mapToInt(font::stringWidth).max().orElse(0);
        double height = height(font) * (1 + (words.size() - 1) * STEP);
        double from = left ? Math.max(area.getMinX(), x - PAD - width) : x + PAD;
        return new Laid(
                place,
                new Line2D.Double(x, top, x, area.getMaxY()),
                new Rectangle2D.Double(from, top, width, height),
                words);
    }

    private static double height(FontMetrics font) {
        return font.getAscent() + font.getDescent();
    }

    private static double x(ValueAxis across, Rectangle2D area, LinesChart.AtPlace place) {
        return across.valueToJava2D(place.x(), area, RectangleEdge.BOTTOM);
    }
}
