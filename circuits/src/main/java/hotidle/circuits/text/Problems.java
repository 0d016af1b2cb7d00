package hotidle.circuits.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Gathers the problems of one file; the same problem found twice counts once. Work space of one reading. */
public final class Problems {

    /** Longest message, since what a user wrote stands in it. */
    private static final int LONGEST = 300;

    /** A file of this reading. */
    private record Source(String file, List<String> lines) {}

    private final List<Source> sources = new ArrayList<>();
    private final boolean command;
    private final Set<Problem> found = new LinkedHashSet<>();
    private final Set<String> told = new HashSet<>();

    public Problems(String file, String text) {
        this(file, text, false);
    }

    private Problems(String file, String text, boolean command) {
        this.command = command;
        source(file, text);
    }

    /** Adds a further file that this reading draws from; the answer stands in the places of its values. */
    public int source(String file, String text) {
        sources.add(new Source(file, List.of(text.split("\r\n|[\n\r]", -1))));
        return sources.size() - 1;
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
        add(place, Problem.Severity.ERROR, message, why, mend);
    }

    /** Adds a warning. */
    public void warning(Place place, String message, String why, String mend) {
        add(place, Problem.Severity.WARNING, message, why, mend);
    }

    /** Two problems that differ in the name of their part only come of one fault: a part and those that are like it. */
    private void add(Place place, Problem.Severity severity, String whole, String why, String mend) {
        String message = whole.length() > 2 * LONGEST ? whole.substring(0, 2 * LONGEST) : whole;
        String same = place + " " + severity + message.replaceFirst("'[^']*'", "") + "\n" + why;
        if (told.add(same)) {
            found.add(problem(place, severity, message, why, mend));
        }
    }

    /** A problem of this file that is not added. */
    public Problem problem(Place place, Problem.Severity severity, String message, String why, String mend) {
        String oneLine = message.replaceAll("\\s+", " ");
        String shown = oneLine.length() > LONGEST ? oneLine.substring(0, LONGEST) + "..." : oneLine;
        Source source = sources.get(place.source());
        String line = place.line() <= source.lines.size() ? source.lines.get(place.line() - 1) : "";
        Position position = new Position(source.file, command ? 0 : place.line(), place.column());
        return new Problem(position, place.width(), severity, shown, why, mend, line);
    }

    /** How a place is written in a message. */
    public String at(Place place) {
        return new Position(sources.get(place.source()).file, place.line(), place.column()).toString();
    }

    /** How many problems are known so far. */
    public int count() {
        return found.size();
    }

    /** Whether an error is among them. */
    public boolean anyError() {
        return found.stream().anyMatch(problem -> problem.severity() == Problem.Severity.ERROR);
    }

    private int order(String file) {
        return sources.stream().map(Source::file).toList().indexOf(file);
    }

    /** All problems, in the order of the file, those of files that it draws from after it. */
    public List<Problem> inOrder() {
        return found.stream()
                .sorted(Comparator.comparingInt(
                                (Problem p) -> order(p.position().file()))
                        .thenComparingInt(p -> p.position().line())
                        .thenComparingInt(p -> p.position().column()))
                .toList();
    }
}
