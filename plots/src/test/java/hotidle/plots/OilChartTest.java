package hotidle.plots;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.XYDataset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class OilChartTest {
    private final OilChart chart = Samples.oil("worn", 5);
    private final OilDrawing drawing = new OilDrawing(chart, chart.scale());
    private final XYPlot plot = drawing.drawn(400).getXYPlot();

    /** Two bands of 10 and 5 over four speeds. */
    private static OilChart small(List<Double> lower, List<Double> upper) {
        return new OilChart(
                "t",
                "",
                "L/min",
                List.of(0.0, 100.0, 200.0, 300.0),
                List.of(new OilChart.FlowBand("lower", lower), new OilChart.FlowBand("upper", upper)),
                0.1);
    }

    /** One rpm is one pixel across; a flow of one is ten pixels up from 300. */
    private static Stack stack(OilChart chart) {
        return new Stack(chart, speed -> speed, flow -> 300 - 10 * flow);
    }

    @Test
    void axesCarryTheirUnits() {
        assertEquals("engine speed [rpm]", plot.getDomainAxis().getLabel());
        assertEquals("flow [L/min]", plot.getRangeAxis().getLabel());
    }

    @Test
    void bandsAreStackedInTheirOrder() {
        XYDataset tops = plot.getDataset(OilDrawing.BANDS);
        assertEquals(10, tops.getSeriesCount());
        double sum = 0;
        for (int band = 0; band < 10; band++) {
            sum += chart.bands().get(band).flows().get(40);
            assertEquals(chart.bands().get(band).name(), tops.getSeriesKey(band));
            assertEquals(sum, tops.getYValue(band, 40), 1e-9);
        }
    }

    @Test
    void thePumpsDeliveryIsDisplacementTimesSpeed() {
        XYDataset line = plot.getDataset(OilDrawing.DELIVERY);
        assertEquals(0.036 * 4000, line.getYValue(0, 1), 1e-9);
        assertTrue(chart.scale().tops().get("flow [L/min]") > 0.036 * 4000);
    }

    @Test
    void anUnsolvedSpeedLeavesABreakInAllBands() {
        OilChart holed = Samples.holed(chart);
        XYDataset tops =
                new OilDrawing(holed, holed.scale()).drawn(400).getXYPlot().getDataset(OilDrawing.BANDS);
        for (int band = 0; band < 10; band++) {
            assertTrue(Double.isNaN(tops.getYValue(band, 12)));
            assertFalse(Double.isNaN(tops.getYValue(band, 16)));
        }
        assertEquals(2, stack(holed).shapes(3).size());
        assertTrue(
                texts(new OilDrawing(holed, holed.scale()).legend(Set.of())).contains("unsolved at 4 speeds (gaps)"));
    }

    @Test
    void aStateAloneBetweenGapsIsStillSeen() {
        OilChart alone = small(List.of(10.0, Double.NaN, 10.0, Double.NaN), List.of(5.0, 5.0, 5.0, 5.0));
        List<Shape> shapes = stack(alone).shapes(1);
        assertEquals(2, shapes.size());
        assertEquals(new Rectangle2D.Double(198, 150, 4, 50), shapes.get(1).getBounds2D());
    }

    @Test
    void flowBelowNoughtIsNotStackedButSaid() {
        OilChart back = small(List.of(10.0, 10.0, 10.0, 10.0), List.of(5.0, -1.0, -2.0, 5.0));
        assertEquals(10, back.top(1, 1));
        assertTrue(texts(new OilDrawing(back, back.scale()).legend(Set.of("lower", "upper")))
                .contains("upper (flows backward at 2 speeds, not shown)"));
    }

    @Test
    void aNameStandsInItsBandOnlyWhereItFits() {
        OilChart two = small(List.of(10.0, 10.0, 10.0, 10.0), List.of(1.0, 1.0, 3.0, 3.0));
        assertEquals(
                new Rectangle2D.Double(100, 240, 100, 20),
                stack(two).place(0, 100, 20).orElseThrow());
        assertTrue(stack(two).place(1, 150, 20).isEmpty(), "room for 150 px is only 10 px high");
        assertTrue(stack(two).place(1, 80, 20).orElseThrow().getMinX() >= 150, "fits in the thick part");
        assertTrue(stack(two).place(0, 400, 20).isEmpty(), "wider than the chart");
    }

    @Test
    void bandsThatAreNotNamedInTheChartStandInTheLegend() {
        assertEquals(
                List.of("displacement × speed", "hub", "rings"),
                texts(drawing.legend(Set.of(
                        "lube",
                        "cooler",
                        "converter",
                        "solenoids",
                        "plate",
                        "valve body",
                        "pump slip",
                        "recirculated"))));
    }

    @Test
    void aNameLooksTheSameInAllChartsOfAPicture() {
        OilChart part =
                new OilChart("t", "", "L/min", chart.speeds(), chart.bands().subList(3, 5), chart.displacement());
        Axes both = chart.scale().merge(part.scale());
        assertEquals(new OilDrawing(chart, both).looks().subList(3, 5), new OilDrawing(part, both).looks());
        assertTrue(both.key());
        assertTrue(new OilDrawing(part, both).legend(Set.of()).entries().isEmpty(), "the picture explains the bands");
        assertEquals(11, OilDrawing.key(both.bands()).entries().size());
    }

    /** What the unit takes, 10, and what its regulator sends back, up to ninety at 200 rpm. */
    private static OilChart regulated(OilChart.FlowBand back) {
        List<Double> taken = List.of(10.0, 10.0, 10.0, 10.0);
        return new OilChart(
                "t",
                "",
                "L/min",
                List.of(0.0, 100.0, 200.0, 300.0),
                List.of(new OilChart.FlowBand("taken", taken), back),
                0.4);
    }

    @Test
    void whatTheRegulatorSendsBackDoesNotPressTheRestIntoAStrip() {
        OilChart chart = regulated(new OilChart.FlowBand("back", List.of(0.0, 40.0, 90.46, Double.NaN), true));
        double top = chart.scale().tops().get(chart.axis());
        assertEquals(14.5, top, 1e-9);
        assertEquals(List.of("taken"), chart.told(0, top));
        assertEquals(List.of("back", "up to 90.5 L/min at 200 rpm"), chart.told(1, top));
        assertEquals(List.of("back"), chart.told(1, 101), "whole on a larger scale");
        assertEquals(
                List.of("back, up to 90.5 L/min at 200 rpm", "unsolved at 1 speed (gaps)"),
                texts(new OilDrawing(chart, keyed(chart)).legend(Set.of())),
                "told below the chart where it finds no room in its band, whatever the key of the picture says");
        assertTrue(texts(new OilDrawing(chart, chart.scale()).legend(Set.of("back", "taken"))).stream()
                .noneMatch(text -> text.startsWith("back")));
    }

    private static Axes keyed(OilChart chart) {
        return chart.scale().merge(chart.scale());
    }

    @Test
    void aRestThatIsSmallIsShownWhole() {
        OilChart chart = regulated(new OilChart.FlowBand("back", List.of(0.0, 1.0, 2.0, 2.0), true));
        assertTrue(chart.scale().tops().get(chart.axis()) > 12);
        assertEquals(List.of("back"), chart.told(1, chart.scale().tops().get(chart.axis())));
    }

    @Test
    void whatIsToldOfACutBandStandsWithinTheChart() {
        OilChart chart = regulated(new OilChart.FlowBand("back", List.of(0.0, 90.0, 90.0, 90.0), true));
        String svg = new String(new Picture(List.of(chart)).svg(""), StandardCharsets.UTF_8);
        assertTrue(svg.contains(">back</text>") && svg.contains(">up to 90 L/min at 100 rpm</text>"), svg);
    }

    @Test
    void theRestLiesOnTop() {
        List<Double> flows = List.of(1.0, 1.0);
        assertMessage(
                "band 'back' is the rest, but not on top",
                () -> new OilChart(
                        "t",
                        "",
                        "gpm",
                        List.of(0.0, 1.0),
                        List.of(new OilChart.FlowBand("back", flows, true), new OilChart.FlowBand("taken", flows)),
                        0));
    }

    @Test
    void wrongInputIsNamed() {
        assertMessage("band 'lower' has 1 flows at 4 speeds", () -> small(List.of(1.0), List.of(1.0)));
        assertMessage(
                "1 to 12 bands, not 13",
                () -> new OilChart(
                        "t",
                        "",
                        "gpm",
                        chart.speeds(),
                        IntStream.range(0, 13)
                                .mapToObj(i -> new OilChart.FlowBand("b" + i, Collections.nCopies(73, 1.0)))
                                .toList(),
                        0));
        assertMessage(
                "displacement is -1.0 gpm per rpm",
                () -> new OilChart("t", "", "gpm", chart.speeds(), chart.bands(), -1));
    }

    private static List<String> texts(Legend legend) {
        return legend.entries().stream().map(Legend.KeySample::text).toList();
    }

    private static void assertMessage(String part, Executable call) {
        String message = assertThrows(IllegalArgumentException.class, call).getMessage();
        assertTrue(message.contains(part), message);
    }
}
