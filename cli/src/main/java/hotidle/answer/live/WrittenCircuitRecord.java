package hotidle.answer.live;

import hotidle.circuits.text.Problem;
import java.util.List;
import java.util.Locale;

/**
 * What is wrong with a circuit file that is being written, as {@code hotidle check} says it.
 *
 * @param problems in the order of the file
 * @param good     whether it can be used
 * @param summary  how many there are, or what the circuit holds, as the command's first lines
 */
public record WrittenCircuitRecord(List<ProblemLine> problems, boolean good, String summary) {

    /**
     * A message.
     *
     * @param file   in which it stands: this one, or one that it is based on
     * @param own    whether it stands in this one
     * @param line   from 1
     * @param column from 1
     * @param width  characters that it concerns
     * @param severity error, which makes the file unusable, or warning
     * @param said   what is wrong
     * @param why    the rule; may be empty
     * @param mend   what to write; may be empty
     * @param text   all of it, as the command prints it
     */
    public record ProblemLine(
            String file,
            boolean own,
            int line,
            int column,
            int width,
            String severity,
            String said,
            String why,
            String mend,
            String text) {}

    /**
     * Of what was read.
     *
     * @param name of the file in messages
     */
    public static WrittenCircuitRecord of(String name, List<Problem> problems, boolean good, String summary) {
        return new WrittenCircuitRecord(
                problems.stream().map(problem -> line(name, problem)).toList(), good, summary);
    }

    private static ProblemLine line(String name, Problem problem) {
        return new ProblemLine(
                problem.position().file(),
                problem.position().file().equals(name),
                problem.position().line(),
                problem.position().column(),
                problem.width(),
                problem.severity().name().toLowerCase(Locale.ROOT),
                problem.message(),
                problem.why(),
                problem.mend(),
                problem.text());
    }
}
