package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.ReadyCircuits;
import hotidle.circuits.DescribedCircuit;
import hotidle.study.WindowMap;
import hotidle.transmission.Adjustable;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A size that goes from one value to another, as written behind --vary of map. */
class VariedSizeTest {

    private static final DescribedCircuit VANE = ReadyCircuits.read("vane-six");
    private static final Adjustable BUILD = VANE.adjustable(VANE.builds().get(0).name());

    private static List<Double> values(String written) {
        VariedSize size = VariedSize.of(written);
        return size.values(BUILD, size.axis(BUILD));
    }

    private static String refused(String written) {
        return assertThrows(WrongInputException.class, () -> values(written)).getMessage();
    }

    @Test
    void withoutAStepThereAreTenValuesWithBothEnds() {
        List<Double> gaps = values("plate.gap=5..23um");
        assertEquals(10, gaps.size());
        assertEquals(5e-6, gaps.get(0), 1e-15);
        assertEquals(7e-6, gaps.get(1), 1e-12);
        assertEquals(23e-6, gaps.get(9), 1e-12);
    }

    @Test
    void aStepIsTakenAsItIsWritten() {
        assertEquals(5, values("plate.gap=5..25/5um").size());
        assertEquals(25e-6, values("plate.gap=5..25/5 um").get(4), 1e-12);
    }

    @Test
    void aClearanceIsThatOfABoreOverWhatRunsInIt() {
        String bore = BUILD.dimensions().stream()
                .filter(size -> size.key().equals("bore"))
                .filter(size -> BUILD.dimension(size.part() + ".valve").isPresent())
                .findFirst()
                .orElseThrow()
                .part();
        WindowMap.Axis axis = VariedSize.of(bore + ".clearance=0.02..0.1mm").axis(BUILD);
        assertEquals(bore + ".clearance", axis.name());
        assertEquals(BUILD.dimension(bore + ".valve").orElseThrow().value(), axis.inner(), 1e-12);
    }

    @Test
    void whatDoesNotRiseIsRefused() {
        assertTrue(refused("plate.gap=20..5um").contains("does not rise\nmend: exchange the two ends"));
        assertTrue(refused("plate.gap=5..5um").contains("does not rise\nmend: give two different ends"));
    }

    @Test
    void withoutItsUnitOrWithAnotherASizeIsRefusedWithTheUnitsItTakes() {
        assertTrue(refused("plate.gap=5..20").contains("end it in its unit: "));
        assertTrue(refused("plate.gap=5..20psi").contains("end it in its unit: "));
    }

    @Test
    void aPartOrASizeThatIsNoneIsRefusedWithTheNearest() {
        assertTrue(refused("plat.gap=5..20um").contains("no part 'plat' has a size that can be varied"));
        assertTrue(refused("plate.gab=5..20um").contains("plate has no size 'gab'"));
        assertTrue(refused("plate=5..20um").contains("does not say which size of plate\nmend: valid: "));
    }

    @Test
    void whatIsNoSizeWithTwoEndsIsRefusedWithAnExample() {
        for (String text : List.of("plate.gap", "plate.gap=5um", "=5..20um", "plate.gap=a..bum")) {
            assertTrue(
                    refused(text).contains(" is no size with its two ends\nmend: write --vary hub-bushing.clearance"),
                    text);
        }
    }

    @Test
    void moreValuesThanAMapShowsAreRefusedAndSoIsNoStep() {
        assertTrue(refused("plate.gap=5..105/1um").contains("a map has 60 at most\nmend: widen its step"));
        assertTrue(refused("plate.gap=5..25/0um").contains("has a step that is not above zero or too small"));
    }

    @Test
    void anEndWithWhichThePartCannotBeMadeIsRefused() {
        assertTrue(refused("plate.gap=-5..20um").contains("\nmend: "));
    }
}
