package hotidle.answer.phrase;

import java.util.List;

/** What rests on numbers that the file marks as assumed. */
public final class AssumedPhrase {

    /** In a list, unless all are asked for. */
    private static final int MOST_NAMED = 6;

    /** Over all values that a file leaves to the program. */
    public static final String DEFAULTS = "Values that the circuit file leaves to the program";

    /** Over what takes a value that a file leaves to the program. */
    public static final String TAKEN_BY = "left to the program by";

    /** Over such a value, with its source. */
    public static final String VALUE = "key, value and where it comes from";

    /** Behind a verdict that rests on an assumed number. */
    public static final String MARK = "assumed";

    private AssumedPhrase() {}

    /**
     * How many numbers in use are assumed, and the first of them.
     *
     * @param paths as part.key, at least one
     * @param all   whether each is named
     */
    public static String counted(List<String> paths, boolean all) {
        int named = all ? paths.size() : Math.min(MOST_NAMED, paths.size());
        String rest = named < paths.size() ? " and " + (paths.size() - named) + " more" : "";
        return "assumed (~): " + CountPhrase.of(paths.size(), "number")
                + " in use of the first build, neither measured nor from a data" + " sheet: "
                + String.join(", ", paths.subList(0, named)) + rest;
    }

    /** In a sentence of its own where a verdict rests on assumed numbers. */
    public static String verdict(int count) {
        return MARK + ": rests on " + CountPhrase.of(count, "assumed number");
    }
}
