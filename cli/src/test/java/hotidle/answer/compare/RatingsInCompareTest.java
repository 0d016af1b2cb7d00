package hotidle.answer.compare;

import static hotidle.answer.ReadyCircuits.rpm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.study.Comparison;
import hotidle.study.FrictionBands;
import hotidle.transmission.Transmission;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The ready five-speed unit at stall, with an input shaft of 24 mm in place of 32. */
class RatingsInCompareTest {

    private static final DescribedCircuit WEAK = CircuitReader.read(
                    Library.text("shuttle-five")
                            .orElseThrow()
                            .replace(
                                    "input-shaft: {joins: [turbine, input-hub], outer-diameter: 32 mm",
                                    "input-shaft: {joins: [turbine, input-hub], outer-diameter: 24 mm"),
                    "weak.yaml")
            .circuit()
            .orElseThrow();

    private static CompareAnswer answer() {
        Transmission fresh = WEAK.unit("fresh");
        Transmission stalled = fresh.at(List.of(fresh.duty("stall").orElseThrow()));
        Comparison compared = Comparison.of(List.of(stalled), rpm(1300, 1900));
        return new CompareAnswer(WEAK, compared, FrictionBands.of(compared), UnitSystem.METRIC);
    }

    @Test
    void aShaftThatBearsTooLittleFailsIsTheWeakestAndIsNamedInWords() {
        CompareAnswer answer = answer();
        String screen = answer.screen();
        assertTrue(row(screen, "weakest torque link, anywhere").matches(".* -\\d+ %"), screen);
        assertTrue(row(screen, "fails at").endsWith("1 of 1"), screen);
        assertTrue(screen.contains("FAILS: fresh at stall (input-shaft carries 1425, bears "), screen);
        assertTrue(screen.contains("Weakest torque link: input-shaft at stall."), screen);
        String full = answer.full();
        assertTrue(full.contains("At stall input-shaft carries 1425, bears "), full);
        assertTrue(row(full, "weakest torque link").matches("weakest torque link +input-shaft -\\d+ %"), full);
        assertEquals(
                1,
                answer.table().head().stream()
                        .filter("weakest torque link"::equals)
                        .count());
    }

    private static String row(String text, String label) {
        return text.lines()
                .filter(line -> line.startsWith(label))
                .findFirst()
                .orElseThrow(() -> new AssertionError(label + " in " + text));
    }
}
