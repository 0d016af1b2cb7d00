package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Margin;
import hotidle.assess.StateFault;
import hotidle.study.Comparison.BuildAtDuty;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A new and a worn build with two clutches at hot idle in first and cruising in second. */
class ComparisonOfDutiesTest {

    private static final Transmission FRESH = TenNodesByRatio.worn(1);
    private static final Transmission WORN = TenNodesByRatio.worn(4);
    private static final Comparison BOTH = Comparison.of(
            List.of(FRESH, WORN), List.of(500 / 60.0, 1000 / 60.0, 1500 / 60.0, 2000 / 60.0, 2500 / 60.0));

    private static BuildAtDuty cell(Transmission unit, String duty) {
        return BOTH.cell(unit.build(), duty);
    }

    @Test
    void buildsAndDutiesStandInTheOrderAskedFor() {
        assertEquals(
                List.of(FRESH.build(), WORN.build()),
                BOTH.units().stream().map(Transmission::build).toList());
        assertEquals(List.of("hot-idle", "cruise"), names(BOTH.duties()));
        assertEquals(4, BOTH.cells().size());
        assertEquals(List.of("cruise"), names(BOTH.only(List.of("cruise")).duties()));
    }

    /** At idle the low clutch carries 40·1.8 N·m alone, cruising either carries half of 60·1.1. */
    @Test
    void theWeakestClutchIsTheOneThatHoldsFirstAtIdle() {
        for (Transmission unit : List.of(FRESH, WORN)) {
            BuildAtDuty weakest = BOTH.weakestLink(unit.build()).orElseThrow();
            assertEquals("hot-idle", weakest.duty().name());
            Margin margin = weakest.weakestLink().orElseThrow();
            assertEquals("low", margin.part());
            assertEquals(margin.value().getAsDouble() / margin.needed() - 1, margin.headroom(), 1e-12);
        }
    }

    /** The clutch of second stands on the line in first as well, with 1.25 bar against its spring. */
    @Test
    void aClutchThatTheRangeDoesNotApplyDragsUnderLinePressure() {
        BuildAtDuty idle = cell(FRESH, "hot-idle");
        assertEquals(Set.of("direct"), idle.dragging().keySet());
        assertEquals(idle.figures().orElseThrow().line(), idle.dragging().get("direct"), 1);
        assertTrue(cell(FRESH, "cruise").dragging().isEmpty());
    }

    /** 72 N·m with a factor of 1.2 on arms of 0.12 and 0.10 times 6·0.06 m, and 500 N of spring, over 40 cm². */
    @Test
    void aClutchSlipsWhereItsLineIsBelowWhatItNeeds() {
        BuildAtDuty worn = cell(WORN, "hot-idle");
        assertTrue(worn.figures().orElseThrow().line() < 6.25e5);
        assertEquals(
                List.of("APPLY 6.25 bar", "APPLY_SLIDING 7.25 bar"),
                worn.slipping().stream()
                        .map(margin -> String.format(Locale.ROOT, "%s %.2f bar", margin.kind(), margin.needed() / 1e5))
                        .toList());
        assertTrue(cell(WORN, "cruise").slipping().isEmpty(), "its line is held there");
        assertTrue(cell(FRESH, "hot-idle").slipping().isEmpty());
        assertEquals(StateFault.Kind.LINE_LOW, worn.faults().get(0).kind());
        assertEquals(List.of(WORN.build()), BOTH.lowAtIdle());
    }

    @Test
    void thePumpTakesMoreCruisingThanAtIdle() {
        for (Transmission unit : List.of(FRESH, WORN)) {
            assertEquals(
                    "cruise", BOTH.mostPower(unit.build()).orElseThrow().duty().name());
        }
        assertEquals("cruise", BOTH.mostPower().orElseThrow().duty().name());
    }

    /** New, the clutch drags at idle and the film is thin cruising; worn, the line is low at idle and nothing fails cruising. */
    @Test
    void aDutyChangesTheVerdictWhereSomethingElseFailsFirst() {
        assertEquals(List.of("hot-idle"), names(BOTH.changing("cruise")));
        assertEquals(List.of("cruise"), names(BOTH.changing("hot-idle")));
        Comparison worn = new Comparison(BOTH.of(WORN.build()).toList());
        assertEquals(List.of(), names(worn.changing("hot-idle")), "where nothing fails no verdict changes");
        assertEquals(List.of("hot-idle"), names(worn.changing("cruise")));
        assertEquals(
                List.of("hot-idle"),
                names(BOTH.failing(WORN.build()).stream().map(BuildAtDuty::duty).toList()));
    }

    private static List<String> names(List<DutyPoint> duties) {
        return duties.stream().map(DutyPoint::name).toList();
    }

    @Test
    void theDutysOwnStateIsOnTheSweepWhereTheSweepHasItsSpeed() {
        BuildAtDuty cruise = cell(FRESH, "cruise");
        assertTrue(cruise.sweep().states().contains(cruise.outcome().state().orElseThrow()));
        assertEquals(650 / 60.0, cell(FRESH, "hot-idle").outcome().conditions().speed());
    }

    @Test
    void atTheDutysOwnSpeedTheFilmIsNoThinnerThanTheThinnest() {
        BuildAtDuty worst = BOTH.worstFilm(FRESH.build());
        for (String duty : List.of("hot-idle", "cruise")) {
            double film = cell(FRESH, duty).thinnestFilm().orElseThrow().film();
            assertTrue(worst.thinnestFilm().orElseThrow().film() <= film);
        }
    }
}
