package hotidle.plots;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.FontMetrics;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.junit.jupiter.api.Test;

class LinesChartTest {

    private static LinesChart.Line line(String name, double... values) {
        return new LinesChart.Line(
                name,
                name.equals("input-shaft") ? 1 : 0,
                java.util.stream.IntStream.range(0, values.length)
                        .mapToObj(i -> new LineChart.Point(100.0 * (i + 1), values[i]))
                        .toList());
    }

    /** Else a link would change its colour from one build to the next. */
    @Test
    void aLineKeepsItsLookInAChartThatLacksTheOneBeforeIt() {
        LinesChart.Line shaft =
                new LinesChart.Line("input-shaft", 1, BOTH.lines().get(1).points());
        XYPlot both = BOTH.drawn(BOTH.scale()).getXYPlot();
        LinesChart alone = chart(shaft);
        XYPlot plot = alone.drawn(alone.scale()).getXYPlot();
        assertEquals(both.getRenderer().getSeriesPaint(1), plot.getRenderer().getSeriesPaint(0));
        assertNotEquals(both.getRenderer().getSeriesPaint(0), plot.getRenderer().getSeriesPaint(0));
    }

    private static LinesChart chart(LinesChart.Line... lines) {
        return new LinesChart(
                "Torque held",
                "invented data",
                "set pressure [psi]",
                "engine torque [lbf.ft]",
                "not known",
                List.of(lines),
                Optional.of(new LinesChart.Marked(205, 600, "205 psi: input-shaft gives first")),
                List.of(new LinesChart.AtPlace(150, "set now")));
    }

    private static final LinesChart BOTH = chart(line("low-clutch", 300, 600, 900), line("input-shaft", 600, 600, 600));

    @Test
    void aLineAClutchAndALinkWithTheCrossingAndThePlacesAlongTheAxis() {
        String svg = new String(new Picture(List.of(BOTH)).bytes("x.svg"), StandardCharsets.UTF_8);
        for (String text : List.of(
                "Torque held",
                "set pressure [psi]",
                "engine torque [lbf.ft]",
                "low-clutch",
                "input-shaft",
                "205 psi: input-shaft gives first",
                "set now")) {
            assertTrue(svg.contains(text), text);
        }
        XYPlot plot = BOTH.drawn(BOTH.scale()).getXYPlot();
        assertEquals(900, plot.getDataset().getYValue(0, 2));
        assertEquals(205, plot.getDataset(SpeedDrawing.ONSETS).getXValue(0, 0));
    }

    /** Set pressures at which something fails, close together and near the right end: each text begins or ends at its own line. */
    @Test
    void eachTextOfAPlaceStandsAtItsOwnLineAndOnNoOther() {
        List<LinesChart.AtPlace> places = List.of(
                new LinesChart.AtPlace(307, "above 307 psi fails: lubrication (lube-output) at reverse-stall"),
                new LinesChart.AtPlace(150, "set now: 150 psi"),
                new LinesChart.AtPlace(268, "above 268 psi fails: relief valve (relief) at reverse-stall"),
                new LinesChart.AtPlace(390, "above 390 psi fails: hub film (hub) at stall"));
        NumberAxis across = new NumberAxis();
        across.setRange(60, 400);
        FontMetrics font = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB)
                .createGraphics()
                .getFontMetrics(Style.LABEL);
        Rectangle2D area = new Rectangle2D.Double(50, 20, 1100, 280);
        List<PlaceLabels.Laid> laid = new PlaceLabels(places).laid(font, area, across);
        assertEquals(4, laid.size());
        for (PlaceLabels.Laid one : laid) {
            double x = one.line().getX1();
            assertTrue(
                    Math.min(
                                    Math.abs(one.text().getMinX() - x),
                                    Math.abs(one.text().getMaxX() - x))
                            < 8,
                    one.place().text());
            assertTrue(area.contains(one.text()), one.place().text());
            for (PlaceLabels.Laid other : laid) {
                assertTrue(
                        one.equals(other) || !one.text().intersects(other.text()),
                        one.place().text());
                assertFalse(one.text().intersectsLine(other.line()), one.place().text() + " on " + other.place());
            }
        }
    }

    /** Too long for the room on either side of its line, it would run across it. */
    @Test
    void aLongTextInTheMiddleIsBrokenBesideItsLine() {
        List<LinesChart.AtPlace> places = List.of(
                new LinesChart.AtPlace(305, "above 305 psi fails: lubrication (lube-output) at reverse-stall"),
                new LinesChart.AtPlace(188, "above 188 psi fails: hub unit load (hub-bushing) at reverse-stall"),
                new LinesChart.AtPlace(150, "set now: 150 psi"));
        NumberAxis across = new NumberAxis();
        across.setRange(60, 400);
        FontMetrics font = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB)
                .createGraphics()
                .getFontMetrics(Style.LABEL);
        for (int width = 480; width <= 1200; width += 40) {
            Rectangle2D area = new Rectangle2D.Double(50, 20, width, 280);
            List<PlaceLabels.Laid> laid = new PlaceLabels(places).laid(font, area, across);
            for (PlaceLabels.Laid one : laid) {
                assertEquals(one.place().text(), String.join(" ", one.words()));
                assertTrue(area.contains(one.text()), one + " on " + width);
                for (PlaceLabels.Laid other : laid) {
                    assertFalse(one.text().intersectsLine(other.line()), one + " on " + other);
                    assertTrue(one.equals(other) || !one.text().intersects(other.text()), one + " on " + other);
                }
            }
        }
    }

    /** Their rows lie above all that the lines show. */
    @Test
    void roomIsLeftForThemAboveTheLines() {
        assertTrue(BOTH.scale().tops().get("engine torque [lbf.ft]") > 900 * 1.12 * 1.05);
    }

    @Test
    void aGapIsExplained() {
        assertEquals(
                List.of("low-clutch; not known at 1 of 3 points (gap)"),
                chart(line("low-clutch", 1, Double.NaN, 2)).legends());
    }

    @Test
    void linesMustBeToldApartAndHaveAPoint() {
        assertThrows(IllegalArgumentException.class, () -> chart(line("a", 1, 2), line("a", 1, 2)));
        assertThrows(IllegalArgumentException.class, () -> chart(line("a", Double.NaN, Double.NaN)));
        assertThrows(IllegalArgumentException.class, () -> chart(line("a", 1)));
        assertThrows(IllegalArgumentException.class, LinesChartTest::none);
    }

    private static void none() {
        chart();
    }
}
