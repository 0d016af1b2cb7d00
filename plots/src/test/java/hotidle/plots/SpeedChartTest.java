package hotidle.plots;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.XYDataset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class SpeedChartTest {
    private final SpeedChart chart = Samples.speed();
    private final SpeedDrawing drawing = new SpeedDrawing(chart, chart.scale());
    private final XYPlot plot = drawing.drawn(400).getXYPlot();

    @Test
    void axesCarryTheirUnits() {
        assertEquals("engine speed [rpm]", plot.getDomainAxis().getLabel());
        assertEquals("line pressure [psi]", plot.getRangeAxis().getLabel());
        SpeedChart bar = Samples.crowded();
        assertEquals(
                "line pressure [bar]",
                new SpeedDrawing(bar, bar.scale())
                        .drawn(400)
                        .getXYPlot()
                        .getRangeAxis()
                        .getLabel());
    }

    @Test
    void titleAndSubtitleAreThere() {
        assertEquals(chart.title(), drawing.drawn(400).getTitle().getText());
        assertEquals(chart.subtitle(), ((TextTitle) drawing.drawn(400).getSubtitle(0)).getText());
    }

    @Test
    void eachBuildIsACurveWithAllItsPoints() {
        XYDataset curves = plot.getDataset(SpeedDrawing.CURVES);
        assertEquals(4, curves.getSeriesCount());
        for (int s = 0; s < 4; s++) {
            PressureCurve curve = chart.curves().get(s);
            assertEquals(curve.build(), curves.getSeriesKey(s));
            assertEquals(curve.points().size(), curves.getItemCount(s));
            assertEquals(curve.points().get(30).pressure(), curves.getYValue(s, 30));
        }
    }

    @Test
    void anUnsolvedStateLeavesABreakAndACross() {
        XYDataset curves = plot.getDataset(SpeedDrawing.CURVES);
        XYDataset crosses = plot.getDataset(SpeedDrawing.UNSOLVED);
        assertTrue(Double.isNaN(curves.getYValue(1, 10)), "900 rpm of the worn build is unsolved");
        assertFalse(Double.isNaN(curves.getYValue(1, 9)));
        assertEquals(0, crosses.getItemCount(0));
        assertEquals(4, crosses.getItemCount(1));
        assertEquals(900, crosses.getXValue(1, 0));
        assertTrue(legend(1).endsWith("unsolved at 4 speeds (×)"), legend(1));
    }

    @Test
    void aStateAloneBetweenGapsHasItsMarker() {
        XYLineAndShapeRenderer renderer = (XYLineAndShapeRenderer) plot.getRenderer(SpeedDrawing.CURVES);
        assertEquals(1000, plot.getDataset(SpeedDrawing.CURVES).getXValue(1, 12));
        assertTrue(renderer.getItemShapeVisible(1, 12));
        long markers = IntStream.range(0, 73)
                .filter(i -> renderer.getItemShapeVisible(0, i))
                .count();
        assertTrue(markers >= 10 && markers <= 14, markers + " markers on 73 points");
    }

    @Test
    void theOnsetIsMarkedOnTheCurveAndNamed() {
        XYDataset onsets = plot.getDataset(SpeedDrawing.ONSETS);
        PressureCurve worn = chart.curves().get(1);
        assertEquals(1430, onsets.getXValue(1, 0));
        assertEquals(worn.at(1430), onsets.getYValue(1, 0));
        assertEquals(0, onsets.getItemCount(2), "a build that never regulates has no onset");
        List<String> texts = drawing.callouts().texts();
        assertTrue(texts.contains("worn: holds from 1430 rpm"), texts.toString());
        assertTrue(texts.contains("new: holds from 400 rpm or below"), texts.toString());
        assertTrue(plot.getAnnotations().stream().anyMatch(Callouts.class::isInstance));
    }

    /** Where names have no room beside their marks the legend tells them: nothing is left out in silence. */
    @Test
    void aNameThatFindsNoRoomIsToldInTheLegend() {
        List<PressureCurve> many = IntStream.range(0, 6)
                .mapToObj(i -> Samples.held("a build with a long name " + i, 150, 1000 + 10 * i, 2900))
                .toList();
        SpeedChart crowded = new SpeedChart("t", "", "psi", many);
        SpeedDrawing drawn = new SpeedDrawing(crowded, crowded.scale());
        Graphics2D g = new BufferedImage(10, 10, BufferedImage.TYPE_INT_RGB).createGraphics();
        Rectangle2D small = new Rectangle2D.Double(0, 0, 500, 330);
        Legend whole = Style.complete(g, small, drawn.drawn(500), drawn.legend());
        List<String> told = whole.entries().stream().map(Legend.KeySample::text).toList();
        long added = drawn.callouts().texts().stream().filter(told::contains).count();
        assertTrue(added > 0, told.toString());
        assertEquals(drawn.legend().entries().size() + added, told.size());
        whole.entries()
                .forEach(entry -> assertTrue(leavesInk(entry), "what the legend tells has its mark: " + entry.text()));
        Rectangle2D wide = new Rectangle2D.Double(0, 0, 1600, 900);
        assertEquals(
                drawn.legend().entries().size(),
                Style.complete(g, wide, drawn.drawn(1600), drawn.legend())
                        .entries()
                        .size(),
                "with room for all nothing is added");
        String svg = new String(new Picture(List.of(crowded)).bytes("x.svg"), StandardCharsets.UTF_8);
        drawn.callouts().texts().forEach(text -> assertTrue(svg.contains(text), text));
        g.dispose();
    }

    /** What the legend tells since the chart of this size has no good place for it. */
    private static List<String> added(PressureCurve curve, double width, double height) {
        SpeedChart chart = new SpeedChart("t", "", "psi", List.of(curve));
        SpeedDrawing drawn = new SpeedDrawing(chart, chart.scale());
        Graphics2D g = new BufferedImage(10, 10, BufferedImage.TYPE_INT_RGB).createGraphics();
        List<String> told = Style.complete(
                        g, new Rectangle2D.Double(0, 0, width, height), drawn.drawn(width), drawn.legend())
                .entries()
                .stream()
                .map(Legend.KeySample::text)
                .filter(drawn.callouts().texts()::contains)
                .toList();
        g.dispose();
        return told;
    }

    @Test
    void aNameWiderThanTheChartIsToldInTheLegendNotCut() {
        PressureCurve curve =
                Samples.held("a build with a name that is far too long for so small a chart", 150, 900, 2900);
        assertEquals(List.of(curve.build() + ": holds from 900 rpm"), added(curve, 360, 300));
        assertEquals(List.of(), added(curve, 1200, 400));
    }

    @Test
    void aNameThatWouldLieOnACurveIsToldInTheLegend() {
        PressureCurve everywhere = Samples.curve(
                "swinging", 150, n -> n % 100 == 0 ? 0 : 300, OptionalDouble.of(1000), OptionalDouble.empty());
        assertEquals(List.of("swinging: holds from 1000 rpm", "set 150 psi"), added(everywhere, 600, 400));
    }

    @Test
    void aNameFarFromItsMarkIsToldInTheLegend() {
        PressureCurve left = Samples.curve(
                "swinging",
                150,
                n -> n > 2000 ? 150 : n % 100 == 0 ? 0 : 300,
                OptionalDouble.of(800),
                OptionalDouble.empty());
        assertEquals(List.of("swinging: holds from 800 rpm"), added(left, 1200, 400));
    }

    /** Either in the chart or in the legend, not in both. */
    @Test
    void everyTextIsToldOnceInEverySize() {
        for (SpeedChart one : List.of(Samples.crowded(), Samples.speed())) {
            List<String> texts = new SpeedDrawing(one, one.scale()).callouts().texts();
            for (int width = 420; width <= 1200; width += 130) {
                String svg =
                        new String(new Picture(List.of(one)).sized(width, 600).bytes("x.svg"), StandardCharsets.UTF_8);
                for (String text : texts) {
                    assertEquals(1, svg.split(">" + text + "<", -1).length - 1, text + " on " + width + " px");
                }
            }
        }
    }

    @Test
    void aSetPressureIsRoundedToWhatIsKnown() {
        PressureCurve odd = Samples.held("odd", 79.3704, 900, 2900);
        SpeedChart chart = new SpeedChart("t", "", "psi", List.of(odd));
        assertTrue(new SpeedDrawing(chart, chart.scale()).callouts().texts().contains("set 79.4 psi"));
    }

    private static boolean leavesInk(Legend.KeySample entry) {
        BufferedImage image = new BufferedImage(40, 20, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = image.createGraphics();
        entry.sample().accept(g, new Rectangle2D.Double(0, 0, 40, 20));
        g.dispose();
        return IntStream.range(0, 40 * 20).anyMatch(i -> image.getRGB(i % 40, i / 40) != 0);
    }

    @Test
    void anOnsetInAGapLiesOnTheSetPressure() {
        PressureCurve curve = Samples.holed(Samples.held("worn", 150, 1060, 2900));
        SpeedChart one = new SpeedChart("t", "", "psi", List.of(curve));
        XYDataset onsets =
                new SpeedDrawing(one, one.scale()).drawn(400).getXYPlot().getDataset(SpeedDrawing.ONSETS);
        assertEquals(1060, onsets.getXValue(0, 0));
        assertEquals(150, onsets.getYValue(0, 0));
    }

    @Test
    void gaugeReadingsOfTheLineStandOnTheCurves() {
        SpeedChart read = new SpeedChart(
                "t", "", "psi", chart.curves(), List.of(new GaugePoint(650, 900, 882, 918)), Optional.empty());
        SpeedDrawing of = new SpeedDrawing(read, read.scale());
        assertEquals(900, of.drawn(400).getXYPlot().getDataset(GaugePoints.READ).getYValue(0, 0));
        assertTrue(of.legend().entries().stream()
                .anyMatch(entry -> entry.text().equals("gauge reading, as high as the gauge may be off")));
        assertTrue(read.scale().tops().get(read.axis()) > 918, "the point is on the chart");
        assertTrue(new Picture(List.of(read)).svg("").length > 0);
    }

    @Test
    void aBuildThatNeverRegulatesSaysSo() {
        assertEquals("worn at 270: never regulates between 400 and 4000 rpm", legend(2));
        assertEquals(
                "worn at 270: regulates at no speed solved between 400 and 4000 rpm; unsolved at 4 speeds (×)",
                Samples.holed(chart.curves().get(2)).legend());
        assertEquals(
                "x: no speed solved",
                Samples.curve("x", 1, n -> Double.NaN, OptionalDouble.empty(), OptionalDouble.empty())
                        .legend());
    }

    @Test
    void unloadingIsMarkedOnTheCurveAndNamed() {
        XYDataset ticks = plot.getDataset(SpeedDrawing.UNLOADS);
        assertEquals(2900, ticks.getXValue(1, 0));
        assertEquals(chart.curves().get(1).at(2900), ticks.getYValue(1, 0));
        assertTrue(legend(0).contains("secondary unloaded from 900 rpm"), legend(0));
    }

    @Test
    void equalSetPressuresShareOneDashedLine() {
        List<Double> levels = plot.getRangeMarkers(Layer.BACKGROUND).stream()
                .map(marker -> ((ValueMarker) marker).getValue())
                .sorted()
                .toList();
        assertEquals(List.of(150.0, 270.0), levels);
        assertTrue(drawing.callouts().texts().contains("set 150 psi: new, worn"));
        SpeedChart bar = Samples.crowded();
        assertTrue(
                new SpeedDrawing(bar, bar.scale()).callouts().texts().contains("set 10.3 bar"),
                "one level for all needs no names");
    }

    @Test
    void buildsWhoseLineHoldsFromOnePlaceShareALabelInNobodysColour() {
        SpeedChart two = new SpeedChart(
                "t",
                "",
                "psi",
                List.of(Samples.held("worn", 150, 1060, 2900), Samples.held("mended", 150, 1060, 3100)));
        SpeedDrawing of = new SpeedDrawing(two, two.scale());
        assertEquals(
                1,
                of.callouts().texts().stream()
                        .filter("worn, mended: hold from 1060 rpm"::equals)
                        .count());
        assertTrue(new Picture(List.of(two)).svg("").length > 0);
    }

    @Test
    void aLevelOfManyBuildsHasNoNamesAndALevelOfOneHasItsColour() {
        List<PressureCurve> six = IntStream.range(0, 6)
                .mapToObj(i -> Samples.held("build-" + i, i < 5 ? 150 : 240, 900 + 100 * i, 2900))
                .toList();
        SpeedChart crowd = new SpeedChart("t", "", "psi", six);
        SpeedDrawing of = new SpeedDrawing(crowd, crowd.scale());
        List<String> texts = of.callouts().texts();
        assertTrue(texts.contains("set 150 psi"), texts.toString());
        assertTrue(texts.contains("set 240 psi: build-5"), texts.toString());
        assertEquals(
                LineLook.ALL.get(5).ink(),
                of.drawn(400).getXYPlot().getRangeMarkers(Layer.BACKGROUND).stream()
                        .map(ValueMarker.class::cast)
                        .filter(marker -> marker.getValue() == 240)
                        .findFirst()
                        .orElseThrow()
                        .getPaint());
    }

    @Test
    void pressureBetweenPointsIsInterpolatedAndUnknownInAGap() {
        PressureCurve curve = new PressureCurve(
                "x",
                List.of(
                        new PressureCurve.SweepPoint(500, 50),
                        new PressureCurve.SweepPoint(700, 90),
                        new PressureCurve.SweepPoint(900, Double.NaN)),
                100,
                OptionalDouble.empty(),
                OptionalDouble.empty());
        assertEquals(60, curve.at(550), 1e-9);
        assertEquals(90, curve.at(700));
        assertTrue(Double.isNaN(curve.at(701)));
        assertTrue(Double.isNaN(curve.at(499)));
    }

    @Test
    void wrongInputIsNamed() {
        PressureCurve curve = chart.curves().get(0);
        assertMessage("1 to 6 curves, not 7", () -> new SpeedChart("t", "", "psi", Collections.nCopies(7, curve)));
        assertMessage("different names", () -> new SpeedChart("t", "", "psi", List.of(curve, curve)));
        assertMessage(
                "speeds must rise",
                () -> new PressureCurve(
                        "x",
                        List.of(new PressureCurve.SweepPoint(500, 1), new PressureCurve.SweepPoint(500, 2)),
                        1,
                        OptionalDouble.empty(),
                        OptionalDouble.empty()));
    }

    private String legend(int i) {
        return drawing.legend().entries().get(i).text();
    }

    private static void assertMessage(String part, Executable call) {
        String message = assertThrows(IllegalArgumentException.class, call).getMessage();
        assertTrue(message.contains(part), message);
    }
}
