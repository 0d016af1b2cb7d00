package hotidle.plots;

import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.io.Serial;
import java.util.List;
import java.util.Optional;
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
        stack(area, speed, flow).shapes(band).forEach(shape -> look.paint(g, shape));
        place(g, area, speed, flow, band).ifPresent(place -> {
            g.setPaint(look.fill());
            g.fill(place);
            g.setPaint(look.text());
            g.setFont(NAME);
            g.drawString(chart.bands().get(band).name(), (float) (place.getMinX() + PAD), (float)
                    (place.getMaxY() - PAD / 2 - g.getFontMetrics().getDescent()));
        });
    }

    /** Where the name of a band fits into it. */
    Optional<Rectangle2D> place(Graphics2D g, Rectangle2D area, ValueAxis speed, ValueAxis flow, int band) {
        FontMetrics font = g.getFontMetrics(NAME);
        return stack(area, speed, flow)
                .place(
                        band,
                        font.stringWidth(chart.bands().get(band).name()) + 2 * PAD,
                        font.getAscent() + font.getDescent() + PAD);
    }

    private Stack stack(Rectangle2D area, ValueAxis speed, ValueAxis flow) {
        return new Stack(
                chart,
                value -> speed.valueToJava2D(value, area, RectangleEdge.BOTTOM),
                value -> flow.valueToJava2D(value, area, RectangleEdge.LEFT));
    }
}
