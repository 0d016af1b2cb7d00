package hotidle.circuits.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Gathers the problems of one file; the same problem found twice counts once. Work space of one reading. */
public final class Problems {

    /** A file of this reading. */
    private record Source(String file, List<String> lines) {}

    private final List<Source> sources = new ArrayList<>();
    private final Problem.Writing writing;
    private final List<Problem> found = new ArrayList<>();
    private final Set<String> told = new HashSet<>();

    public Problems(String file, String text) {
        this(file, text, Problem.Writing.FILE);
    }

    private Problems(String file, String text, Problem.Writing writing) {
        this.writing = writing;
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
        return new Problems(name, text, Problem.Writing.COMMAND);
    }

    /** Adds an error whose sentence says all. */
    public void error(Place place, ProblemCode code, String message, String why, String mend) {
        error(place, Fault.of(code, message, why, mend));
    }

    /** Adds an error. */
    public void error(Place place, Fault fault) {
        add(place, Problem.Severity.ERROR, fault);
    }

    /** Adds a warning. */
    public void warning(Place place, Fault fault) {
        add(place, Problem.Severity.WARNING, fault);
    }

    private void add(Place place, Problem.Severity severity, Fault fault) {
        if (told.add(told(place, severity, fault))) {
            found.add(problem(place, severity, fault));
        }
    }

    /**
     * All that tells one problem from another. Whose it is does not: a part and those that are like it share what is written once.
     * In one text, since comparing nested records is code that Java makes anew at each start.
     */
    private static String told(Place place, Problem.Severity severity, Fault fault) {
        return String.join(
                "\n",
                place.source() + ":" + place.line() + ":" + place.column() + "+" + place.width(),
                severity.name(),
                fault.code().name(),
                fault.key(),
                fault.says(),
                fault.why());
    }

    /** A problem of this file that is not added. */
    public Problem problem(Place place, Problem.Severity severity, Fault fault) {
        Source source = sources.get(place.source());
        String line = place.line() <= source.lines.size() ? source.lines.get(place.line() - 1) : "";
        int number = writing == Problem.Writing.COMMAND ? 0 : place.line();
        Position position = new Position(source.file, number, place.column());
        return new Problem(position, place.width(), severity, fault, line, writing);
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

    /**
     * Refuses what has an error in it, for who makes something of numbers and has no file to point at.
     *
     * @throws IllegalArgumentException with the message of the first error
     */
    public void refuseErrors() {
        inOrder().stream()
                .filter(problem -> problem.severity() == Problem.Severity.ERROR)
                .findFirst()
                .ifPresent(problem -> {
                    throw new IllegalArgumentException(problem.message());
                });
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
