package hotidle.circuits.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Text that is no YAML is told at its place, in the words of who wrote it, with what to do. A {@code |} ends a line. */
class SyntaxTest {

    static Stream<Arguments> faults() {
        return Stream.of(
                Arguments.of("oil:|\tname: x", "2:1", "a tab stands here", "put blanks in its place"),
                Arguments.of(
                        "oil: \"open",
                        "1:6",
                        "the quote that opens here is not closed",
                        "close it at the end of the text, on one line"),
                Arguments.of(
                        "a: 'open|b: 2",
                        "1:4",
                        "the quote that opens here is not closed",
                        "close it at the end of the text, on one line"),
                Arguments.of(
                        "a: b: c",
                        "1:5",
                        "a second colon stands in this line",
                        "put text that holds a colon in quotes; a second key goes on a line of its own"),
                Arguments.of("oil|speed: 3", "1:1", "this line has no colon", "write 'oil:'"),
                Arguments.of("# nothing||  oil||# more|speed: 3", "3:3", "this line has no colon", "write 'oil:'"),
                Arguments.of(
                        "this line is much longer than forty characters are|speed: 3",
                        "1:1",
                        "this line has no colon",
                        "write 'this line is much longer than forty char...:'"),
                Arguments.of(
                        "a key of forty characters is shown wholly|speed: 3",
                        "1:1",
                        "this line has no colon",
                        "write 'a key of forty characters is shown wholl...:'"),
                Arguments.of(
                        "a key of forty characters is shown whole|speed: 3",
                        "1:1",
                        "this line has no colon",
                        "write 'a key of forty characters is shown whole:'"),
                Arguments.of(
                        "a: !t [1]",
                        "1:4",
                        "a tag (!...) stands here",
                        "leave it out; put text that begins with ! in quotes"),
                Arguments.of(
                        "a: {b: 1 c: 2}",
                        "1:11",
                        "a comma is missing before this",
                        "put a comma between the two, or quotes around text that holds a colon"),
                Arguments.of(
                        "a: {b: 1|c: 2",
                        "1:4",
                        "the bracket that opens here is not closed",
                        "close it at the end of line 1, if all of it stands there"),
                Arguments.of(
                        "b: 3|a: [1, 2|c: 2",
                        "2:4",
                        "the bracket that opens here is not closed",
                        "close it at the end of line 2, if all of it stands there"),
                Arguments.of("a:|  b: 1|- c", "3:1", "a list item stands among keys", "indent it deeper"),
                Arguments.of("a:|  - b|  c: 1", "3:3", "a key stands among list items", ""),
                Arguments.of(
                        "a:|    b: 1|  c: 2",
                        "3:3",
                        "this line begins in a column in which no line above it begins",
                        "begin it in column 1 or 5, as a line above it does"),
                Arguments.of(
                        "a:|  b:|      c: 1|    d: 2",
                        "4:5",
                        "this line begins in a column in which no line above it begins",
                        "begin it in column 1 or 3 or 7, as a line above it does"),
                Arguments.of(
                        "a: 1|   b: 2",
                        "2:4",
                        "this line is indented deeper than the line above it, whose value is complete",
                        "begin it in column 1, as line 1 does"),
                Arguments.of("a: 1|---|b: 2", "2:1", "a second document begins here", "one file, one circuit"),
                Arguments.of(
                        "a: 1|...|b: 2", "3:1", "a second document begins here", "take out the line with ... or ---"),
                Arguments.of("a: @b", "1:4", "nothing can begin with @", "put text that begins with @ in quotes"),
                Arguments.of(
                        "a: *b",
                        "1:4",
                        "an alias (*...) stands here",
                        "write the value out; put a name that begins with * in quotes"),
                Arguments.of(
                        "a: &b 1",
                        "1:4",
                        "an anchor (&...) stands here",
                        "leave it out; put text that begins with & in quotes"),
                Arguments.of(
                        "a: !t 1",
                        "1:4",
                        "a tag (!...) stands here",
                        "leave it out; put text that begins with ! in quotes"),
                Arguments.of(
                        "a: *",
                        "1:5",
                        "a * or & stands in front of this",
                        "put text that begins with * or & in quotes"),
                Arguments.of(
                        "pump{kind: gear}: 3",
                        "1:1",
                        "a name stands here without a colon and a blank behind it",
                        "put a colon and a blank behind the name: 'pump: {'"),
                Arguments.of(
                        "a: 1\u0007",
                        "1:5",
                        "a character stands here that cannot be printed",
                        "take it out; it may have come with text copied from elsewhere"),
                Arguments.of(
                        "ab: x|c: 1\u0007",
                        "2:5",
                        "a character stands here that cannot be printed",
                        "take it out; it may have come with text copied from elsewhere"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("faults")
    void aFaultIsToldAtItsPlaceWithItsRemedy(String text, String place, String message, String mend) {
        Problems problems = read(text.replace('|', '\n') + "\n");
        assertEquals(1, problems.count());
        Problem problem = problems.inOrder().get(0);
        assertEquals(place, problem.position().line() + ":" + problem.position().column());
        assertEquals(message, problem.message());
        assertEquals(mend, problem.mend());
    }

    /** Which bracket was opened is what the reader looks for. */
    @Test
    void aMissingCommaIsToldOfTheBracketThatWasOpened() {
        assertEquals(
                "between { } commas part one thing from the next",
                read("a: {b: 1 c: 2}\n").inOrder().get(0).why());
        assertEquals(
                "between [ ] commas part one thing from the next",
                read("a: ['b' 'c']\n").inOrder().get(0).why());
    }

    private static Problems read(String text) {
        Problems problems = new Problems("a.yaml", text);
        Yaml.read(text, problems);
        return problems;
    }

    @Test
    void aFileOfTheLongestLengthIsReadAndOneSignMoreIsNot() {
        String most = "a: " + "x".repeat(Yaml.LONGEST - 3);
        assertEquals(0, read(most).count());
        assertEquals(
                "the file has 1000001 characters",
                read(most + "x").inOrder().get(0).message());
    }

    @Test
    void whatIsNestedTooDeepOrHasTooManyEntriesIsTold() {
        String deepest = "[".repeat(Yaml.DEEPEST) + "]".repeat(Yaml.DEEPEST);
        assertEquals(0, read("a: " + deepest.substring(1, deepest.length() - 1)).count());
        assertEquals(
                "nesting goes deeper than 16 levels",
                read("a: [" + deepest + "]").inOrder().get(0).message());
        String items = "- x\n".repeat(Yaml.MOST);
        assertEquals(0, read(items).count());
        assertEquals(
                List.of("more than 2000 entries stand here"),
                read(items + "- x\n").inOrder().stream().map(Problem::message).toList());
    }
}
