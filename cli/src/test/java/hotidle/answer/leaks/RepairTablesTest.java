package hotidle.answer.leaks;

import static hotidle.answer.leaks.MadeRepairs.bore;
import static hotidle.answer.leaks.MadeRepairs.effect;
import static hotidle.answer.leaks.MadeRepairs.repairs;
import static hotidle.answer.leaks.MadeRepairs.scores;
import static hotidle.answer.leaks.MadeRepairs.step;
import static hotidle.answer.leaks.MadeRepairs.tables;
import static hotidle.answer.leaks.MadeRepairs.uncommanded;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.answer.phrase.RepairPhrase;
import hotidle.study.RepairFindings;
import hotidle.study.Repairs;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class RepairTablesTest {

    private static final Repairs.Effect LOW = effect(7, 2, 20);
    private static final Repairs.Step FACE = step(effect(8, 2.1, 18), bore("pump", 40));
    private static final Repairs.Step REGULATOR =
            step(effect(10, 3, 12, OptionalDouble.of(620)), bore("regulator", 60));

    private static String row(String text, String start) {
        return text.lines().filter(line -> line.startsWith(start)).findFirst().orElseThrow();
    }

    @Test
    void aRepairStandsWithBothSizesAndWhatTheUnitDoesAfterIt() {
        String text = tables(repairs(LOW, List.of(FACE), List.of())).text();
        assertTrue(
                row(text, "(as it is)").matches("\\(as it is\\) +7\\.00 bar +20\\.0 L/min +2\\.0 L/min +none"), text);
        assertTrue(
                row(text, "pump.bore")
                        .matches("pump\\.bore +14\\.040 mm +14\\.000 mm +8\\.00 bar +18\\.0 L/min +2\\.1 L/min +none"),
                text);
        assertFalse(text.contains("Best order"), "nothing is put in order");
    }

    @Test
    void inTheOrderTheRepairThatHoldsTheLineFirstIsMarked() {
        String text =
                tables(repairs(LOW, List.of(FACE), List.of(FACE, REGULATOR))).text();
        assertFalse(row(text, "1. pump").contains("<-"), text);
        assertTrue(row(text, "2. regulator").contains("2. regulator.bore  <- held"), text);
        assertTrue(row(text, "2. regulator").endsWith(" 620"), text);
    }

    @Test
    void aRepairThatNoGaugeShowsIsSaidToBeSo() {
        Repairs.Step nothing = step(effect(7.05, 2, 19), bore("bore-01", 5));
        String text = tables(repairs(LOW, List.of(nothing), List.of(nothing))).text();
        assertTrue(row(text, "1. bore-01").contains(RepairPhrase.UNSEEN), text);
    }

    @Test
    void anOnsetAtTheLowestSpeedSearchedMayLieLower() {
        Repairs.Step all = step(effect(10, 3, 12, OptionalDouble.of(400)), bore("regulator", 60));
        assertTrue(row(tables(repairs(LOW, List.of(all), List.of())).text(), "regulator")
                .endsWith("<= 400"));
    }

    @Test
    void fifteenRepairsAreListedAndTheOthersCountedButASpreadsheetGetsThemAll() {
        List<Repairs.Step> many = new ArrayList<>();
        for (int i = 0; i < 17; i++) {
            many.add(step(effect(8 - 0.01 * i, 2, 18), bore("bore-" + i, 20)));
        }
        RepairTables tables = tables(repairs(LOW, many, List.of()));
        assertEquals(
                15,
                tables.text().lines().filter(line -> line.startsWith("bore-")).count());
        assertTrue(tables.text().contains("\n  and 2 more that win less; --format csv lists them\n"), tables.text());
        assertEquals(17, tables.rows().size());
    }

    @Test
    void aUnitAsNewHasNothingToRepair() {
        String text = tables(repairs(LOW, List.of(), List.of())).text();
        assertTrue(text.contains("Nothing: no fit is worn beyond new."), text);
        assertFalse(text.contains("repair  "), text);
    }

    @Test
    void scoresAreExplainedOnlyWhereAPumpHasSome() {
        String scores = text(tables(repairs(LOW, List.of(step(effect(8, 2, 18), scores("pump"))), List.of())));
        assertTrue(scores.contains(RepairPhrase.SCORES), scores);
        assertTrue(scores.contains("pump.orifice-slip-area 0.40 mm2 0.10 mm2"), scores);
        assertFalse(text(tables(repairs(LOW, List.of(FACE), List.of()))).contains("stands for scores"));
    }

    private static String text(RepairTables tables) {
        return tables.text().replaceAll("\\s+", " ");
    }

    @Test
    void twoChambersAreExplainedOnlyWhereThereAreTwo() {
        Repairs repairs = repairs(LOW, List.of(FACE), List.of());
        RepairTables two = new RepairTables(
                UnitSystem.SHOP,
                new RepairNames(Map.of(), UnitSystem.SHOP),
                repairs,
                RepairFindings.of(repairs, true, 15),
                true,
                true,
                400 / 60.0);
        assertTrue(text(two).contains(RepairPhrase.CHAMBERS));
        assertTrue(text(two).contains("pump.bore 0.5528 in 0.5512 in 116 psi 4.76 gpm 0.55 gpm none"), two.text());
        assertFalse(text(tables(repairs)).contains(RepairPhrase.CHAMBERS));
    }

    /** A bench has neither lubrication nor a set pressure that could be held. */
    @Test
    void columnsOfWhatAUnitDoesNotHaveAreLeftOut() {
        Repairs repairs =
                repairs(uncommanded(3, 0.6), List.of(step(uncommanded(3.2, 0.5), bore("pump", 30))), List.of());
        RepairTables bench = new RepairTables(
                UnitSystem.METRIC,
                MadeRepairs.names(Map.of()),
                repairs,
                RepairFindings.of(repairs, false, 15),
                false,
                false,
                400 / 60.0);
        String head = row(bench.text(), "repair");
        assertFalse(head.contains("lube") || head.contains("onset"), head);
        assertTrue(row(bench.text(), "pump.bore").endsWith("3.20 bar  0.5 L/min"), bench.text());
        assertEquals("-", bench.rows().get(0).get(8), "no onset where nothing is commanded");
    }

    /** Alone against the unit as it is, in the order against the repairs before. */
    @Test
    void aRowOfTheOrderCountsTheOilSavedOnTopOfThoseBefore() {
        List<List<String>> rows = tables(repairs(LOW, List.of(REGULATOR, FACE), List.of(REGULATOR, FACE)))
                .rows();
        assertEquals(
                List.of("repair", "repair", "order", "order"),
                rows.stream().map(row -> row.get(0)).toList());
        assertEquals("8.0", rows.get(0).get(4), "20 less 12");
        assertEquals("2.0", rows.get(1).get(4), "20 less 18");
        assertEquals("8.0", rows.get(2).get(4));
        assertEquals("-6.0", rows.get(3).get(4), "12 less 18");
        assertEquals("bore 14.060 mm to 14.000 mm", rows.get(0).get(2));
    }
}
