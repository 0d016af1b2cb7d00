package hotidle.plots;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LineChartTest {

    private static LineChart chart(double... values) {
        return new LineChart(
                "Flow of a gap",
                "bore=14.06mm",
                "length [mm]",
                "flow [gpm]",
                "unsolved",
                IntStream.range(0, values.length)
                        .mapToObj(i -> new LineChart.Point(i + 1, values[i]))
                        .toList());
    }

    private static String svg(LineChart chart) {
        return new String(new Picture(List.of(chart)).bytes("x.svg"), StandardCharsets.UTF_8);
    }

    @Test
    void axesHaveTheirUnitsAndTheLineItsPoints() {
        LineChart chart = chart(3, 2, 1);
        String svg = svg(chart);
        for (String text : List.of("Flow of a gap", "bore=14.06mm", "length [mm]", "flow [gpm]")) {
            assertTrue(svg.contains(text), text);
        }
        var data = chart.drawn(chart.scale()).getXYPlot().getDataset();
        assertEquals(3, data.getItemCount(0));
        assertEquals(2, data.getYValue(0, 1));
    }

    @Test
    void aGapIsExplainedAndAWholeLineNeedsNoWords() {
        assertTrue(svg(chart(3, Double.NaN, 1)).contains("unsolved at 1 of 3 points (gap)"));
        assertTrue(!svg(chart(3, 2, 1)).contains("unsolved"));
    }

    @Test
    void flowTheOtherWayIsShownBelowNought() {
        LineChart chart = chart(-3, -2, -1);
        var axis = chart.drawn(chart.scale()).getXYPlot().getRangeAxis();
        assertTrue(axis.getLowerBound() < -3 && axis.getUpperBound() >= 0);
    }

    @Test
    void tinyFlowsKeepTheirDigits() {
        assertTrue(svg(chart(3e-6, 2e-6, 1e-6)).contains("E-6"));
        assertTrue(svg(chart(0.003, 0.002, 0.001)).contains("0.002"));
    }

    @Test
    void pointsMustMakeALine() {
        assertThrows(IllegalArgumentException.class, () -> chart(1));
        assertThrows(IllegalArgumentException.class, () -> chart(Double.NaN, Double.NaN));
        assertThrows(
                IllegalArgumentException.class,
                () -> new LineChart(
                        "", "", "x", "y", "", List.of(new LineChart.Point(2, 1), new LineChart.Point(1, 1))));
    }
}
