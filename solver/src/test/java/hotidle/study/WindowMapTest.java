package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.transmission.Adjustable;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class WindowMapTest {

    private static final double PSI = TenNodes.PSI;
    private static final List<Double> SPEEDS = List.of(10.0, 20.0, 40.0);
    private static final double VALVE = 0.0127 * 12;
    private static final Adjustable BUILD = Fits.worn(3);
    private static final WearSize BORE = BUILD.dimension("bores.bore").orElseThrow();
    private static final WindowMap.Axis CLEARANCE = new WindowMap.Axis("bores.clearance", BORE, VALVE);
    private static final List<Double> PRESSURES = List.of(80 * PSI, 120 * PSI, 160 * PSI);

    /** Two solves of one state, from different starts, agree to this headroom [-]. */
    private static final double SAME_STATE = 1e-7;

    private static WindowMap map(List<Double> clearances) {
        return WindowMap.study(
                BUILD, CLEARANCE, PRESSURES, SetPressure.By.COMMAND_AND_SPRING, clearances, SPEEDS, () -> {});
    }

    @Test
    void eachPointIsTheWorstOfAllLimitsOfThatUnit() {
        WindowMap map = map(List.of(20e-6, 60e-6));
        assertTrue(map.known());
        for (int row : List.of(0, 2)) {
            for (int column : List.of(0, 1, 3)) {
                WindowMap.MapCell cell = map.cells().get(row).get(column);
                Transmission made =
                        BUILD.with(BORE, VALVE + map.values().get(row)).orElseThrow();
                Transmission set = SetPressure.of(made, map.pressures().get(column));
                double least = Judgement.of(set, set.duties().get(0), SPEEDS)
                        .least()
                        .orElseThrow()
                        .headroom();
                assertEquals(least, cell.headroom().orElseThrow(), SAME_STATE);
                assertEquals("hot-idle", cell.least().orElseThrow().key().duty());
            }
        }
        for (int column = 0; column < map.pressures().size(); column++) {
            assertTrue(
                    map.cells().get(2).get(column).headroom().orElseThrow()
                            != map.cells().get(0).get(column).headroom().orElseThrow(),
                    "the bore changes what is left");
        }
    }

    @Test
    void theBuildAndTheNewSizeAreSolvedWhereTheyAreAndNamed() {
        WindowMap map = map(List.of(20e-6, 60e-6));
        List<String> names = new ArrayList<>();
        map.marks().forEach(mark -> names.add(mark.name()));
        assertEquals(List.of(BUILD.unit().build(), "new"), names);
        WindowMap.MapCell own = map.marks().get(0).cell();
        assertEquals(72e-6, own.value(), 1e-12);
        assertEquals(150 * PSI, own.pressure(), 1e-6);
        assertEquals(24e-6, map.marks().get(1).cell().value(), 1e-12);
    }

    /** A picture colours the field around each point: a label within it says the same only where the point is that of the label. */
    @Test
    void whatIsSaidOfTheBuildAndOfTheNewSizeIsWhatTheFieldThereShows() {
        WindowMap map = map(List.of(20e-6, 60e-6, 90e-6));
        assertEquals(List.of(80 * PSI, 120 * PSI, 150 * PSI, 160 * PSI), map.pressures());
        assertEquals(5, map.values().size());
        assertEquals(20, WindowMap.points(BUILD, CLEARANCE, PRESSURES, List.of(20e-6, 60e-6, 90e-6)));
        for (WindowMap.NamedCell mark : map.marks()) {
            int row = map.values().indexOf(mark.cell().value());
            int column = map.pressures().indexOf(mark.cell().pressure());
            assertEquals(map.cells().get(row).get(column), mark.cell(), mark.name());
        }
        double own = Judgement.of(BUILD.unit(), BUILD.unit().duties().get(0), SPEEDS)
                .least()
                .orElseThrow()
                .headroom();
        assertEquals(own, map.marks().get(0).cell().headroom().orElseThrow(), SAME_STATE);
    }

    @Test
    void aBuildOutsideTheMapIsNamedButNotDrawnIntoIt() {
        WindowMap map = map(List.of(30e-6, 60e-6));
        assertEquals(List.of(30e-6, 60e-6), map.values());
        assertEquals(72e-6, map.marks().get(0).cell().value(), 1e-12);
        assertTrue(map.marks().get(0).cell().least().isPresent());
    }

    @Test
    void aSizeThatCannotBeIsNotKnownAndHasNoNumber() {
        WindowMap map = map(List.of(-5e-6, 20e-6));
        assertFalse(map.known());
        for (WindowMap.MapCell cell : map.cells().get(0)) {
            assertTrue(cell.headroom().isEmpty());
            assertEquals(
                    WindowMap.UnknownCell.Obstacle.SIZE_IMPOSSIBLE,
                    cell.why().orElseThrow().obstacle());
        }
    }
}
