package hotidle.circuits.text;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;

/** Says in the words of a shop what a text that is no YAML gets wrong: indentation, brackets, quotes, colons. */
final class Syntax {

    private static final String INDENTATION =
            "the blanks in front of a line say what it belongs to; lines of one group begin in one column";

    private static final String EITHER = "a group has keys or list items, not both";
    private static final String NO_YAML = "this is not YAML";

    private final Problems problems;
    private final int source;
    private final List<String> lines;

    Syntax(String text, Problems problems, int source) {
        this.problems = problems;
        this.source = source;
        lines = List.of(text.split("\r\n|[\n\r]", -1));
    }

    /** Adds the problem of a fault with a place. */
    void add(MarkedYamlEngineException fault) {
        Optional<Mark> mark = fault.getProblemMark().or(fault::getContextMark);
        Place at = mark.map(this::place).orElse(Place.START);
        Place from = fault.getContextMark().map(this::place).orElse(at);
        switch (SyntaxFault.of(fault)) {
            case TAB ->
                error(
                        at,
                        ProblemCode.TAB,
                        "a tab stands here",
                        "files are indented with blanks only",
                        "put blanks in its place");
            case OPEN_QUOTE ->
                error(
                        from,
                        ProblemCode.OPEN_QUOTE,
                        "the quote that opens here is not closed",
                        "",
                        "close it at the end of the text, on one line");
            case SECOND_COLON -> colon(at);
            case NO_COLON ->
                noColon(
                        before(at.line()) > 0 && !line(before(at.line())).contains(":")
                                ? before(at.line())
                                : at.line());
            case IN_BRACKETS -> bracket(at, from);
            case NEVER_OPENED ->
                error(
                        at,
                        ProblemCode.NEVER_OPENED,
                        "a bracket closes here that was never opened",
                        "",
                        "take it out, or open it");
            case ITEM_AMONG_KEYS ->
                error(
                        start(at),
                        ProblemCode.ITEM_AMONG_KEYS,
                        "a list item stands among keys",
                        EITHER,
                        "indent it deeper");
            case KEY_AMONG_ITEMS ->
                error(start(at), ProblemCode.KEY_AMONG_ITEMS, "a key stands among list items", EITHER, "");
            case NO_SUCH_COLUMN -> column(at);
            case SECOND_DOCUMENT -> secondDocument(at);
            case RESERVED_CHARACTER -> reserved(at);
            case ALIAS ->
                error(
                        at,
                        ProblemCode.ALIAS,
                        "a * or & stands in front of this",
                        "they have a meaning of their own in YAML",
                        "put text that begins with * or & in quotes");
            case OTHER -> error(at, ProblemCode.NO_YAML, NO_YAML, fault.getProblem(), "");
        }
    }

    /** Adds the problem of a character that cannot be printed. */
    void add(ReaderException character) {
        String mend = "take it out; it may have come with text copied from elsewhere";
        error(
                at(character.getPosition()),
                ProblemCode.UNPRINTABLE,
                "a character stands here that cannot be printed",
                "",
                mend);
    }

    /** Adds the problem of a fault without a place. */
    void add(String message) {
        error(
                Place.START,
                ProblemCode.NO_YAML,
                NO_YAML,
                message.lines().findFirst().orElse(""),
                "");
    }

    private void error(Place place, ProblemCode code, String message, String why, String mend) {
        problems.error(place, code, message, why, mend);
    }

    private Place place(Mark mark) {
        return new Place(mark.getLine() + 1, mark.getColumn() + 1, 1, source);
    }

    private Place at(int position) {
        int rest = position;
        for (int i = 0; i < lines.size(); i++) {
            if (rest <= lines.get(i).length()) {
                return new Place(i + 1, rest + 1, 1, source);
            }
            rest -= lines.get(i).length() + 1;
        }
        return Place.START;
    }

    private String line(int number) {
        return number >= 1 && number <= lines.size() ? lines.get(number - 1) : "";
    }

    private static int indent(String line) {
        return line.length() - line.stripLeading().length();
    }

    private static boolean empty(String line) {
        return line.isBlank() || line.strip().startsWith("#");
    }

    /** The last line with something in it before a line; 0 for none. */
    private int before(int number) {
        int before = number - 1;
        while (before >= 1 && empty(line(before))) {
            before--;
        }
        return Math.max(before, 0);
    }

    /** A colon where none can be: a second one in a line, or one in a line that goes on with the text above it. */
    private void colon(Place at) {
        String line = line(at.line());
        String start = line.substring(0, Math.min(at.column() - 1, line.length()));
        int before = before(at.line());
        Optional<String> swallowed = MissingColon.mend(start);
        if (swallowed.isPresent()) {
            Place begin = start(at);
            error(
                    begin,
                    ProblemCode.NO_BLANK_AFTER_COLON,
                    "a name stands here without a colon and a blank behind it",
                    "",
                    swallowed.get());
        } else if (start.contains(": ") || before == 0) {
            String mend = "put text that holds a colon in quotes; a second key goes on a line of its own";
            error(
                    at,
                    ProblemCode.SECOND_COLON,
                    "a second colon stands in this line",
                    "the first one ends the key, and only one can",
                    mend);
        } else if (!line(before).contains(":")) {
            noColon(before);
        } else {
            deeper(at, before);
        }
    }

    /** Behind a line with ... or ---, or behind text without a colon, which YAML takes for all there is. */
    private void secondDocument(Place at) {
        boolean parted =
                lines.stream().limit(at.line()).anyMatch(line -> line.startsWith("---") || line.startsWith("..."));
        if (!parted && before(at.line()) > 0) {
            noColon(before(at.line()));
        } else {
            error(
                    at,
                    ProblemCode.SECOND_DOCUMENT,
                    "a second document begins here",
                    "one file, one circuit",
                    "take out the line with ... or ---");
        }
    }

    private void noColon(int number) {
        Place there = new Place(
                number, indent(line(number)) + 1, Math.max(line(number).strip().length(), 1), source);
        error(
                there,
                ProblemCode.NO_COLON,
                "this line has no colon",
                "a key is followed by a colon",
                "write '" + key(number) + ":'");
    }

    private String key(int number) {
        String text = line(number).strip();
        return text.length() > 40 ? text.substring(0, 40) + "..." : text;
    }

    private void deeper(Place at, int before) {
        Place begin = start(at);
        error(
                begin,
                ProblemCode.INDENTED_TOO_DEEP,
                "this line is indented deeper than the line above it, whose value is complete",
                INDENTATION,
                "begin it in column " + (indent(line(before)) + 1) + ", as line " + before + " does");
    }

    private void bracket(Place at, Place opened) {
        String kind = line(opened.line()).startsWith("[", opened.column() - 1) ? "[ ]" : "{ }";
        if (at.line() == opened.line()) {
            String mend = "put a comma between the two, or quotes around text that holds a colon";
            error(
                    at,
                    ProblemCode.NO_COMMA,
                    "a comma is missing before this",
                    "between " + kind + " commas part one thing from the next",
                    mend);
        } else {
            String mend = "close it at the end of line " + opened.line() + ", if all of it stands there";
            error(
                    opened,
                    ProblemCode.OPEN_BRACKET,
                    "the bracket that opens here is not closed",
                    "it ends in a line further down only",
                    mend);
        }
    }

    private Place start(Place at) {
        return new Place(at.line(), indent(line(at.line())) + 1, 1, source);
    }

    private void column(Place at) {
        String columns = columnsAbove(at.line());
        String mend = columns.isEmpty() ? "" : "begin it in column " + columns + ", as a line above it does";
        error(
                start(at),
                ProblemCode.NO_SUCH_COLUMN,
                "this line begins in a column in which no line above it begins",
                INDENTATION,
                mend);
    }

    private void reserved(Place at) {
        String line = line(at.line());
        String sign = line.substring(Math.min(at.column() - 1, line.length()), Math.min(at.column(), line.length()));
        String mend = "put text that begins with " + sign + " in quotes";
        error(
                at,
                ProblemCode.RESERVED_CHARACTER,
                "nothing can begin with " + sign,
                "it has a meaning of its own in YAML",
                mend);
    }

    /** Columns in which the groups begin that a line may belong to, the outer ones first. */
    private String columnsAbove(int number) {
        TreeSet<Integer> columns = new TreeSet<>();
        int open = Integer.MAX_VALUE;
        for (int i = before(number); i >= 1 && open > 0; i = before(i)) {
            int indent = indent(line(i));
            if (indent < open) {
                columns.add(indent + 1);
                open = indent;
            }
        }
        return columns.stream().map(String::valueOf).collect(Collectors.joining(" or "));
    }
}
