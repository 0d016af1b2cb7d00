package hotidle.answer.sweep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.answer.format.Wrap;
import hotidle.study.FrictionBands;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which columns and speeds of a sweep a first screen has room for. */
class SweepColumnsTest {

    private static final FrictionBands BANDS = FrictionBands.of(List.of(SweepAnswerTest.WORN));

    private static List<String> heads(List<SweepColumns.Column> columns) {
        return columns.stream().map(SweepColumns.Column::head).toList();
    }

    private static SweepScreen screen() {
        return new SweepScreen(SweepAnswerTest.WORN, BANDS, UnitSystem.SHOP);
    }

    private static long rows(String table) {
        return table.lines().filter(line -> line.matches("\\d+ +\\d.*")).count();
    }

    @Test
    void aUnitThatIsCommandedHasItsSetPressureBesideItsLine() {
        List<String> heads = heads(SweepColumns.of(SweepAnswerTest.WORN, BANDS, UnitSystem.METRIC));
        assertEquals(List.of("set bar", "line bar", "regulator"), heads.subList(0, 3));
        assertTrue(heads.contains("film um"), heads.toString());
        assertFalse(heads.contains("line at least bar"), "its spools slide freely, so there is no band");
    }

    @Test
    void aBenchHasItsGaugesAndNothingThatIsCommanded() {
        List<String> heads = heads(SweepColumns.of(
                SweepAnswerTest.BENCH, FrictionBands.of(List.of(SweepAnswerTest.BENCH)), UnitSystem.METRIC));
        assertFalse(heads.contains("set bar"), heads.toString());
        assertEquals(SweepAnswerTest.BENCH.unit().taps().size() + 1, heads.size());
    }

    @Test
    void aFirstScreenDoesWithoutWhatOnlyFollows() {
        List<String> all = heads(SweepColumns.of(SweepAnswerTest.WORN, BANDS, UnitSystem.SHOP));
        List<String> deciding = heads(SweepColumns.deciding(SweepAnswerTest.WORN, BANDS, UnitSystem.SHOP));
        assertTrue(all.containsAll(deciding));
        assertTrue(all.contains("cooler gpm") && !deciding.contains("cooler gpm"), deciding.toString());
        assertTrue(deciding.contains("line psi"), deciding.toString());
    }

    @Test
    void theColumnThatSaysLeastGoesFirst() {
        List<SweepColumns.Column> columns =
                new ArrayList<>(SweepColumns.deciding(SweepAnswerTest.WORN, BANDS, UnitSystem.SHOP));
        assertTrue(columns.get(SweepColumns.least(columns)).head().startsWith("power "));
        columns.remove(SweepColumns.least(columns));
        assertTrue(columns.get(SweepColumns.least(columns)).head().startsWith("leaks "));
        List<SweepColumns.Column> bare = columns.subList(0, 2);
        assertEquals(1, SweepColumns.least(bare), "of those that say most the last");
    }

    @Test
    void whereThereIsRoomEverySpeedIsShown() {
        String table = screen().table(20);
        assertEquals(4 + SweepAnswerTest.WORN.lookedFor().size(), rows(table), table);
        assertFalse(table.contains("speeds shown"), table);
        table.lines().forEach(line -> assertTrue(line.length() <= Wrap.WIDTH, line));
    }

    @Test
    void whereThereIsLittleTheFirstAndTheLastSpeedStay() {
        int lookedFor = SweepAnswerTest.WORN.lookedFor().size();
        String table = screen().table((int) (screen().table(20).lines().count() - 1));
        assertTrue(rows(table) < 4 + lookedFor, table);
        assertTrue(table.lines().anyMatch(line -> line.startsWith("600 ")), table);
        assertTrue(table.lines().anyMatch(line -> line.startsWith("2400 ")), table);
        assertTrue(table.contains(" of the 4 speeds asked for shown"), table);
    }

    @Test
    void whereThereIsNoRoomForThreeRowsNoneIsShown() {
        assertEquals("0 of the 4 speeds asked for shown (--full has all).\n", screen().table(2));
    }
}
