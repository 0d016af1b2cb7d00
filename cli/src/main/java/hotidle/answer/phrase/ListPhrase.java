package hotidle.answer.phrase;

import java.util.List;

/** What can be asked for: headings, and what a circuit has. */
public final class ListPhrase {

    public static final String CIRCUITS = "circuits";
    public static final String PARTS = "kinds of parts";
    public static final String UNITS = "units";
    public static final String BUILD = "    build ";

    /** Where the units stand. */
    public static final String MORE_UNITS =
            "'hotidle list units' names the units; --full lists all with what is said of each.";

    private ListPhrase() {}

    public static String builds(List<String> names) {
        return "builds: " + String.join(", ", names);
    }

    public static String duties(List<String> names) {
        return "driving conditions: " + String.join(", ", names);
    }

    public static String oils(List<String> names) {
        return "oils: " + String.join(", ", names);
    }
}
