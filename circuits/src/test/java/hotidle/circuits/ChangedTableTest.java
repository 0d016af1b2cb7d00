package hotidle.circuits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.text.Problem;
import hotidle.circuits.text.ProblemCode;
import hotidle.part.Clutch;
import hotidle.part.Lining;
import hotidle.part.Selector;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A build may change what is no size: in which ranges a passage of the selector is open, and how many linings a clutch has. */
class ChangedTableTest {

    private static final String TEXT = Library.text("shuttle-five").orElseThrow();

    private static ReadCircuit read(String change) {
        return CircuitReader.read(
                TEXT.stripTrailing() + "\n  rebuilt:\n    about: with other parts\n    on: worn\n    changes:\n      "
                        + change + "\n",
                "shuttle-five.yaml");
    }

    private static Selector selector(ReadCircuit read, String build) {
        return read.circuit().orElseThrow().unit(build).network().parts().stream()
                .filter(placed -> placed.part() instanceof Selector)
                .map(placed -> (Selector) placed.part())
                .findFirst()
                .orElseThrow();
    }

    private static Set<String> ranges(Selector selector, String passage) {
        return selector.links().stream()
                .filter(link -> link.name().equals(passage))
                .findFirst()
                .orElseThrow()
                .ranges();
    }

    @Test
    void aPassageOfTheSelectorMayBeOpenInOtherRanges() {
        ReadCircuit read =
                read("selector.passages.second-feed.ranges: {to: [second], because: another separator plate}");
        assertEquals(Set.of("second"), ranges(selector(read, "rebuilt"), "second-feed"));
        assertEquals(Set.of("second", "fifth"), ranges(selector(read, "worn"), "second-feed"));
    }

    private static int surfaces(ReadCircuit read) {
        Clutch clutch = (Clutch) read.circuit()
                .orElseThrow()
                .unit("rebuilt")
                .network()
                .part("low-clutch")
                .orElseThrow()
                .part();
        return ((Lining) clutch.grip()).surfaces();
    }

    @Test
    void aClutchMayHaveTwoSurfacesMoreOrHalfOfThem() {
        assertEquals(20, surfaces(read("low-clutch.surfaces: {by: 2, because: one more plate}")));
        assertEquals(9, surfaces(read("low-clutch.surfaces: {times: 0.5, because: for a trial}")));
    }

    @Test
    void aCountThatWouldNotBeWholeIsToldAtItsPlace() {
        List<Problem> problems =
                read("low-clutch.surfaces: {times: 1.3, because: a slip}").problems();
        Problem fault = problems.stream()
                .filter(problem -> problem.code() == ProblemCode.CHANGE_OF_A_COUNT)
                .findFirst()
                .orElseThrow();
        assertTrue(fault.text().contains("low-clutch.surfaces is a count, now 18"), fault.text());
    }
}
