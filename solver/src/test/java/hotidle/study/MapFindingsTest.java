package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Margin;
import hotidle.transmission.WearSize;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Headroom in per cent, a row a bore, a column a set pressure of 5, 10, 15 … bar; made values, nothing is solved. */
class MapFindingsTest {

    private static final double UNKNOWN = Double.NaN;

    private static WindowMap.MapCell cell(double pressure, double value, double percent, String duty) {
        if (Double.isNaN(percent)) {
            return new WindowMap.MapCell(
                    pressure,
                    value,
                    Optional.empty(),
                    Optional.of(new WindowMap.UnknownCell(WindowMap.UnknownCell.Obstacle.UNSOLVED, Optional.of(duty))),
                    List.of(),
                    Map.of());
        }
        Margin margin = Margin.of(Margin.Kind.LUBRICATION, "lube", 1e-4 * (1 + percent / 100), 1e-4, Margin.Scale.FLOW);
        Judgement.Key key = new Judgement.Key(duty, margin.kind(), margin.part());
        return new WindowMap.MapCell(
                pressure,
                value,
                Optional.of(new WindowMap.LeastMargin(key, margin)),
                Optional.empty(),
                List.of(),
                Map.of(key, percent / 100));
    }

    /** What fails low fails at stall, what fails high at hot idle. */
    private static MapFindings findings(double[]... percents) {
        List<Double> pressures = new ArrayList<>();
        for (int i = 0; i < percents[0].length; i++) {
            pressures.add(5e5 * (i + 1));
        }
        List<Double> values = new ArrayList<>();
        List<List<WindowMap.MapCell>> cells = new ArrayList<>();
        for (double[] row : percents) {
            double value = 1e-5 * (values.size() + 1);
            values.add(value);
            List<WindowMap.MapCell> made = new ArrayList<>();
            for (int i = 0; i < row.length; i++) {
                made.add(cell(pressures.get(i), value, row[i], i < 2 ? "stall" : "hot-idle"));
            }
            cells.add(made);
        }
        WearSize bore = new WearSize(
                "bores", "bore", WearSize.SizeKind.LENGTH, 1e-2, 1e-2, OptionalDouble.empty(), OptionalDouble.empty());
        return MapFindings.of(
                new WindowMap(new WindowMap.Axis("bores.bore", bore, 0), pressures, values, cells, List.of()));
    }

    @Test
    void eachBoreHasTheSetPressuresThatHoldAndWhatFailsBeyond() {
        MapFindings found = findings(new double[] {-20, 5, 30, -4});
        MapFindings.PressureSpan range = found.rows().get(0).ranges().get(0);
        assertEquals(10e5, range.first().pressure());
        assertEquals(15e5, range.last().pressure());
        assertEquals(
                "stall", range.below().orElseThrow().least().orElseThrow().key().duty());
        assertEquals(
                "hot-idle",
                range.above().orElseThrow().least().orElseThrow().key().duty());
        assertEquals(15e5, found.best().orElseThrow().pressure());
    }

    @Test
    void pressuresThatFailBetweenTwoThatHoldAreNotPassedOver() {
        MapFindings found = findings(new double[] {5, -1, 30, 20});
        assertEquals(2, found.rows().get(0).ranges().size());
        assertTrue(found.rows().get(0).ranges().get(0).below().isEmpty(), "lower ones were not tried");
        assertTrue(found.rows().get(0).ranges().get(1).above().isEmpty(), "higher ones were not tried");
    }

    @Test
    void aPointThatIsNotKnownNeitherHoldsNorFails() {
        MapFindings found = findings(new double[] {5, UNKNOWN, -30});
        assertEquals(1, found.notKnown());
        assertEquals(1, found.holding());
        assertEquals(Map.of("hot-idle", 1), found.failing());
        MapFindings.PressureSpan range = found.rows().get(0).ranges().get(0);
        assertTrue(range.above().orElseThrow().least().isEmpty());
    }

    @Test
    void aBoreThatHoldsNowhereKeepsItsLeastBadPoint() {
        MapFindings found = findings(new double[] {-20, -5, -30}, new double[] {-40, -50, -60});
        assertEquals(List.of(), found.rows().get(0).ranges());
        assertEquals(10e5, found.rows().get(0).best().orElseThrow().pressure());
        assertTrue(found.best().isEmpty());
        assertEquals(List.of("stall", "hot-idle"), List.copyOf(found.failing().keySet()), "the most first");
        assertEquals(4, found.failing().get("stall"));
    }
}
