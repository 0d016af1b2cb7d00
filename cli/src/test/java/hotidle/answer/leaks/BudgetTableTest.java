package hotidle.answer.leaks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.assess.OilBudget;
import hotidle.network.Group;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A made budget of 20 L/min, path by path. */
class BudgetTableTest {

    private static OilBudget.Path path(String part, String name, Group group, OilBudget.Fate fate, double litres) {
        return new OilBudget.Path(part, name, group, fate, litres / 6e4);
    }

    private static final OilBudget BUDGET = new OilBudget(
            20 / 6e4,
            List.of(
                    path("pump", "face", Group.PUMP, OilBudget.Fate.SLIP, 9),
                    path("pump", "tip-drag", Group.PUMP, OilBudget.Fate.SLIP, -1),
                    path("bore-14", "", Group.VALVE_BODY, OilBudget.Fate.LEAK, 3),
                    path("bore-01", "", Group.VALVE_BODY, OilBudget.Fate.LEAK, 0.06),
                    path("bore-02", "", Group.VALVE_BODY, OilBudget.Fate.LEAK, 0.05),
                    path("ring", "", Group.RINGS, OilBudget.Fate.LEAK, 0.04),
                    path("lube-rear", "", Group.LUBE, OilBudget.Fate.USED, 0.05),
                    path("regulator", "bypass", Group.VALVE_BODY, OilBudget.Fate.RECIRCULATED, 8.8)));

    private static List<String> lines(OilBudget budget, Map<String, String> abouts) {
        return new BudgetTable(UnitSystem.METRIC, budget, abouts).text().lines().toList();
    }

    private static List<String> lines() {
        return lines(BUDGET, Map.of("bore-14", "low-clutch accumulator"));
    }

    private static String row(String label) {
        return lines().stream()
                .filter(line -> line.startsWith(label + "  "))
                .findFirst()
                .orElseThrow(() -> new AssertionError(label + " in " + String.join("\n", lines())))
                .replaceAll(" +", " ");
    }

    @Test
    void eachFateIsToldWithItsFlowAndItsShareOfWhatThePumpDisplaces() {
        assertEquals("pump displaces 20.0 100 %", row("pump displaces"));
        assertEquals("pump slip 8.0 40 %", row("pump slip"));
        assertEquals("leaks 3.2 16 %", row("leaks"));
        assertEquals("back to the inlet past the regulator 8.8 44 %", row("back to the inlet past the regulator"));
        assertFalse(lines().stream().anyMatch(line -> line.startsWith("spilled")), "no valve spills");
    }

    @Test
    void leaksStandUnderTheirHeadingWithTheNoteOfTheirPart() {
        assertEquals(" valve body 3.1 16 %", row("  valve body"));
        assertEquals(" bore-14: low-clutch accumulator 3.0 15 %", row("    bore-14: low-clutch accumulator"));
    }

    @Test
    void pathsBelowHalfAPerCentArePutTogether() {
        assertEquals(" 2 smaller ones 0.1 1 %", row("    2 smaller ones"));
        assertFalse(lines().stream().anyMatch(line -> line.contains("bore-01")));
    }

    /** Its one path is small, so the heading says all. */
    @Test
    void aHeadingOfSmallPathsOnlyIsNotTakenApart() {
        int rings = lines().indexOf(lines().stream()
                .filter(line -> line.startsWith("  rings"))
                .findFirst()
                .orElseThrow());
        assertTrue(lines().get(rings + 1).startsWith("used"), lines().get(rings + 1));
    }

    @Test
    void aStarvedLubeBranchIsNewsHoweverSmall() {
        assertEquals(" lube-rear 0.1 0 %", row("    lube-rear"));
    }

    @Test
    void oilThatComesBackIsSaidToDoSo() {
        assertEquals(" pump.tip-drag (brings oil back) -1.0 -5 %", row("  pump.tip-drag (brings oil back)"));
    }

    @Test
    void aLongNoteDoesNotStandInTheTable() {
        String note = "accumulator of the low clutch, bushed once before";
        assertTrue(lines(BUDGET, Map.of("bore-14", note)).stream().noneMatch(line -> line.contains("bushed")));
    }

    @Test
    void aSumThatDoesNotCloseShouts() {
        assertTrue(String.join(" ", lines()).contains("The shares add up to what the pump displaces"));
        OilBudget open = new OilBudget(21 / 6e4, BUDGET.paths());
        String last = lines(open, Map.of()).get(lines(open, Map.of()).size() - 1);
        assertTrue(last.startsWith("THE SHARES DO NOT ADD UP to what the pump displaces: 5 % of it"), last);
    }

    @Test
    void aSpreadsheetGetsEveryPathSmallOrNot() {
        List<List<String>> rows = new BudgetTable(UnitSystem.SI, BUDGET, Map.of()).rows();
        assertEquals(BUDGET.paths().size(), rows.size());
        assertEquals(List.of("path", "bore-01", "valve body", "leaks", "0.0000010", "0.003", "", "", ""), rows.get(3));
    }
}
