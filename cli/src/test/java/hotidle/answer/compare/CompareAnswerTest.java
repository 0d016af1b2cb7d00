package hotidle.answer.compare;

import static hotidle.answer.ReadyCircuits.PSI;
import static hotidle.answer.ReadyCircuits.rpm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import hotidle.answer.ReadyCircuits;
import hotidle.answer.format.Json;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.assess.Figures;
import hotidle.assess.Margin;
import hotidle.circuits.DescribedCircuit;
import hotidle.study.Comparison;
import hotidle.study.FrictionBands;
import hotidle.study.Judgement;
import hotidle.transmission.DutyPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The ready five-speed unit as new and worn, over six engine speeds. */
class CompareAnswerTest {

    private static final DescribedCircuit FIVE = ReadyCircuits.read("shuttle-five");
    private static final Comparison BOTH =
            Comparison.of(List.of(FIVE.unit("fresh"), FIVE.unit("worn")), rpm(500, 900, 1300, 1700, 2500, 3500));
    private static final String IDLE = BOTH.duties().get(0).name();

    private static CompareAnswer answer(Comparison comparison, UnitSystem units) {
        return new CompareAnswer(FIVE, comparison, FrictionBands.of(comparison), units);
    }

    private static final CompareAnswer SHOP = answer(BOTH, UnitSystem.SHOP);
    private static final String SCREEN = SHOP.full();

    private static Figures figures(String build) {
        return BOTH.cell(build, IDLE).figures().orElseThrow();
    }

    /** The comparison with the worn unit's idle not solved. */
    private static Comparison wornIdleUnsolved() {
        List<Comparison.BuildAtDuty> cells = new ArrayList<>();
        for (Comparison.BuildAtDuty cell : BOTH.cells()) {
            boolean idle =
                    cell.unit().build().equals("worn") && cell.duty().name().equals(IDLE);
            cells.add(
                    idle
                            ? new Comparison.BuildAtDuty(
                                    cell.unit(),
                                    cell.duty(),
                                    ReadyCircuits.unsolved(cell.unit(), cell.duty()),
                                    Optional.empty(),
                                    cell.sweep())
                            : cell);
        }
        return new Comparison(cells);
    }

    private static String tableOf(String screen, String duty) {
        int start = screen.indexOf("\n" + duty);
        return screen.substring(start, screen.indexOf("\n\n", start + 1));
    }

    private static String row(String table, String label) {
        return table.lines()
                .filter(line -> line.startsWith(label))
                .findFirst()
                .orElseThrow(() -> new AssertionError(label + " in " + table));
    }

    @Test
    void everyDutyPointHasATableWithAColumnForEachBuild() {
        for (DutyPoint duty : BOTH.duties()) {
            String table = tableOf(SCREEN, duty.name());
            assertTrue(table.lines().anyMatch(line -> line.matches(" +fresh +worn")), table);
        }
    }

    @Test
    void theLinePressureIsThatOfTheSolvedStateInTheUnitsAskedFor() {
        String shop = row(tableOf(SCREEN, IDLE), "line pressure [psi]");
        assertTrue(
                shop.matches(String.format(
                        Locale.ROOT,
                        "line pressure \\[psi\\] +%.0f +%.0f",
                        figures("fresh").line() / PSI,
                        figures("worn").line() / PSI)),
                shop);
        String metric = row(tableOf(answer(BOTH, UnitSystem.METRIC).full(), IDLE), "line pressure [bar]");
        assertTrue(
                metric.matches(String.format(
                        Locale.ROOT,
                        "line pressure \\[bar\\] +%.2f +%.2f",
                        figures("fresh").line() / 1e5,
                        figures("worn").line() / 1e5)),
                metric);
    }

    @Test
    void theWornUnitOnItsSeatIsNotRegulatedAndMustNotBeStallTested() {
        String regulator = row(tableOf(SCREEN, IDLE), "  regulator");
        assertTrue(regulator.matches("  regulator +regulating +on its seat"), regulator);
        assertTrue(SCREEN.contains("IDLE PRESSURE IS LOW with worn: no stall test"), SCREEN);
        assertTrue(SCREEN.contains("worn cannot hold its 150 psi at " + IDLE));
    }

    @Test
    void wearIsToldAgainstTheBuildBeforeItAndTheFirstAgainstNone() {
        String said = SCREEN.replaceAll("\\s+", " ");
        assertTrue(said.contains("Against fresh, at " + IDLE + ": line falls from"), said);
        assertTrue(said.contains("The speed from which it holds moves from"), said);
        assertFalse(said.contains("Against worn"), said);
    }

    /** What margins calls narrow is not plainly sound here: the limits that a state has are those of its judgement. */
    @Test
    void whatHoldsOnlyJustIsTheNarrowestLimitOfTheSameState() {
        Comparison restored = Comparison.of(List.of(FIVE.unit("restored")), rpm(500, 2500));
        Comparison.BuildAtDuty cell = restored.narrowest("restored").orElseThrow();
        Margin narrow = cell.narrow().orElseThrow();
        assertEquals(Margin.Verdict.CLOSE, narrow.verdict());
        Margin judged = Judgement.of(cell.unit(), cell.duty(), rpm(500, 2500)).margins().stream()
                .filter(margin ->
                        margin.kind() == narrow.kind() && margin.part().equals(narrow.part()))
                .findFirst()
                .orElseThrow();
        assertEquals(judged.headroom(), narrow.headroom(), 1e-6);
        String screen = answer(restored, UnitSystem.SHOP).screen();
        assertTrue(screen.contains("NARROW: restored +"), screen);
        assertTrue(screen.contains("none, narrow"), screen);
    }

    @Test
    void aStateThatWasNotFoundIsNoNumberAnywhere() {
        CompareAnswer answer = answer(wornIdleUnsolved(), UnitSystem.SHOP);
        assertFalse(answer.complete());
        String table = tableOf(answer.full(), IDLE);
        for (String label : List.of("line pressure [psi]", "pump power [hp]", "hub load [lbf]", "lube flow [gpm]")) {
            assertTrue(row(table, label).endsWith(" unsolved"), row(table, label));
        }
        assertTrue(answer.full().contains("worn: no steady state was found at " + IDLE), answer.screen());
        assertFalse(answer.full().contains("Against fresh"), "nothing is compared with what is not known");
        assertTrue(answer.full().contains("IDLE PRESSURE IS LOW with worn"), "not known is not held");
    }

    @Test
    void theRecordOfAStateThatWasNotFoundHasItsReason() {
        JsonNode state =
                Json.tree(answer(wornIdleUnsolved(), UnitSystem.SHOP).json()).at("/builds/1/states/0");
        assertFalse(state.get("solved").booleanValue());
        assertEquals("node line", state.at("/unsolved/culprit").textValue());
        assertTrue(state.at("/figures").isMissingNode());
    }

    @Test
    void theRecordHasTheNumbersOfTheStatesWhateverTheUnits() {
        JsonNode json = Json.tree(SHOP.json());
        assertEquals(json, Json.tree(answer(BOTH, UnitSystem.METRIC).json()));
        assertEquals("shuttle-five", json.get("circuit").textValue());
        JsonNode worn = json.at("/builds/1");
        assertEquals("worn", worn.get("build").textValue());
        assertEquals(BOTH.duties().size(), worn.get("states").size());
        assertEquals(
                figures("worn").line(), worn.at("/states/0/pressures_pa/line").doubleValue());
        assertEquals(
                60 * BOTH.cell("worn", IDLE).sweep().onset().orElseThrow(),
                worn.at("/onset_rpm/" + IDLE).doubleValue(),
                1e-9);
        assertEquals(
                BOTH.cell("worn", IDLE).thinnestFilm().orElseThrow().film(),
                worn.at("/least_film/" + IDLE + "/least_film_m").doubleValue());
    }

    @Test
    void aSpreadsheetGetsARowForEachBuildAtEachDutyPoint() {
        List<String> rows = SHOP.csv().lines().toList();
        assertEquals(1 + 2 * BOTH.duties().size(), rows.size());
        assertTrue(rows.get(0).startsWith("duty,build,commanded here [psi],line pressure [psi],"), rows.get(0));
        assertTrue(rows.get(2).startsWith(IDLE + ",worn,150,"), rows.get(2));
        assertTrue(SHOP.complete());
        assertTrue(SHOP.picture().isEmpty());
    }

    @Test
    void aBenchIsToldByItsGaugesAndFlowsAndAsksForNoSetPressure() {
        DescribedCircuit rig = ReadyCircuits.read("training-rig");
        Comparison bench = Comparison.of(List.of(rig.unit("one-hole"), rig.unit("worn")), rpm(400, 800));
        String screen = new CompareAnswer(rig, bench, FrictionBands.of(bench), UnitSystem.METRIC).full();
        String slow = tableOf(screen, "slow");
        double line = bench.cell("worn", "slow").figures().orElseThrow().line();
        assertTrue(row(slow, "gauge at line [bar]").endsWith(String.format(Locale.ROOT, " %.2f", line / 1e5)), slow);
        assertFalse(screen.contains("set pressure"), screen);
        assertTrue(screen.contains("worn: nothing is commanded; at slow the line stands at"), screen);
        assertFalse(screen.contains("IDLE PRESSURE"), screen);
    }

    /** One more hole passes more oil at a lower pressure. */
    @Test
    void aFlowThroughAHoleIsThatOfItsStream() {
        DescribedCircuit rig = ReadyCircuits.read("training-rig");
        Comparison bench = Comparison.of(List.of(rig.unit("one-hole"), rig.unit("three-holes")), rpm(400, 800));
        String slow = tableOf(new CompareAnswer(rig, bench, FrictionBands.of(bench), UnitSystem.METRIC).full(), "slow");
        String[] bleed = row(slow, "flow bleed").split(" +", -1);
        assertTrue(Double.parseDouble(bleed[3]) < Double.parseDouble(bleed[4]), String.join(" ", bleed));
        String[] gauge = row(slow, "gauge at last").split(" +", -1);
        assertTrue(Double.parseDouble(gauge[4]) > Double.parseDouble(gauge[5]), String.join(" ", gauge));
    }
}
