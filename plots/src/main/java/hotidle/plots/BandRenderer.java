package hotidle.plots;

import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.io.Serial;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CrosshairState;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.AbstractXYItemRenderer;
import org.jfree.chart.renderer.xy.XYItemRendererState;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.data.xy.XYDataset;

/** Draws each band whole when its first item comes up, with its name where that fits. */
final class BandRenderer extends AbstractXYItemRenderer {
    @Serial
    private static final long serialVersionUID = 1L;

    private static final Font NAME = Style.LABEL;
    private static final double PAD = 3;

    private final transient OilChart chart;
    private final transient List<BandLook> looks;

    BandRenderer(OilChart chart, List<BandLook> looks) {
        this.chart = chart;
        this.looks = looks;
    }

    @Override
    public void drawItem(
            Graphics2D g,
            XYItemRendererState state,
            Rectangle2D area,
            PlotRenderingInfo info,
            XYPlot plot,
            ValueAxis speed,
            ValueAxis flow,
            XYDataset data,
            int band,
            int item,
            CrosshairState crosshair,
            int pass) {
        if (item > 0) {
            return;
        }
        BandLook look = looks.get(band);
        stack(area, speed, value -> y(area, flow, value)).shapes(band).forEach(shape -> look.paint(g, shape));
        place(g, area, speed, flow, band).ifPresent(place -> {
            g.setPaint(look.fill());
            g.fill(place);
            g.setPaint(look.text());
            g.setFont(NAME);
            FontMetrics font = g.getFontMetrics();
            List<String> told = told(band, flow);
            for (int i = 0; i < told.size(); i++) {
                int below = told.size() - 1 - i;
                g.drawString(told.get(i), (float) (place.getMinX() + PAD), (float)
                        (place.getMaxY() - PAD / 2 - font.getDescent() - below * height(font)));
            }
        });
    }

    private List<String> told(int band, ValueAxis flow) {
        return chart.told(band, flow.getUpperBound());
    }

    private static int height(FontMetrics font) {
        return font.getAscent() + font.getDescent();
    }

    /** Where what is told of a band fits into it, within the area. */
    Optional<Rectangle2D> place(Graphics2D g, Rectangle2D area, ValueAxis speed, ValueAxis flow, int band) {
        FontMetrics font = g.getFontMetrics(NAME);
        List<String> told = told(band, flow);
        Stack within = stack(area, speed, value -> Math.max(area.getMinY(), y(area, flow, value)));
        return within.place(
                band,
                told.stream().mapToInt(font::stringWidth).max().orElse(0) + 2 * PAD,
                told.size() * height(font) + PAD);
    }

    private Stack stack(Rectangle2D area, ValueAxis speed, DoubleUnaryOperator y) {
        return new Stack(chart, value -> speed.valueToJava2D(value, area, RectangleEdge.BOTTOM), y);
    }

    private static double y(Rectangle2D area, ValueAxis flow, double value) {
        return flow.valueToJava2D(value, area, RectangleEdge.LEFT);
    }
}
