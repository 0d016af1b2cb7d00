package hotidle.plots;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.title.TextTitle;
import org.junit.jupiter.api.Test;

/** How titles are broken, with names of thirty letters. */
class TitleTest {

    private static final String CIRCUIT = "articulated-bus-seven-speed-ii";
    private static final String BUILD = "restored-with-a-stronger-shaft";

    private final Graphics2D g = new BufferedImage(10, 10, BufferedImage.TYPE_INT_RGB).createGraphics();
    private final FontMetrics font = g.getFontMetrics(Style.TITLE);

    @Test
    void aNumberStandsOnOneLineWithItsUnit() {
        String text = "worn: slip and leaks give back 55 % of its oil at 400 rpm, 4 % at 4000 rpm";
        for (int width = 120; width < 800; width += 7) {
            List<String> lines = Style.lines(text, font, width);
            assertEquals(text, String.join(" ", lines));
            for (String line : lines) {
                assertTrue(!line.startsWith("%") && !line.startsWith("rpm"), lines.toString());
            }
        }
    }

    @Test
    void aShortLastWordIsNotLeftAlone() {
        String text = "invented airport shuttle bus, five-speed unit with a hub-driven double gear pump";
        double width = font.stringWidth(text) - 3;
        List<String> lines = Style.lines(text, font, width);
        assertEquals(2, lines.size());
        assertTrue(font.stringWidth(lines.get(1)) > width / 3, lines.toString());
    }

    @Test
    void aTitleThatFitsIsOneLine() {
        assertEquals(List.of("worn: not known"), Style.lines("worn: not known", font, 400));
    }

    @Test
    void namesOfThirtyLettersKeepTitlesOffBothEdges() {
        for (int width = 360; width <= 1200; width += 60) {
            LineChart long30 = new LineChart(
                    BUILD + ": nothing under 1197 rpm holds 240 psi; " + BUILD + "-2: not known",
                    CIRCUIT + ", hot-idle in first, sump 230 degF; invented seven-speed unit of " + CIRCUIT,
                    "speed",
                    "flow",
                    "",
                    List.of(new LineChart.Point(0, 1), new LineChart.Point(1, 2)));
            JFreeChart drawn = long30.drawn(long30.scale());
            Style.paint(g, new Rectangle2D.Double(0, 0, width, 500), drawn, new Legend(List.of()));
            assertEquals(1, drawn.getSubtitleCount());
            for (TextTitle title : List.of(drawn.getTitle(), (TextTitle) drawn.getSubtitle(0))) {
                for (String line : title.getText().lines().toList()) {
                    assertTrue(
                            g.getFontMetrics(title.getFont()).stringWidth(line) <= width - 20,
                            "'" + line + "' on " + width + " px");
                }
            }
        }
    }

    /** Else the curves have no room beside all that is said of them. */
    @Test
    void aLowChartGoesWithoutWhatStaysTheSame() {
        LineChart chart = new LineChart(
                BUILD, CIRCUIT, "speed", "flow", "", List.of(new LineChart.Point(0, 1), new LineChart.Point(1, 2)));
        JFreeChart low = chart.drawn(chart.scale());
        Style.paint(g, new Rectangle2D.Double(0, 0, 400, 160), low, new Legend(List.of()));
        assertEquals(0, low.getSubtitleCount());
        assertEquals(BUILD, low.getTitle().getText());
    }
}
