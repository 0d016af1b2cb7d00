package hotidle.answer.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.result.Outcome;
import hotidle.result.Unsolved;
import hotidle.study.Comparison;
import hotidle.study.FrictionBands;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Tables of a comparison of which one state was not found. */
class UnsettledInCompareTest {

    private static final DescribedCircuit FOUR = CircuitReader.read(
                    Library.text("crescent-four").orElseThrow(), "crescent-four.yaml")
            .circuit()
            .orElseThrow();
    private static final Comparison SOLVED =
            Comparison.of(List.of(FOUR.unit("fresh"), FOUR.unit("worn")), List.of(10.0, 30.0));

    private static CompareAnswer answer(Comparison comparison) {
        return new CompareAnswer(FOUR, comparison, FrictionBands.of(comparison), Quantity.UnitSystem.SHOP);
    }

    /** As solved, but for the worn build at hot idle. */
    private static Comparison oneUnsolved() {
        return new Comparison(SOLVED.cells().stream()
                .map(cell ->
                        cell.unit().build().equals("worn") && cell.duty().name().equals("hot-idle")
                                ? new Comparison.BuildAtDuty(
                                        cell.unit(),
                                        cell.duty(),
                                        Outcome.of(
                                                cell.outcome().conditions(),
                                                new Unsolved(0.3, "regulator", List.of("Newton from rest"))),
                                        Optional.empty(),
                                        cell.sweep())
                                : cell)
                .toList());
    }

    private static String line(String screen, String label) {
        return screen.lines().filter(line -> line.startsWith(label)).findFirst().orElse("");
    }

    @Test
    void theTableNamesWhatDoesNotSettleBesideTheBuildThatDoes() {
        String screen = answer(oneUnsolved()).full();
        assertEquals(
                "does not settle regulator", line(screen, "does not settle").replaceAll(" +", " "));
        assertEquals(
                1,
                screen.lines()
                        .filter(line -> line.startsWith("does not settle"))
                        .count(),
                "at hot idle alone");
        assertTrue(line(screen, "line pressure").matches(".*\\d+ +unsolved"), line(screen, "line pressure"));
    }

    @Test
    void aTableOfStatesThatWereFoundHasNoSuchLine() {
        assertFalse(answer(SOLVED).full().contains("does not settle"));
    }
}
