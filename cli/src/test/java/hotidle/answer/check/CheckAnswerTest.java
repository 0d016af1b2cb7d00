package hotidle.answer.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class CheckAnswerTest {

    private static final DescribedCircuit RIG = CircuitReader.read(
                    Library.text("training-rig").orElseThrow(), "training-rig.yaml")
            .circuit()
            .orElseThrow();

    private static String said(int warnings, Map<String, List<String>> unjudged, boolean all, UnitSystem units) {
        CheckAnswer answer = new CheckAnswer(RIG, warnings, unjudged, units);
        return all ? answer.full() : answer.screen();
    }

    @Test
    void theFirstLineCountsWhatTheFileHolds() {
        String first =
                said(1, Map.of(), false, UnitSystem.SHOP).lines().findFirst().orElseThrow();
        assertEquals(
                "training-rig: no mistake found, 1 warning (" + RIG.nodes().size() + " nodes, "
                        + RIG.parts().size() + " parts, " + RIG.builds().size() + " builds, "
                        + RIG.sizes().size() + " sizes that wear)",
                first);
    }

    @Test
    void aPumpIsShownByItsDisplacementInTheUnitsAskedFor() {
        assertTrue(said(0, Map.of(), false, UnitSystem.METRIC).contains(" displaces "));
        assertTrue(said(0, Map.of(), false, UnitSystem.METRIC).contains(" cm3/rev\n"));
        assertTrue(said(0, Map.of(), false, UnitSystem.SHOP).contains(" in3/rev\n"));
    }

    /** The rig's file gives each value that is left out once where it is grouped, and once a part where all are asked for. */
    @Test
    void eachValueLeftToTheProgramIsGroupedOrListedForEachPart() {
        String grouped = said(0, Map.of(), false, UnitSystem.SHOP);
        assertTrue(grouped.endsWith(RIG.defaults().size() + " values left to the program (--full).\n"), grouped);
        String each = said(0, Map.of(), true, UnitSystem.SHOP);
        String listed = each.substring(each.indexOf("left to the program\n"));
        assertEquals(1 + RIG.defaults().size(), listed.lines().count());
        RIG.defaults().forEach(line -> assertTrue(listed.contains("  " + line.where() + ": " + line.value() + "; ")));
    }

    @Test
    void aClutchIsNotJudgedOnlyWhereThereIsOne() {
        assertFalse(said(0, Map.of(), false, UnitSystem.SHOP).contains("Not judged"));
        assertTrue(said(0, Map.of("low-clutch", List.of("low")), false, UnitSystem.SHOP)
                .contains("low-clutch (low)."));
    }

    @Test
    void aSizeThatWasNotMeasuredIsSaidToBeAssumedNew() {
        String table = SizeTable.of(RIG, UnitSystem.METRIC);
        assertTrue(table.startsWith("size"), table);
        assertEquals(
                RIG.sizes().stream().filter(size -> size.measured().isEmpty()).count(),
                table.lines()
                        .filter(line -> line.endsWith("not measured: assumed new"))
                        .count());
    }
}
