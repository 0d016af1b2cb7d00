package hotidle.answer.phrase;

import java.util.List;

/** What a file leaves to the program. */
public final class DefaultsPhrase {

    /** Over the values of one part, or of every place of a circuit. */
    public static final String HEADING = "left to the program";

    /** Over the same by what they concern. */
    public static final String ONCE = "left to the program, each value once";

    /** Over those that parts of more than one kind take. */
    public static final String SEVERAL = "parts of several kinds";

    /** Over those of no part and no section. */
    public static final String WHOLE = "the circuit";

    private DefaultsPhrase() {}

    /** Over those of a kind of part, or of a section, with the parts of that kind. */
    public static String heading(String group, List<String> parts) {
        return switch (parts.size()) {
            case 0 -> group;
            case 1 -> group + " (" + parts.get(0) + ")";
            default -> group + " (" + parts.size() + " of them)";
        };
    }

    /** A key that was left out, what is taken for it and by whose word. */
    public static String value(String key, String value, String source) {
        return key + " " + value + ": " + source;
    }

    /** The same at one place of a circuit. */
    public static String each(String where, String value, String source) {
        return where + ": " + value + "; " + source;
    }

    /** Behind a value, which take it. */
    public static String takers(List<String> named) {
        return " [" + String.join(", ", named) + "]";
    }

    /** Behind a value, how many take it, of a kind of part or of all. */
    public static String takers(int count, boolean ofKind) {
        return " [" + count + (ofKind ? " of them]" : " in all]");
    }
}
