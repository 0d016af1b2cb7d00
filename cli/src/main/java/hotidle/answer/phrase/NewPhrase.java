package hotidle.answer.phrase;

import hotidle.answer.format.Wrap;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** What {@code new} asks, and what it says of the unit that it made. */
public final class NewPhrase {

    /** In brackets where a clutch's piston is left to the rules. */
    public static final String SCALED = "scaled";

    private NewPhrase() {}

    /** Above all questions. */
    public static String asks(int questions, String like, Object kept) {
        return CountPhrase.of(questions, "question")
                + ". Write each number with its unit. Enter alone keeps what stands in [ ],"
                + " as " + like
                + " has it or as follows from answers before, and marks it as assumed. Your answers are kept in " + kept
                + " as you give them; 'new ... --ask --answers " + kept + "' goes on with them.";
    }

    /**
     * A question.
     *
     * @param about what it asks for
     * @param kept  what an empty line keeps
     */
    public static String question(int number, int of, String name, String about, String kept) {
        return number + " of " + of + "  " + name + ", " + about + " [" + kept + "]: ";
    }

    /** What a range applies, a line a range. */
    public static String ranges(String like, Map<String, ? extends Collection<String>> applied) {
        int width = applied.keySet().stream().mapToInt(String::length).max().orElse(0);
        return like + " applies\n"
                + applied.entrySet().stream()
                        .map(range -> "  " + range.getKey()
                                + " ".repeat(width - range.getKey().length()) + "  "
                                + String.join(", ", range.getValue()) + "\n")
                        .collect(Collectors.joining())
                + Wrap.lines(
                                "A band that is a plate clutch in your unit: give its faces. Name the ranges that your unit has. A clutch that none of them applies goes with the others; another"
                                        + " number of clutches or bands in the same ranges is not possible with new: take another ready"
                                        + " circuit, or change the file.",
                                "",
                                "")
                        .stripTrailing();
    }

    /** Clutches and bands that are left. */
    public static String has(List<String> clutches, List<String> bands) {
        return has("clutch", "clutches", clutches) + (bands.isEmpty() ? "" : "; " + has("band", "bands", bands));
    }

    private static String has(String one, String many, List<String> names) {
        return names.size() + " " + (names.size() == 1 ? one : many)
                + (names.isEmpty() ? "" : " (" + String.join(", ", names) + ")");
    }

    /** An answer that cannot be taken, before it is asked again; it may have several lines. */
    public static String again(String wrong) {
        return ("not taken: " + wrong)
                .lines()
                .map(line -> Wrap.lines(line, "  ", "  "))
                .collect(Collectors.joining());
    }

    /** Where the asking ends with answers that cannot be taken. */
    public static String stopped(Object kept) {
        return "kept: every answer that could be taken is in " + kept + "; --ask --answers " + kept
                + " asks for the others alone";
    }

    /** Above answers that came by a pipe and cannot be taken. */
    public static String refused(int refused) {
        return "hotidle: --ask: " + CountPhrase.of(refused, "answer")
                + " cannot be taken; what comes after one is looked at without it";
    }

    /** A question that is left out. */
    public static String notAsked(String question, String why) {
        return "Not asked: " + question + ", for " + why + ".";
    }

    /** What is typed, or a file in its place, ends before the questions do. */
    public static String ended(String question, int number, int of) {
        return "hotidle: --ask: the answers end before question " + number + " of " + of + ", " + question
                + "\nmend: answer it; an empty line keeps what stands in [ ]";
    }

    /** The file that was made. */
    public static String made(Object file, long lines, String like, String has, int assumed) {
        return file + ", " + lines + " lines: like " + like + ", with " + has + ". "
                + CountPhrase.of(assumed, "number") + " in it " + (assumed == 1 ? "is" : "are")
                + " assumed (~). As sound, with all fits new, it would do this:";
    }

    /**
     * What to measure before anything else.
     *
     * @param limit  what the sizes move, at a driving condition
     * @param fits   those that the measurement sheet asks for, with the change of its headroom by a tenth more of each [-]
     * @param others those that stand in the circuit file alone
     */
    public static String measureFirst(String limit, Map<String, Double> fits, Map<String, Double> others) {
        return "Measure first what moves " + limit + " most (a tenth more of it adds)"
                + (fits.isEmpty() ? "" : "; rows of the sheet: " + sizes(fits, NewPhrase::row))
                + (others.isEmpty()
                        ? ""
                        : "; no fits and not on the sheet, to be written over the ~ in the file: "
                                + sizes(others, path -> path))
                + ".";
    }

    /** A row of the sheet by its first two columns, part and size. */
    private static String row(String path) {
        return path.replaceFirst("\\.", ", ");
    }

    private static String sizes(Map<String, Double> sizes, UnaryOperator<String> named) {
        return sizes.entrySet().stream()
                .map(one -> String.format(Locale.ROOT, "%s %+.0f %%", named.apply(one.getKey()), 100 * one.getValue()))
                .collect(Collectors.joining(", "));
    }

    /** Which commands come next, each at the end of a line so that it can be copied. */
    public static String next(Object file, Object sheet) {
        String measured = " " + file + " --sheet " + sheet;
        return "Next, in this order:\n"
                + "  fill it in      hotidle sheet " + file + " --out " + sheet + "\n"
                + "  read right?     hotidle check" + measured + "\n"
                + "  beside all new  hotidle compare" + measured + "\n"
                + "  what fails      hotidle margins" + measured + "\n"
                + "  what to repair  hotidle leaks" + measured + " --by job\n"
                + "  what it costs   jobs: in " + file + ", each with changes: as of a build, time: 4 h, price: 900\n";
    }

    /** Where answers that were asked for are kept. */
    public static String kept(Object file) {
        return "Your answers are in " + file + ".\n";
    }
}
