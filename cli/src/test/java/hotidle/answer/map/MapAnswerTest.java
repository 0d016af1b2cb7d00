package hotidle.answer.map;

import static hotidle.answer.map.MadeMaps.HIGH;
import static hotidle.answer.map.MadeMaps.KNOWN;
import static hotidle.answer.map.MadeMaps.LOW;
import static hotidle.answer.map.MadeMaps.answer;
import static hotidle.answer.map.MadeMaps.axis;
import static hotidle.answer.map.MadeMaps.contact;
import static hotidle.answer.map.MadeMaps.lube;
import static hotidle.answer.map.MadeMaps.map;
import static hotidle.answer.map.MadeMaps.unknown;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import hotidle.answer.format.Json;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.assess.Margin;
import hotidle.plots.MapChart;
import hotidle.study.Judgement;
import hotidle.study.WindowMap;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A map of two set pressures, 5 and 10 bar, and two clearances, 0.1 and 0.2 mm: made values, nothing is solved. */
class MapAnswerTest {

    private static List<String> lines(WindowMap map, UnitSystem units) {
        return answer(map, units).full().lines().toList();
    }

    @Test
    void eachCellHasItsHeadroomAndTheLetterOfTheLimitThatDecides() {
        List<String> lines = lines(KNOWN, UnitSystem.METRIC);
        assertTrue(lines.contains("5.00      +5 A  contact B"), String.join("\n", lines));
        assertTrue(lines.contains("10.00    +32 A      -12 A"), String.join("\n", lines));
        assertTrue(lines.contains("  A  lubrication (lube-rear) at hot-idle"));
        assertTrue(lines.contains("  B  hub film (hub) at stall"));
    }

    @Test
    void theHeadTellsTheSizeInTheUnitsOfTheUser() {
        assertTrue(
                lines(KNOWN, UnitSystem.METRIC).stream().anyMatch(line -> line.matches("set bar +0\\.100 +0\\.200")));
        assertTrue(
                lines(KNOWN, UnitSystem.SHOP).stream().anyMatch(line -> line.matches("set psi +0\\.0039 +0\\.0079")));
    }

    /** Twenty micrometres are 0.8 thousandths of an inch: in inches every column would read the same. */
    @Test
    void smallSizesAreToldInThousandthsOrMicrometres() {
        WindowMap fine = map(20e-6, lube(HIGH, 40e-6, 0.1));
        assertTrue(lines(fine, UnitSystem.SHOP).stream().anyMatch(line -> line.matches("set psi +0\\.787 +1\\.575")));
        assertTrue(lines(fine, UnitSystem.METRIC).stream().anyMatch(line -> line.matches("set bar +20\\.0 +40\\.0")));
    }

    @Test
    void theBuildsOwnPointStandsInASentenceAboveTheTable() {
        String screen = answer(KNOWN, UnitSystem.METRIC).full();
        assertTrue(
                screen.contains(
                        "worn, hub.clearance 0.100 mm at 5.00 bar: narrow, +5 %; lubrication (lube-rear) at hot-idle"),
                screen);
        assertTrue(screen.startsWith("rig: a bench\n"), screen);
    }

    @Test
    void aPointThatIsNotKnownIsAQuestionMarkWithItsReasonAndTheAnswerIsNotComplete() {
        WindowMap map = map(1e-4, unknown(HIGH, 2e-4));
        MapAnswer answer = answer(map, UnitSystem.METRIC);
        assertFalse(answer.complete());
        assertTrue(answer.full().contains("  ?  not known at 1 point: unsolved at stall\n"), answer.screen());
        assertTrue(answer.csv().contains(",-,not known,-,-,-,unsolved at stall\n"), answer.csv());
        JsonNode point = Json.tree(answer.json()).at("/builds/0/map/points/3");
        assertTrue(point.get("headroom").isNull() && point.get("margin").isNull(), point.toString());
        assertEquals("unsolved at stall", point.get("why_not_known").textValue());
        assertTrue(answer(KNOWN, UnitSystem.METRIC).complete());
    }

    @Test
    void aNamedPointThatIsNotKnownLeavesTheAnswerIncompleteToo() {
        WindowMap map = map(1e-4, lube(HIGH, 2e-4, 0.2), new WindowMap.NamedCell("as measured", unknown(LOW, 1.5e-4)));
        MapAnswer answer = answer(map, UnitSystem.METRIC);
        assertFalse(answer.complete());
        assertTrue(
                answer.full()
                        .contains("worn with that size as measured, hub.clearance 0.150 mm at 5.00 bar: NOT KNOWN"),
                answer.full());
    }

    @Test
    void aSpreadsheetGetsTheNamedPointsFirstAndNoNumberForAFilmThatIsNotKnown() {
        List<String> rows = answer(KNOWN, UnitSystem.METRIC).csv().lines().toList();
        assertEquals(
                "build,point,set bar,hub.clearance mm,headroom,verdict,limit,part,duty,why not known", rows.get(0));
        assertEquals("worn,worn,5.00,0.1,0.05,close,lubrication,lube-rear,hot-idle,", rows.get(1));
        assertEquals(6, rows.size());
        assertTrue(rows.contains("worn,,5.00,0.2,-,fails,film,hub,stall,"), rows.toString());
    }

    @Test
    void theRecordIsInSiAndMetalContactIsNoNumberInIt() {
        JsonNode map = Json.tree(answer(KNOWN, UnitSystem.SHOP).json()).at("/builds/0/map");
        assertEquals("m", map.get("size_unit").textValue());
        assertEquals("worn", map.at("/named_points/0/name").textValue());
        assertEquals(LOW, map.at("/points/0/set_pressure_pa").doubleValue());
        assertEquals(1e-4, map.at("/points/0/size").doubleValue());
        assertEquals(0.05, map.at("/points/0/headroom").doubleValue(), 1e-12);
        JsonNode contact = map.at("/points/2");
        assertTrue(contact.get("headroom").isNull(), contact.toString());
        assertEquals("fails", contact.get("verdict").textValue());
        assertEquals("film", contact.get("margin").textValue());
    }

    @Test
    void thePictureShowsTheSameNumbersTheShopLimitAndWhatTheLettersMean() {
        List<hotidle.plots.Chart> charts = answer(KNOWN, UnitSystem.METRIC).charts();
        assertEquals(1, charts.size());
        MapChart chart = (MapChart) charts.get(0);
        assertEquals(List.of(5.0, 10.0), chart.xs());
        assertEquals(0.2, chart.ys().get(1), 1e-12);
        assertEquals(32, chart.cells().get(0).get(1).headroom(), 1e-9);
        assertEquals(Double.NEGATIVE_INFINITY, chart.cells().get(1).get(0).headroom());
        assertEquals("lubrication (lube-rear) at hot-idle", chart.key().get("A"));
        assertEquals("worn: +5 %", chart.marks().get(0).name());
        assertEquals("shop limit", chart.levels().get(0).name());
        assertEquals(0.18, chart.levels().get(0).y(), 1e-9);
        assertEquals(
                charts, answer(KNOWN, UnitSystem.METRIC).picture().orElseThrow().charts());
    }

    @Test
    void manyLimitsHaveManyLetters() {
        List<WindowMap.MapCell> row = new java.util.ArrayList<>();
        for (int i = 0; i < 28; i++) {
            Judgement.Key key = new Judgement.Key("duty-" + i, Margin.Kind.COOLER, "cooler");
            Margin margin = Margin.of(Margin.Kind.COOLER, "cooler", 2, 1, Margin.Scale.FLOW);
            row.add(new WindowMap.MapCell(
                    LOW + i,
                    1e-4,
                    Optional.of(new WindowMap.LeastMargin(key, margin)),
                    Optional.empty(),
                    List.of(),
                    Map.of()));
        }
        WindowMap map = new WindowMap(
                axis(WearSize.SizeKind.LENGTH, OptionalDouble.empty()),
                row.stream().map(WindowMap.MapCell::pressure).toList(),
                List.of(1e-4),
                List.of(row),
                List.of());
        List<String> letters =
                List.copyOf(new MapGrid(UnitSystem.SHOP, map).letters().values());
        assertEquals("A", letters.get(0));
        assertEquals("Z", letters.get(25));
        assertEquals("A1", letters.get(26));
        assertEquals(28, letters.stream().distinct().count());
    }

    @Test
    void anAreaIsToldAsAnArea() {
        WindowMap.MapCell cell = lube(LOW, 4e-7, 20);
        WindowMap map = new WindowMap(
                axis(WearSize.SizeKind.AREA, OptionalDouble.empty()),
                List.of(LOW),
                List.of(4e-7),
                List.of(List.of(cell)),
                List.of());
        assertTrue(lines(map, UnitSystem.METRIC).stream().anyMatch(line -> line.matches("set bar +0\\.40")));
        assertTrue(answer(map, UnitSystem.METRIC).full().contains("ample A"), "twenty times what is needed");
        assertEquals(
                "m2",
                Json.tree(answer(map, UnitSystem.METRIC).json())
                        .at("/builds/0/map/size_unit")
                        .textValue());
    }

    @Test
    void eachCauseOfAPointThatIsNotKnownIsSaid() {
        assertEquals("the size is impossible", why(WindowMap.UnknownCell.Obstacle.SIZE_IMPOSSIBLE, Optional.empty()));
        assertEquals("no limit is judged", why(WindowMap.UnknownCell.Obstacle.NOTHING_JUDGED, Optional.empty()));
        assertEquals("unsolved at stall", why(WindowMap.UnknownCell.Obstacle.UNSOLVED, Optional.of("stall")));
        assertEquals("", WhyNotKnown.of(lube(LOW, 1e-4, 0.1)));
    }

    private static String why(WindowMap.UnknownCell.Obstacle cause, Optional<String> duty) {
        return WhyNotKnown.of(new WindowMap.MapCell(
                LOW, 1e-4, Optional.empty(), Optional.of(new WindowMap.UnknownCell(cause, duty)), List.of(), Map.of()));
    }
}
