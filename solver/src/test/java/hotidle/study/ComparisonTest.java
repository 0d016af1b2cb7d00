package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.StateFault;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The unit of ten nodes as new and four times as worn, side by side at its only duty point, hot idle. */
class ComparisonTest {

    private static final List<Double> SPEEDS =
            IntStream.rangeClosed(2, 12).mapToObj(i -> 250.0 * i / 60).toList();
    private static final Transmission FRESH = TenNodes.worn(1);
    private static final Transmission WORN = TenNodes.worn(4);
    private static final Comparison BOTH = Comparison.of(List.of(FRESH, WORN), SPEEDS);

    private static Comparison.BuildAtDuty cell(Transmission unit) {
        return BOTH.cell(unit.build(), "hot-idle");
    }

    @Test
    void aUnitThatDoesNotHoldItsLineAtIdleIsNotStallTested() {
        assertTrue(cell(FRESH).figures().orElseThrow().regulated());
        assertTrue(!cell(WORN).figures().orElseThrow().regulated());
        assertEquals(List.of(WORN.build()), BOTH.lowAtIdle());
    }

    @Test
    void wearMovesTheOnsetOfRegulationUp() {
        assertEquals(OnsetShift.MOVED, cell(WORN).onsetSince(cell(FRESH)));
        assertEquals(OnsetShift.SAME, cell(WORN).onsetSince(cell(WORN)));
        assertTrue(cell(WORN).sweep().onset().getAsDouble()
                > cell(FRESH).sweep().onset().getAsDouble());
    }

    @Test
    void thePumpTakesMostPowerWhereTheLineIsHighest() {
        Comparison.BuildAtDuty most = BOTH.mostPower().orElseThrow();
        double power = most.figures().orElseThrow().pumpPower();
        assertTrue(power > 0);
        BOTH.cells().forEach(cell -> assertTrue(cell.figures().orElseThrow().pumpPower() <= power));
        assertEquals(FRESH.build(), most.unit().build());
    }

    @Test
    void theWorstFilmOfABuildIsLookedForInThatBuildOnly() {
        for (Transmission unit : List.of(FRESH, WORN)) {
            Comparison.BuildAtDuty worst = BOTH.worstFilm(unit.build());
            assertEquals(unit.build(), worst.unit().build());
            assertEquals(
                    worst.sweep().thinnestFilm().map(state -> state.conditions().speed()),
                    worst.thinnestFilm().map(ThinnestFilm::speed));
        }
    }

    @Test
    void theWornUnitsLineIsLowAtHotIdleAndTheFreshOnesIsNot() {
        assertTrue(faults(FRESH).noneMatch(StateFault.Kind.LINE_LOW::equals));
        assertTrue(faults(WORN).anyMatch(StateFault.Kind.LINE_LOW::equals));
        assertEquals("hot-idle", BOTH.failing(WORN.build()).get(0).duty().name());
        assertTrue(BOTH.weakestLink(WORN.build()).isEmpty(), "no clutch is applied, and nothing has a rating");
        assertEquals(1, BOTH.only(List.of("hot-idle")).of(WORN.build()).count());
    }

    private static Stream<StateFault.Kind> faults(Transmission unit) {
        return cell(unit).faults().stream().map(StateFault::kind);
    }

    @Test
    void theFilmIsThinnestAtSomeSpeedAtWhichTheUnitRuns() {
        RunningFilm film = cell(FRESH).hubFilm().orElseThrow();
        assertTrue(film.speed() >= 650 / 60.0);
        assertTrue(film.contact() || film.film().getAsDouble() > 0);
        assertEquals(film.fails(), film.contact() || film.film().getAsDouble() < film.allowed());
    }

    @Test
    void whatShutLandsLetBackIsNoLossThatARepairWouldSave() {
        double fresh = cell(FRESH).assessed().orElseThrow().budget().lost();
        double worn = cell(WORN).assessed().orElseThrow().budget().lost();
        assertTrue(worn > fresh && fresh > 0);
    }
}
