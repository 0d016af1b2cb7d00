package hotidle.circuits.text;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Gathers the problems of one file; the same problem found twice counts once. Work space of one reading. */
public final class Problems {

    /** Longest message, since what a user wrote stands in it. */
    private static final int LONGEST = 300;

    private final String file;
    private final List<String> lines;
    private final boolean command;
    private final Set<Problem> found = new LinkedHashSet<>();

    public Problems(String file, String text) {
        this(file, text, false);
    }

    private Problems(String file, String text, boolean command) {
        this.file = file;
        this.command = command;
        lines = List.of(text.split("\r\n|[\n\r]", -1));
    }

    /**
     * Gathers the problems of what was written behind a command.
     *
     * @param name of the command
     * @param text in one line
     */
    public static Problems ofCommand(String name, String text) {
        return new Problems(name, text, true);
    }

    /** Adds an error. */
    public void error(Place place, String message, String why, String mend) {
        found.add(problem(place, Problem.Severity.ERROR, message, why, mend));
    }

    /** Adds a warning. */
    public void warning(Place place, String message, String why, String mend) {
        found.add(problem(place, Problem.Severity.WARNING, message, why, mend));
    }

    /** A problem of this file that is not added. */
    public Problem problem(Place place, Problem.Severity severity, String message, String why, String mend) {
        String oneLine = message.replaceAll("\\s+", " ");
        String shown = oneLine.length() > LONGEST ? oneLine.substring(0, LONGEST) + "..." : oneLine;
        String line = place.line() <= lines.size() ? lines.get(place.line() - 1) : "";
        Position position = new Position(file, command ? 0 : place.line(), place.column());
        return new Problem(position, place.width(), severity, shown, why, mend, line);
    }

    /** How a place is written in a message. */
    public String at(Place place) {
        return new Position(file, place.line(), place.column()).toString();
    }

    /** How many problems are known so far. */
    public int count() {
        return found.size();
    }

    /** Whether an error is among them. */
    public boolean anyError() {
        return found.stream().anyMatch(problem -> problem.severity() == Problem.Severity.ERROR);
    }

    /** All problems, in the order of the file. */
    public List<Problem> inOrder() {
        return found.stream()
                .sorted(Comparator.comparingInt((Problem p) -> p.position().line())
                        .thenComparingInt(p -> p.position().column()))
                .toList();
    }
}
