package hotidle.plots;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.IntervalXYDataset;
import org.junit.jupiter.api.Test;

class FigureChartTest {

    private static FigureCurve curve(String build, DoubleUnaryOperator figure) {
        return new FigureCurve(
                build,
                Samples.speeds().stream()
                        .map(speed -> new PressureCurve.SweepPoint(speed, figure.applyAsDouble(speed)))
                        .toList(),
                Optional.of(new FigureCurve.LabelledPoint(1000, 2, build + ": thinnest 2 um at 1000 rpm")),
                OptionalDouble.of(975),
                "metal contact");
    }

    private static final FigureChart CHART = new FigureChart(
            "Film against engine speed",
            "invented data",
            "film / least film allowed [-]",
            Optional.of(new FigureChart.LimitLine(1, "least film allowed")),
            Optional.of(new FigureChart.LimitLine(2.5, "from here on it is known to hold")),
            List.of(
                    curve("worn", n -> n < 1000 ? n / 200 : n / 500),
                    curve("torn", n -> n < 500 ? Double.NaN : n / 400)));

    /** A reading of 3 that the gauge may have missed by a half either way. */
    @Test
    void gaugeReadingsArePointsAsHighAsTheGaugeMayBeOff() {
        FigureChart with = new FigureChart(
                CHART.title(),
                CHART.subtitle(),
                CHART.axis(),
                CHART.level(),
                CHART.open(),
                CHART.curves(),
                List.of(new GaugePoint(650, 30, 29.5, 30.5)));
        IntervalXYDataset read =
                (IntervalXYDataset) with.drawn(with.scale()).getXYPlot().getDataset(GaugePoints.READ);
        assertEquals(650, read.getXValue(0, 0));
        assertEquals(30, read.getYValue(0, 0));
        assertEquals(29.5, read.getStartYValue(0, 0));
        assertEquals(30.5, read.getEndYValue(0, 0));
        assertTrue(with.scale().tops().get(CHART.axis()) > 30.5, "the point is on the chart");
        String svg = new String(new Picture(List.of(with)).svg(""), StandardCharsets.UTF_8);
        assertTrue(svg.contains("gauge reading, as high as the gauge may be off"));
    }

    @Test
    void anAxisThatBeginsAboveZeroHoldsAllThatIsDrawn() {
        FigureChart from = new FigureChart(
                        "t", "", "a", Optional.empty(), Optional.empty(), List.of(curve("fresh", n -> 140 + n / 100)))
                .from(130);
        var axis = from.drawn(from.scale()).getXYPlot().getRangeAxis();
        assertEquals(130, axis.getLowerBound());
        double most = from.curves().get(0).points().stream()
                .mapToDouble(PressureCurve.SweepPoint::pressure)
                .max()
                .orElseThrow();
        assertTrue(axis.getUpperBound() > most && axis.getUpperBound() < most + 0.1 * (most - 130) + 1e-9);
        assertThrows(IllegalArgumentException.class, () -> from.from(150));
    }

    /** Four builds whose films are thinnest at one speed: their texts stand in the legend, not on each other. */
    @Test
    void marksOfManyBuildsAreToldInTheLegend() {
        FigureChart many = new FigureChart(
                "t",
                "",
                "a",
                Optional.empty(),
                Optional.empty(),
                List.of(curve("fresh", n -> 1), curve("worn", n -> 2), curve("torn", n -> n < 500 ? Double.NaN : 3)));
        assertEquals(List.of(), many.callouts(many.scale()).texts());
        assertEquals(
                List.of(
                        "fresh: thinnest 2 um at 1000 rpm",
                        "worn: thinnest 2 um at 1000 rpm",
                        "torn: thinnest 2 um at 1000 rpm; metal contact at 2 speeds (gap)"),
                many.legend().entries().stream()
                        .map(Legend.KeySample::text)
                        .limit(3)
                        .toList());
        assertEquals(
                2,
                CHART.callouts(CHART.scale()).texts().stream()
                        .filter(text -> text.contains("thinnest"))
                        .count());
    }

    private final XYPlot plot = CHART.drawn(CHART.scale()).getXYPlot();

    @Test
    void axesLimitMarksAndUnloadingAreDrawn() {
        assertEquals("engine speed [rpm]", plot.getDomainAxis().getLabel());
        assertEquals("film / least film allowed [-]", plot.getRangeAxis().getLabel());
        assertEquals(
                List.of(1.0, 2.5),
                plot.getRangeMarkers(Layer.BACKGROUND).stream()
                        .filter(ValueMarker.class::isInstance)
                        .map(marker -> ((ValueMarker) marker).getValue())
                        .sorted()
                        .toList());
        assertEquals(1000, plot.getDataset(SpeedDrawing.ONSETS).getXValue(0, 0));
        assertEquals(975, plot.getDataset(SpeedDrawing.UNLOADS).getXValue(1, 0));
        assertEquals(
                975 / 400.0,
                plot.getDataset(SpeedDrawing.UNLOADS).getYValue(1, 0),
                1e-12,
                "the tick sits on its curve");
    }

    /** Between the two films nothing is known to fail or to hold, and the ground says so. */
    @Test
    void theFilmsOfWhichNothingIsKnownLieOnGrey() {
        IntervalMarker open = plot.getRangeMarkers(Layer.BACKGROUND).stream()
                .filter(IntervalMarker.class::isInstance)
                .map(IntervalMarker.class::cast)
                .findFirst()
                .orElseThrow();
        assertEquals(1.0, open.getStartValue());
        assertEquals(2.5, open.getEndValue());
        assertTrue(CHART.scale().tops().get("film / least film allowed [-]") > 2.5, "the line is in the chart");
    }

    @Test
    void aGapIsExplainedInTheLegend() {
        assertEquals("worn", CHART.curves().get(0).legend());
        assertEquals(
                "torn; metal contact at 2 speeds (gap)", CHART.curves().get(1).legend());
    }

    @Test
    void allItsWordsStandInThePicture() throws IOException {
        String svg = new String(new Picture(List.of(CHART, CHART)).bytes("x.svg"), StandardCharsets.UTF_8);
        for (String word : List.of(
                "Film against engine speed",
                "least film allowed",
                "worn: thinnest 2 um at 1000 rpm",
                "the secondary is unloaded",
                "from here on it is known to hold",
                "not known whether it holds",
                "metal contact at 2 speeds")) {
            assertTrue(svg.contains(word), word);
        }
    }

    @Test
    void nothingToShowIsRefused() {
        List<FigureCurve> none = List.of(curve("gone", n -> Double.NaN));
        assertThrows(
                IllegalArgumentException.class,
                () -> new FigureChart("t", "", "a", Optional.empty(), Optional.empty(), none));
    }
}
