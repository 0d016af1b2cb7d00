package hotidle.answer.phrase;

import hotidle.answer.format.Wrap;

/** Cautions for whoever takes the numbers to a running unit; the usual ones of the trade. */
public final class Caution {

    private Caution() {}

    /** Where it stands in one line, and where the whole of it is. */
    public static final String LINE =
            wrapped("An estimate, not an approval. Before any test on the vehicle read the cautions: --full.");

    /** The line of a bench, on which no vehicle moves. */
    public static final String BENCH_LINE = wrapped(
            "Estimates, not approvals. Hot oil under pressure: eye protection, hoses pinned; cautions: --full.");

    /** The same where builds differ in set pressure. */
    public static final String RAISED =
            wrapped("Raised pressure loads case, pump, rings, shafts. An estimate, not an approval; cautions: --full.");

    /** The whole text for a bench. */
    public static final String BENCH = Wrap.lines(
                    "An estimate, not an approval. Oil under pressure sprays from every joint and goes through skin: eye"
                            + " protection on, hoses pinned, hands off fittings until the gauge reads nothing; hot oil burns. A relief"
                            + " valve stays on the supply. The bench maker's instructions come first.",
                    "",
                    "")
            .stripTrailing();

    /** The whole text; arguments as of {@link #of}. */
    public static String whole(boolean commanded) {
        return commanded ? WHOLE : BENCH;
    }

    /**
     * The line that stands under an answer.
     *
     * @param commanded whether the unit is in a vehicle; a bench is not commanded
     * @param raised    whether pressure is raised in some build
     */
    public static String of(boolean commanded, boolean raised) {
        return commanded ? raised ? RAISED : LINE : BENCH_LINE;
    }

    /** The whole text, wrapped, without a line feed at its end. */
    public static final String WHOLE = Wrap.lines(
                    "An estimate, not an approval. Raised pressure loads case, pump, rings, shafts and converter. Before any"
                            + " test on the vehicle: wheels blocked, brakes on, two people, nobody in front; hot oil burns when"
                            + " a plug is opened. A stall test lasts 5 s at most with a minute of cooling after it, and none at"
                            + " all if idle pressure is low. The unit maker's procedure and local codes come first.",
                    "",
                    "")
            .stripTrailing();

    private static String wrapped(String text) {
        return Wrap.lines(text, "", "").stripTrailing();
    }
}
