package hotidle.plots;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

class MapChartTest {

    private static MapChart chart(double... headrooms) {
        List<MapChart.Tile> cells = DoubleStream.of(headrooms)
                .mapToObj(headroom -> new MapChart.Tile(headroom, Double.isNaN(headroom) ? "" : "A", false, Map.of()))
                .toList();
        return new MapChart(
                "worn: least headroom",
                "all else as worn",
                "set pressure [psi]",
                "clearance [in]",
                List.of(100.0, 200.0),
                List.of(0.001, 0.002),
                List.of(cells.subList(0, 2), cells.subList(2, 4)),
                10,
                Map.of("A", "hub film at hot-idle"),
                List.of(new MapChart.NamedPoint("worn: -3 %", 150, 0.0015)),
                List.of(new MapChart.LevelLine("shop limit", 0.0018)));
    }

    private static String svg(MapChart chart) {
        return new String(new Picture(List.of(chart)).bytes("x.svg"), StandardCharsets.UTF_8);
    }

    @Test
    void everyPointLimitAndLineIsNamed() {
        String svg = svg(chart(30, 5, -10, -60));
        for (String text : List.of(
                "worn: least headroom",
                "set pressure [psi]",
                "clearance [in]",
                "worn: -3 %",
                "shop limit",
                "hub film at hot-idle",
                "no headroom left",
                "10 % headroom",
                "FAILS, below -50 %")) {
            assertTrue(svg.contains(text), text);
        }
        assertFalse(svg.contains("not known"), svg);
    }

    @Test
    void whatIsNotKnownIsSaidAndNotDrawnOver() {
        String svg = svg(chart(30, Double.NaN, -10, -60));
        assertTrue(svg.contains("? not known"), svg);
        assertTrue(svg.contains("not enough points are known"), svg);
        assertTrue(svg(chart(30, Double.NEGATIVE_INFINITY, 20, 20)).contains("metal touches"));
    }

    @Test
    void aLimitThatIsLeftOutIsSaid() {
        assertFalse(svg(chart(30, 5, -10, -60)).contains("left out"));
        assertTrue(svg(map(List.of(1.0, 2.0), 2)).contains("not known at any point"));
    }

    @Test
    void aMapWithoutALineSaysWhy() {
        assertTrue(svg(chart(-30, -40, -50, -60)).contains("no point shown holds"));
        assertTrue(svg(chart(30, 40, 50, 60)).contains("no point shown fails"));
    }

    @Test
    void cellsStandAroundTheirPoints() {
        assertArrayEquals(new double[] {0.5, 1.5, 3, 5}, MapChart.edges(List.of(1.0, 2.0, 4.0)), 1e-12);
    }

    @Test
    void axesMustRiseAndEachLevelNeedsItsCells() {
        assertThrows(IllegalArgumentException.class, () -> map(List.of(2.0, 1.0), 2));
        assertThrows(IllegalArgumentException.class, () -> map(List.of(1.0), 1));
        assertThrows(IllegalArgumentException.class, () -> map(List.of(1.0, 2.0), 3));
    }

    private static MapChart map(List<Double> axis, int columns) {
        List<MapChart.Tile> row = java.util.Collections.nCopies(columns, new MapChart.Tile(1, "A", true, Map.of()));
        return new MapChart("", "", "x", "y", axis, axis, List.of(row, row), 10, Map.of(), List.of(), List.of());
    }
}
