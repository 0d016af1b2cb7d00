package hotidle.answer.phrase;

/** A name with what its file says of it, or where it is looked at; headings of more than one command. */
public final class HeadingPhrase {

    /** Over the sentences. */
    public static final String IN_WORDS = "In plain words";

    /** Over the doubts. */
    public static final String WITH_CARE = "Take with care";

    private HeadingPhrase() {}

    /** Something at a driving condition, a temperature, a pressure or a port. */
    public static String at(String what, String where) {
        return what + " at " + where;
    }

    /** Behind a colon, where anything is said. */
    public static String headed(String name, String about) {
        return about.isEmpty() ? name : name + ": " + about;
    }

    /** In brackets, where anything is said. */
    public static String titled(String name, String about) {
        return about.isEmpty() ? name : name + " (" + about + ")";
    }
}
