package hotidle.answer.phrase;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Headings of a report, and what it says of itself; what it says of the unit are the sentences of the other commands. */
public final class ReportPhrase {

    private ReportPhrase() {}

    /** The question that the whole report answers. */
    public static String question(List<String> builds) {
        return builds.size() == 1
                ? "Does this build hold its pressure, its clutches, its lubrication and its hub?"
                : "Which of these " + builds.size()
                        + " builds holds its pressure, its clutches, its lubrication and its hub?";
    }

    /** Of the document. */
    public static String title(String circuit, List<String> builds) {
        return circuit + ": " + String.join(", ", builds);
    }

    /** Lines above all: shop, unit, circuit. */
    public static List<String> head(List<String> letterhead, String circuit) {
        return Stream.concat(letterhead.stream(), Stream.of(circuit)).toList();
    }

    /** The same for who pays for it. */
    public static final String CUSTOMER_QUESTION = "What may be set, what must be repaired, and why?";

    public static final String ANSWER = "The answer";

    /** Under a verdict of readings that do not agree, above those on builds. */
    public static final String OTHER_UNIT =
            "What is said of the build below is not said of the unit that was read, until what the gauges say is explained.";

    public static final String MAY_BE_SET = "What may be set";
    public static final String REPAIR = "What must be repaired";
    public static final String BECAUSE = "Why";
    public static final String COMPARED = "Builds compared";
    public static final String BUILDS = "The builds";
    public static final String TORQUE = "Engine torque held, and what gives first";
    public static final String MARGINS = "Limits that do not hold with ease";
    public static final String OIL = "Where the oil goes";
    public static final String JOBS = "Jobs, and which of them are needed";
    public static final String WINDOW = "Pressures that may be set";
    public static final String WEAR = "How far fits may wear, and which written limits are too loose";
    public static final String HEAT = "Heat";
    public static final String GAUGE = "What the gauges say";
    public static final String PHOTOGRAPHS = "Photographs";
    public static final String DRAWING = "The circuit";

    /** Over the gauge readings. */
    public static final String READINGS =
            "Readings beside what a sound build reads; off by so many standard deviations";

    /** Over every fault that was tried. */
    public static final String FAULTS = "Every fault that was tried, and how large it may be without showing";

    /** Over the sizes that explain readings best. */
    public static final String FITS = "Most likely sizes of all fits together";

    /** Under readings drawn beside what a sound build reads. */
    public static final String READINGS_CHART = "Gauge readings, as points, beside what a sound build reads";

    /** Under shares of causes. */
    public static final String CAUSES_CHART = "How likely each cause is, given these readings";

    public static final String ASSUMPTIONS = "What it rests on";
    public static final String METHOD = "Method and sources";
    public static final String CARE = "Cautions";
    public static final String MADE = "How this report was made";
    public static final String WORDS = "Words";

    /** The builds that were looked at, over their changes. */
    public static final List<String> CHANGES = List.of("build", "changes", "to", "because");

    /** Over these. */
    public static final String CHANGES_OF_ALL = "What each build changes, and why";

    /** A build, what its file says of it, and the one that it stands on. */
    public static String build(String name, String about, Optional<String> on) {
        return HeadingPhrase.headed(name, about)
                + on.map(other -> " (on " + other + ")").orElse("");
    }

    /** Which jobs a build takes, as {@link JobPhrase} says it. */
    public static String jobs(String build, String first) {
        return build + ": " + first;
    }

    /** Above lost oil and repairs, since jobs are counted otherwise. */
    public static final String BY_SIZE =
            "A repair here is one size brought back to new. Which whole jobs a shop must do stands under '" + JOBS
                    + "'.";

    /** Above jobs, since repairs are counted otherwise. */
    public static final String BY_JOB =
            "A job here is what a shop does in one go; it may bring several of the sizes under '" + OIL
                    + "' back to new.";

    /** Above what lies outside the range of the laws. */
    public static final String OUTSIDE = "Outside the range of a law or of what was measured:";

    public static final String PRESSURE_CHART = "Line pressure against engine speed";
    public static final String LOW_PRESSURE_CHART =
            "The same at low speed, on a scale of its own; the curves are those of the chart above";
    public static final String OIL_CHART = "Oil against engine speed, stacked by where it goes";
    public static final String FILM_CHART =
            "Film of the hub bushing, as a multiple of the least film allowed, against engine speed";
    public static final String LOAD_CHART = "Load on the hub against engine speed";

    /** Under a drawing. */
    public static String drawing(String circuit, String build, String duty, String paper) {
        return circuit + ", " + build + (duty.isEmpty() ? "" : " at " + duty)
                + ": lines as dark as their pressure and as wide as their flow" + paper + ".";
    }

    /**
     * On which paper a drawing has its letters full size, and what printing makes of it; nothing where it is drawn for A4.
     *
     * @param halves whether it is printed in two halves, a sheet each
     */
    public static String paper(String paper, boolean halves) {
        return halves ? "; drawn for " + paper + ", in print in two halves, a sheet each, to be laid together" : "";
    }

    /**
     * What is told of one build alone.
     *
     * @param first whether it is the first of them; else it is the first that does not hold its line
     */
    public static String ofOne(String build, boolean first) {
        return "Told of " + build + ", the first build " + (first ? "named." : "whose line is not held at idle.");
    }

    /** How states are found. */
    public static final List<String> HOW = List.of(
            "Every number comes from a steady state: at each node as much oil arrives as leaves, and each valve, slide and hub stands"
                    + " where its forces balance, to a billionth of what they are made of. A state that is not found is reported as not"
                    + " known, never as a number.",
            "Headroom is what is left of a limit: the value over the need, less one, of what must be enough; the limit over the value,"
                    + " less one, of what must not be too much. Below 0 it fails; up to 10 % it is narrow.");

    /** Laws of the parts that the circuit has. */
    public static final String LAWS = "Laws of the parts in this circuit";

    public static final List<String> LAW_HEAD = List.of("part", "law", "source");

    /** What such a report can have and this one has not, with the reason. */
    public static List<String> leftOut(
            boolean window, boolean torque, boolean oil, boolean heat, boolean gauge, boolean wear) {
        return Stream.of(
                        window ? "" : "Not in it: pressures that may be set; nothing commands one in this circuit.",
                        torque
                                ? ""
                                : "Not in it: engine torque held; the circuit applies no clutch, or gives no driving condition"
                                        + " under load with all its temperatures.",
                        oil ? "" : "Not in it: where the oil goes, and jobs; the circuit has no pump.",
                        heat ? "" : "Not in it: heat; no driving condition has temperatures that follow from it.",
                        gauge ? "" : "Not in it: gauge readings; none were given (--readings).",
                        wear ? "" : "Not in it: wear limits, since they take minutes; ask for them with --wear.")
                .filter(line -> !line.isEmpty())
                .toList();
    }

    /** Files and what made of them. */
    public static final List<String> INPUT_HEAD = List.of("file", "SHA-256");

    public static final String INPUTS = "Files that it was made of";

    public static final String COMMAND = "Made by: ";

    public static final String VERSION = "Program: ";

    /** Which unit on the bench it is about. */
    public static String tag(String tag) {
        return "Unit " + tag;
    }

    /** What was written. */
    public static String written(int sections, int tables, int pictures) {
        return "Written: " + CountPhrase.of(sections, "section") + ", " + CountPhrase.of(tables, "table") + ", "
                + CountPhrase.of(pictures, "picture") + "; opens in any browser, without a network";
    }
}
