package hotidle.plots;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.plot.XYPlot;
import org.junit.jupiter.api.Test;

/** Low speeds shown larger, and a second scale in the other unit. */
class EnlargementTest {

    private final SpeedChart pressures = Samples.speed();
    private final OilChart oil = Samples.oil("worn", 5);

    @Test
    void lowSpeedsAreShownOnAScaleOfTheirOwn() {
        Chart low = Enlargement.of(pressures, 1000, "low pressures");
        assertEquals("low pressures", low.title());
        assertTrue(low.scale().high() <= 1000, low.scale().toString());
        assertEquals(pressures.scale().low(), low.scale().low());
        Chart flows = Enlargement.of(oil, 1000, "low flows");
        double whole = oil.scale().tops().get(oil.axis());
        assertTrue(
                flows.scale().tops().get(oil.axis()) < whole / 2, flows.scale().toString());
    }

    @Test
    void aPictureKeepsTheScaleOfTheWholeAndExplainsCurvesOnce() {
        Chart low = Enlargement.of(pressures, 1000, "low pressures");
        assertEquals(pressures.scale(), pressures.scale().merge(low.scale()));
        String svg = new String(
                new Picture(List.of(pressures, low, oil, Enlargement.of(oil, 1000, "low flows"))).svg(""),
                StandardCharsets.UTF_8);
        assertTrue(svg.contains(">low pressures<") && svg.contains(">low flows<"));
        String explained = pressures.curves().get(2).legend();
        assertTrue(svg.contains(explained), explained);
        assertEquals(svg.indexOf(explained), svg.lastIndexOf(explained));
        List<String> levels = new SpeedDrawing(pressures, pressures.scale())
                .callouts().texts().stream()
                        .filter(text -> text.startsWith("set "))
                        .toList();
        assertFalse(levels.isEmpty());
        levels.forEach(level -> assertEquals(svg.indexOf(level), svg.lastIndexOf(level), level));
    }

    @Test
    void anEventAtAHigherSpeedIsNotInIt() {
        PressureCurve worn = pressures.curves().get(1);
        assertTrue(worn.onset().isPresent() && worn.upTo(1500).onset().isPresent());
        assertFalse(worn.upTo(1000).onset().isPresent());
    }

    @Test
    void theOtherUnitStandsAtTheRightWhereThereIsRoom() {
        OtherUnit bar = new OtherUnit("bar", 0.0689476);
        SpeedChart both = new SpeedChart(pressures.title(), "", "psi", pressures.curves(), List.of(), Optional.of(bar));
        SpeedDrawing drawing = new SpeedDrawing(both, both.scale());
        XYPlot wide = drawing.drawn(OtherUnit.ROOM).getXYPlot();
        assertEquals("[bar]", wide.getRangeAxis(1).getLabel());
        assertEquals(
                wide.getRangeAxis().getUpperBound() * bar.factor(),
                wide.getRangeAxis(1).getUpperBound(),
                1e-9);
        assertNull(drawing.drawn(OtherUnit.ROOM - 1).getXYPlot().getRangeAxis(1));
    }
}
