package hotidle.plots;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;

class PictureTest {
    @TempDir
    Path folder;

    private static String svg(Picture picture) {
        return new String(picture.bytes("x.svg"), StandardCharsets.UTF_8);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4})
    void aPngHasItsSizeAndIsNotEmpty(int oils) throws IOException {
        BufferedImage image =
                ImageIO.read(new ByteArrayInputStream(Samples.page(oils).bytes("x.PNG")));
        assertEquals(1200, image.getWidth());
        assertEquals(800, image.getHeight());
        long colours = Arrays.stream(image.getRGB(0, 0, 1200, 800, null, 0, 1200))
                .distinct()
                .count();
        assertTrue(colours > 50, colours + " colours");
    }

    @Test
    void anSvgHoldsItsTexts() {
        String svg = svg(Samples.page(4));
        List.of(
                        "Line pressure against speed",
                        "double pump, third range, 95 °C, invented data",
                        "engine speed [rpm]",
                        "line pressure [psi]",
                        "flow [L/min]",
                        "worn: holds from 1430 rpm",
                        "worn at 270: never regulates between 400 and 4000 rpm",
                        "set 150 psi: new, worn",
                        "displacement × speed",
                        "valve body",
                        "Where the oil goes: restored at 270")
                .forEach(text -> assertTrue(svg.contains(">" + text + "</text>"), text));
    }

    @Test
    void anSvgIsWellFormedAndHasItsSize() throws Exception {
        Element root = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(Samples.page(2).bytes("x.svg")))
                .getDocumentElement();
        assertEquals("svg", root.getTagName());
        assertEquals(1200, Double.parseDouble(root.getAttribute("width")));
        assertEquals("0 0 1200 800", root.getAttribute("viewBox"));
    }

    @Test
    void anSvgNeedsNothingFromOutsideAndItsIdsAreItsOwn() {
        String svg = svg(Samples.page(4));
        assertFalse(svg.contains("<!DOCTYPE") || svg.contains("href"), svg);
        List<String> ids = Pattern.compile(" id=\"([^\"]*)\"")
                .matcher(svg)
                .results()
                .map(match -> match.group(1))
                .toList();
        assertTrue(ids.size() > 20, ids.toString());
        assertEquals(ids.size(), Set.copyOf(ids).size(), ids.toString());
        ids.forEach(id -> assertTrue(id.startsWith("hotidle-"), id));
    }

    /** Five charts on a page of 960 x 540 would have no room for a curve below what is said of it. */
    @Test
    void aPageTooSmallForAllShowsTheFirst() {
        Picture page = Samples.page(4);
        assertEquals(5, page.shown().size());
        Picture slide = page.sized(960, 540);
        assertEquals(page.charts().subList(0, 2), slide.shown());
        assertEquals(5, slide.charts().size());
        assertEquals("Line pressure against speed; Where the oil goes: new", slide.name());
        assertFalse(svg(slide).contains(">Where the oil goes: restored at 270</text>"));
        assertEquals(1, page.sized(360, 360).shown().size());
    }

    @Test
    void anUprightPageGivesTheFirstChartItsWholeWidth() {
        List<Rectangle2D> cells = Layout.cells(3, false, 560, 794);
        assertEquals(new Rectangle2D.Double(0, 0, 560, 397), cells.get(0));
        assertEquals(new Rectangle2D.Double(280, 397, 280, 397), cells.get(2));
        assertEquals(4, Layout.cells(4, false, 600, 1400).size());
        assertEquals(
                new Rectangle2D.Double(0, 800, 600, 400),
                Layout.cells(3, true, 600, 1200).get(2));
    }

    /** Curves of six builds have a legend as high as half of such a page. */
    @Test
    void theMoreALegendExplainsTheFewerChartsShareASmallPage() {
        assertEquals(3, Layout.readable(List.of(3, 1, 1), false, 560, 794));
        assertEquals(1, Layout.readable(List.of(8, 1, 1), false, 560, 794));
        assertEquals(3, Layout.readable(List.of(8, 1, 1), false, 1200, 800));
        assertEquals(2, Layout.readable(List.of(6, 6, 6), false, 560, 794));
        assertEquals(8, new SpeedChart("t", "", "psi", Samples.crowded().curves()).explained());
    }

    @Test
    void rowsOfBarsKeepTheirWidthOnALowPage() {
        assertEquals(
                new Rectangle2D.Double(0, 270, 960, 270),
                Layout.cells(2, true, 960, 540).get(1));
        assertEquals(2, Layout.readable(List.of(1, 1), true, 960, 540));
        assertEquals(
                new Rectangle2D.Double(480, 0, 480, 540),
                Layout.cells(2, false, 960, 540).get(1));
    }

    @Test
    void textsWithMarksOfXmlAreKept() {
        SpeedChart odd = new SpeedChart("a < b & c", "", "psi", Samples.speed().curves());
        String svg = svg(new Picture(List.of(odd)));
        assertTrue(svg.contains(">a &lt; b &amp; c</text>"));
    }

    @Test
    void theSameChartsGiveTheSameBytesInAnyCountry() {
        Locale before = Locale.getDefault();
        String here = svg(Samples.page(2));
        try {
            Locale.setDefault(Locale.GERMANY);
            assertEquals(here, svg(Samples.page(2)));
        } finally {
            Locale.setDefault(before);
        }
        assertArrayEquals(Samples.page(1).bytes("a.png"), Samples.page(1).bytes("b.png"));
    }

    @Test
    void oilChartsShareTheirScale() {
        OilChart small = Samples.oil("new", 1);
        OilChart large =
                new OilChart("large", "", small.unit(), small.speeds(), small.bands(), 3 * small.displacement());
        Axes both = small.scale().merge(large.scale());
        assertEquals(large.scale().tops(), both.tops());
        assertEquals(both.tops(), large.scale().merge(small.scale()).tops());
        assertEquals(
                both.tops().get("flow [L/min]"),
                new OilDrawing(small, both)
                        .drawn(400)
                        .getXYPlot()
                        .getRangeAxis()
                        .getUpperBound());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6})
    void cellsCoverThePageWithoutOverlap(int charts) {
        List<Rectangle2D> cells = Layout.cells(charts, false, 1200, 800);
        assertEquals(charts, cells.size());
        double covered = 0;
        for (Rectangle2D cell : cells) {
            covered += cell.getWidth() * cell.getHeight();
            assertTrue(new Rectangle2D.Double(0, 0, 1200, 800).contains(cell));
            assertTrue(cell.getWidth() >= 400 && cell.getHeight() >= 400, cell.toString());
            assertEquals(1, cells.stream().filter(cell::intersects).count());
        }
        assertEquals(1200 * 800, covered, 1e-6);
    }

    /** Letters stay letters: whoever gets the page can search it. */
    @Test
    void aPdfIsAPageOfTheSizeAskedForThatCanBeSearched() throws IOException {
        Picture picture = Samples.page(2).sized(960, 720);
        byte[] bytes = picture.bytes("a.PDF");
        try (PDDocument document = Loader.loadPDF(bytes)) {
            assertEquals(1, document.getNumberOfPages());
            assertEquals(720, document.getPage(0).getMediaBox().getWidth(), 0.1, "960 px at 96 to the inch, in points");
            String text = new PDFTextStripper().getText(document);
            assertTrue(text.contains("Line pressure against speed"), text);
        }
        assertArrayEquals(bytes, picture.bytes("b.pdf"));
    }

    @Test
    void anUnknownEndingIsRefusedWithTheKnownOnes() {
        for (String name : List.of("x.gif", "x", "png", "x.", "svg")) {
            String message = assertThrows(
                            IllegalArgumentException.class,
                            () -> Samples.page(0).bytes(name))
                    .getMessage();
            assertTrue(message.contains("png, svg, pdf") && message.contains("'" + name + "'"), message);
        }
    }

    @Test
    void writingReplacesTheFileAndLeavesNothingElse() throws IOException {
        Path target = folder.resolve("a.svg");
        Files.writeString(target, "old");
        Samples.page(0).write(target);
        assertArrayEquals(Samples.page(0).bytes("a.svg"), Files.readAllBytes(target));
        assertEquals(List.of(target), files());
    }

    @Test
    void aFailureLeavesTheOldFileAndNothingElse() throws IOException {
        Path target = folder.resolve("a.gif");
        Files.writeString(target, "old");
        assertThrows(IllegalArgumentException.class, () -> Samples.page(0).write(target));
        assertEquals("old", Files.readString(target));
        assertEquals(List.of(target), files());
        Path taken = Files.createDirectories(folder.resolve("b.png"));
        Files.writeString(taken.resolve("inside"), "kept");
        assertThrows(IOException.class, () -> Samples.page(0).write(taken));
        assertEquals(List.of(target, taken), files());
        assertThrows(IOException.class, () -> Samples.page(0).write(folder.resolve("missing/c.png")));
        assertFalse(Files.exists(folder.resolve("missing")));
    }

    @Test
    void tooManyChartsOrBandsAreNamed() {
        assertMessage("1 to 6 charts, not 7", () -> new Picture(Collections.nCopies(7, Samples.speed())));
        OilChart chart = Samples.oil("new", 1);
        OilChart other = new OilChart(
                "other",
                "",
                "L/min",
                chart.speeds(),
                chart.bands().stream()
                        .map(band -> new OilChart.FlowBand(band.name() + " again", band.flows()))
                        .toList(),
                0);
        assertMessage("up to 12 different bands together, not 20", () -> new Picture(List.of(chart, other)));
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }

    private static void assertMessage(String part, Executable call) {
        String message = assertThrows(IllegalArgumentException.class, call).getMessage();
        assertTrue(message.contains(part), message);
    }
}
