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
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
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
            List.of(
                    curve("worn", n -> n < 1000 ? n / 200 : n / 500),
                    curve("torn", n -> n < 500 ? Double.NaN : n / 400)));

    private final XYPlot plot = CHART.drawn(CHART.scale()).getXYPlot();

    @Test
    void axesLimitMarksAndUnloadingAreDrawn() {
        assertEquals("engine speed [rpm]", plot.getDomainAxis().getLabel());
        assertEquals("film / least film allowed [-]", plot.getRangeAxis().getLabel());
        assertEquals(
                1.0,
                ((ValueMarker) plot.getRangeMarkers(Layer.BACKGROUND).iterator().next()).getValue());
        assertEquals(1000, plot.getDataset(SpeedDrawing.ONSETS).getXValue(0, 0));
        assertEquals(975, plot.getDataset(SpeedDrawing.UNLOADS).getXValue(1, 0));
        assertEquals(
                975 / 400.0,
                plot.getDataset(SpeedDrawing.UNLOADS).getYValue(1, 0),
                1e-12,
                "the tick sits on its curve");
    }

    @Test
    void aGapIsExplainedInTheLegend() {
        assertEquals(
                "worn: secondary unloaded from 975 rpm", CHART.curves().get(0).legend());
        assertEquals(
                "torn: secondary unloaded from 975 rpm; metal contact at 2 speeds (gap)",
                CHART.curves().get(1).legend());
    }

    /** The pressure's picture marks the speed at which it begins, this one that from which it is done. */
    @Test
    void unloadedHasAnotherMarkThanBeginningToUnload() {
        assertTrue(Marks.unloads().getBounds2D().getMinY() < -15
                && Marks.unloaded().getBounds2D().getMaxY() > 15);
    }

    @Test
    void allItsWordsStandInThePicture() throws IOException {
        String svg = new String(new Picture(List.of(CHART, CHART)).bytes("x.svg"), StandardCharsets.UTF_8);
        for (String word : List.of(
                "Film against engine speed",
                "least film allowed",
                "worn: thinnest 2 um at 1000 rpm",
                "the secondary is unloaded",
                "metal contact at 2 speeds")) {
            assertTrue(svg.contains(word), word);
        }
    }

    @Test
    void nothingToShowIsRefused() {
        List<FigureCurve> none = List.of(curve("gone", n -> Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new FigureChart("t", "", "a", Optional.empty(), none));
    }
}
