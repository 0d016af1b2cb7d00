package hotidle.circuits.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A problem as it is printed: where, what, the line with a mark under it, why, and what to write. */
class ProblemTest {

    private static final Fault GAP = new Fault(
            ProblemCode.MISSING_KEY,
            "seal 'a'",
            "gap",
            "has no gap",
            "oil passes it",
            Remedy.set("write ", "gap", "5 um"));

    private static Problem in(String line, int column, int width) {
        return new Problems("a.yaml", line).problem(new Place(1, column, width), Problem.Severity.ERROR, GAP);
    }

    @Test
    void aProblemShowsItsLineWithAMarkUnderWhatIsWrong() {
        assertEquals("""
                a.yaml:1:7: error: seal 'a' has no gap
                  seal: {kind: x}
                        ^^^^
                  why:  oil passes it
                  mend: write gap: 5 um""", in("seal: {kind: x}", 7, 4).text());
        assertEquals(
                in("seal: {kind: x}", 7, 4).text(), in("seal: {kind: x}", 7, 4).toString());
    }

    @Test
    void aProblemWithoutReasonOrRemedyEndsWithItsMark() {
        Problem bare = new Problems("a.yaml", "b: c")
                .problem(new Place(1, 4, 1), Problem.Severity.WARNING, Fault.of(ProblemCode.NO_YAML, "is odd", "", ""));
        assertEquals("a.yaml:1:4: warning: is odd\n  b: c\n     ^", bare.text());
    }

    @Test
    void anEmptyLineIsNotShown() {
        assertEquals(
                "a.yaml:1:1: error: seal 'a' has no gap\n  why:  oil passes it\n  mend: write gap: 5 um",
                in("  ", 1, 1).text());
    }

    /** 110 characters of it, from 73 before what is wrong on; the mark stands under the same character. */
    @Test
    void aLongLineIsShownAroundWhatIsWrong() {
        String line = "x".repeat(200) + "HERE" + "y".repeat(200);
        List<String> shown = in(line, 201, 4).text().lines().toList();
        assertEquals("  " + "x".repeat(73) + "HERE" + "y".repeat(33), shown.get(1));
        assertEquals("  " + " ".repeat(73) + "^^^^", shown.get(2));
    }

    @Test
    void aMarkReachesNoFurtherThanTheLineAndIsNeverMissing() {
        assertEquals(
                "  " + " ".repeat(3) + "^",
                in("b: c", 4, 90).text().lines().toList().get(2));
        assertEquals(
                "  " + " ".repeat(4) + "^",
                in("b: c", 5, 1).text().lines().toList().get(2));
        assertEquals(
                "  " + " ".repeat(4) + "^",
                in("b: c", 50, 1).text().lines().toList().get(2));
    }

    @Test
    void aTabIsShownAsABlankSoThatTheMarkStandsUnderItsSign() {
        assertEquals("  b: c", in("b:\tc\t", 4, 1).text().lines().toList().get(1));
    }

    @Test
    void behindACommandThereAreNoLinesAndNoBlanks() {
        Problem told =
                Problems.ofCommand("hotidle part seal", "gap=5").problem(Place.START, Problem.Severity.ERROR, GAP);
        assertEquals("hotidle part seal: error: seal 'a' has no gap", told.headline());
        assertEquals("write gap=5um", told.mend());
        assertEquals("write gap: 5 um", in("x", 1, 1).mend());
    }

    @Test
    void anotherRemedyLeavesTheRestAsItIs() {
        Problem was = in("seal: {kind: x}", 7, 4);
        Problem is = was.with(Remedy.words("measure it"));
        assertEquals("measure it", is.mend());
        assertEquals(was.headline(), is.headline());
        assertEquals(ProblemCode.MISSING_KEY, is.code());
        assertEquals("oil passes it", is.why());
    }

    @Test
    void whatAUserWroteIsNotShownBeyondALineAndAHalf() {
        Fault told = new Fault(ProblemCode.NO_YAML, "", "", "x".repeat(5000), "", Remedy.NONE);
        assertEquals("x".repeat(300) + "...", told.message());
        assertEquals(
                "x".repeat(300), new Fault(ProblemCode.NO_YAML, "", "", "x".repeat(300), "", Remedy.NONE).message());
        assertEquals(
                "a b", new Fault(ProblemCode.NO_YAML, "", "", "a \n  b", "", Remedy.NONE).message(), "in one line");
        assertEquals(
                600,
                new Fault(ProblemCode.NO_YAML, "y".repeat(900), "", "", "", Remedy.NONE)
                        .subject()
                        .length());
        assertEquals(
                600,
                new Fault(ProblemCode.NO_YAML, "y".repeat(600), "", "", "", Remedy.NONE)
                        .subject()
                        .length());
    }

    @Test
    void aMissingKeyIsKnownByItsPartAndName() {
        assertTrue(GAP.misses("seal 'a'", "gap"));
        assertFalse(GAP.misses("seal 'b'", "gap"));
        assertFalse(GAP.misses("seal 'a'", "bore"));
        assertFalse(new Fault(ProblemCode.NO_YAML, "seal 'a'", "gap", "", "", Remedy.NONE).misses("seal 'a'", "gap"));
    }

    private static Fault says(String says) {
        return Fault.of(ProblemCode.NO_YAML, says, "", "");
    }

    @Test
    void problemsComeInTheOrderOfTheFileAndThoseOfAnotherFileBehindThem() {
        Problems problems = new Problems("b.yaml", "one\rtwo\r\nthree\n");
        int base = problems.source("a.yaml", "first");
        assertEquals(1, base);
        problems.error(new Place(1, 1, 1, base), says("of the base"));
        problems.warning(new Place(3, 1, 1), says("third"));
        problems.error(new Place(2, 3, 1), says("second, further right"));
        problems.error(new Place(2, 1, 1), says("second"));
        assertEquals(
                List.of("second", "second, further right", "third", "of the base"),
                problems.inOrder().stream().map(Problem::message).toList());
        assertEquals("three", problems.inOrder().get(2).line());
        assertEquals(
                "",
                problems.problem(new Place(9, 1, 1), Problem.Severity.ERROR, GAP)
                        .line(),
                "beyond its end");
        assertEquals("a.yaml:7:2", problems.at(new Place(7, 2, 1, base)));
        assertEquals(4, problems.count());
    }

    @Test
    void warningsAreNoErrorsAndTheFirstErrorIsWhatRefuses() {
        Problems problems = new Problems("a.yaml", "x");
        problems.warning(Place.START, says("odd"));
        assertFalse(problems.anyError());
        problems.refuseErrors();
        problems.error(new Place(2, 1, 1), says("later"));
        problems.error(new Place(1, 5, 1), says("wrong"));
        assertTrue(problems.anyError());
        assertEquals(
                "wrong",
                assertThrows(IllegalArgumentException.class, problems::refuseErrors)
                        .getMessage());
    }

    @Test
    void theSameFaultAtOnePlaceIsAWarningAndAnError() {
        Problems problems = new Problems("a.yaml", "x");
        problems.warning(Place.START, says("odd"));
        problems.error(Place.START, says("odd"));
        problems.error(Place.START, says("odd"));
        assertEquals(2, problems.count());
    }
}
