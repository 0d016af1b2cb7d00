package hotidle.plots;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.jfree.chart.plot.XYPlot;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Wear of two fits as bars, invented. */
class RowsChartTest {

    private static final RowsChart.ChartRow BORE = new RowsChart.ChartRow(
            "regulator.bore",
            List.of(new RowsChart.RowPiece(RowLook.FULL, 0, 40)),
            Optional.of(new RowsChart.RowMark(70, 60, 80)),
            "left 0.35 thou");
    private static final RowsChart.ChartRow PLATE = new RowsChart.ChartRow(
            "plate.gap",
            List.of(
                    new RowsChart.RowPiece(RowLook.HOLDS, 0, 20),
                    new RowsChart.RowPiece(RowLook.OPEN, 20, 20),
                    new RowsChart.RowPiece(RowLook.FAILS, 20, 60)),
            Optional.of(new RowsChart.RowMark(400, 400, 400)),
            "ample");

    private static RowsChart chart(RowsChart.ChartRow... rows) {
        return new RowsChart(
                "regulator.bore has least wear left",
                "invented data",
                "wear [%]",
                0,
                150,
                List.of(rows),
                Optional.of(new RowsChart.LinePlace(100, "limit in file")),
                Map.of(RowLook.FULL, "worn as it is"),
                "gone at");
    }

    private static List<Element> texts(RowsChart chart) throws Exception {
        NodeList found = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(new Picture(List.of(chart), 900, 400).svg("")))
                .getElementsByTagName("text");
        List<Element> all = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            all.add((Element) found.item(i));
        }
        return all;
    }

    private static double y(List<Element> texts, String text) {
        return texts.stream()
                .filter(one -> one.getTextContent().strip().equals(text))
                .mapToDouble(one -> Double.parseDouble(one.getAttribute("y")))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void eachFitHasItsNameAndItsTextInOneRowTheFirstOnTop() throws Exception {
        List<Element> texts = texts(chart(BORE, PLATE));
        assertEquals(y(texts, "regulator.bore"), y(texts, "left 0.35 thou"), 0.5);
        assertEquals(y(texts, "plate.gap"), y(texts, "ample"), 0.5);
        assertTrue(y(texts, "regulator.bore") < y(texts, "plate.gap"));
        for (String text : List.of("limit in file", "worn as it is", "gone at", "wear [%]")) {
            assertTrue(
                    texts.stream().anyMatch(one -> one.getTextContent().strip().equals(text)), text);
        }
    }

    @Test
    void marksAreTheNumbersOfTheRows() {
        XYPlot plot = new RowsDrawing(chart(BORE, PLATE)).drawn(true).getXYPlot();
        assertEquals(70, plot.getDataset().getXValue(0, 0));
        assertEquals(400, plot.getDataset().getXValue(0, 1));
        assertEquals(1, plot.getDataset().getYValue(0, 1));
    }

    /** A chart of shares keeps 0 to 100 beside one of thousandths. */
    @Test
    void itKeepsItsScaleWhateverElseIsOnThePicture() throws Exception {
        RowsChart small = new RowsChart(
                "t",
                "",
                "mm",
                -0.2,
                0.01,
                List.of(new RowsChart.ChartRow("a", List.of(), Optional.empty(), "")),
                Optional.empty(),
                Map.of(),
                "");
        String svg = new String(new Picture(List.of(chart(BORE), small)).bytes("x.svg"), StandardCharsets.UTF_8);
        assertTrue(svg.contains(">-0.2<") && svg.contains(">140<"), svg);
    }

    /** A mark beyond the axis is no point on it: there is ink at the edge of the field. */
    @Test
    void aMarkBeyondAnEndIsAnArrowThere() throws Exception {
        for (double at : new double[] {-50, 400}) {
            RowsChart chart =
                    chart(new RowsChart.ChartRow("a", List.of(), Optional.of(new RowsChart.RowMark(at, at, at)), ""));
            BufferedImage with = ImageIO.read(new ByteArrayInputStream(new Picture(List.of(chart)).bytes("x.png")));
            BufferedImage without = ImageIO.read(new ByteArrayInputStream(
                    new Picture(List.of(chart(new RowsChart.ChartRow("a", List.of(), Optional.empty(), ""))))
                            .bytes("x.png")));
            int different = 0;
            for (int x = 0; x < with.getWidth(); x++) {
                for (int y = 0; y < with.getHeight(); y++) {
                    different += with.getRGB(x, y) == without.getRGB(x, y) ? 0 : 1;
                }
            }
            assertTrue(different > 20 && different < 200, at + ": " + different);
        }
    }

    @Test
    void looksThatLieBesideEachOtherDifferInGrey() {
        double fails = Palette.lightness(RowLook.FAILS.fill());
        double holds = Palette.lightness(RowLook.HOLDS.fill());
        double full = Palette.lightness(RowLook.FULL.fill());
        assertTrue(holds - fails >= HeadroomShade.LEAST_LEAP, holds + " holds, fails " + fails);
        assertTrue(Math.abs(fails - full) >= HeadroomShade.LEAST_LEAP, full + " full, fails " + fails);
        assertTrue(Palette.lightness(RowLook.OPEN.fill()) - holds >= HeadroomShade.LEAST_LEAP / 2);
    }

    @Test
    void rowsMustBeFewEnoughToReadAndTheAxisMustShowSomething() {
        assertThrows(IllegalArgumentException.class, RowsChartTest::none);
        List<RowsChart.ChartRow> many = Collections.nCopies(RowsChart.MOST_ROWS + 1, BORE);
        assertThrows(IllegalArgumentException.class, () -> chart(many.toArray(RowsChart.ChartRow[]::new)));
        assertThrows(
                IllegalArgumentException.class,
                () -> new RowsChart("t", "", "a", 1, 1, List.of(BORE), Optional.empty(), Map.of(), ""));
        assertTrue(RowsChart.height(20) > RowsChart.height(8));
        assertEquals(RowsChart.height(1), RowsChart.height(2));
    }

    private static void none() {
        chart();
    }

    /** Names and texts would leave no room for a bar. */
    @Test
    void onANarrowPageTheLegendTellsWhatStandsBesideBars() {
        RowsDrawing drawing = new RowsDrawing(chart(
                BORE,
                new RowsChart.ChartRow("plate.gap", List.of(), Optional.empty(), "all its sizes at 68 % of wear")));
        Graphics2D g = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
        assertTrue(drawing.textsBeside(g, 800));
        assertFalse(drawing.textsBeside(g, 360));
        assertEquals(2, drawing.drawn(true).getXYPlot().getRangeAxisCount());
        assertEquals(1, drawing.drawn(false).getXYPlot().getRangeAxisCount());
        List<String> told = drawing.legend(false).entries().stream()
                .map(Legend.KeySample::text)
                .toList();
        assertTrue(told.contains("plate.gap: all its sizes at 68 % of wear"), told.toString());
        assertEquals(told.size() - 2, drawing.legend(true).entries().size());
        g.dispose();
    }
}
