package hotidle.answer.phrase;

import java.util.List;
import java.util.Locale;

/** That no steady state was found, and how near the solver came. */
public final class UnsolvedPhrase {

    /** In the cell of a table in place of the number that is not known. */
    public static final String CELL = "unsolved";

    /** Heads the row of a table that names it. */
    public static final String CULPRIT = "does not settle";

    private UnsolvedPhrase() {}

    /**
     * Why, without a stop.
     *
     * @param culprit  the node or part that does not settle
     * @param residual its imbalance as a share of its own scale [-]
     * @param tried    the ways of solving
     */
    public static String why(String culprit, double residual, List<String> tried) {
        return "not solved: " + culprit + " does not settle (imbalance " + String.format(Locale.ROOT, "%.1e", residual)
                + " of its scale) after " + String.join(", ", tried);
    }

    /** Of a duty of which nothing else is said; why as {@link #why} says it. */
    public static String nothingKnownHere(String why) {
        return why + "; nothing is known here.";
    }

    /** Of the line held at its set pressure; why as {@link #why} says it. */
    public static String regulation(String why) {
        return "Regulation is not known: " + why + ".";
    }

    /** Of a build at a duty, in a whole sentence. */
    public static String nothingKnown(String build, String duty) {
        return build + ": no steady state was found at " + duty + ", so nothing is known there.";
    }
}
