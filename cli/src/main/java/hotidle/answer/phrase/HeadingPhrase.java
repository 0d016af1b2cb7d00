package hotidle.answer.phrase;

/** A name with what its file says of it. */
public final class HeadingPhrase {

    private HeadingPhrase() {}

    /** Behind a colon, where anything is said. */
    public static String headed(String name, String about) {
        return about.isEmpty() ? name : name + ": " + about;
    }

    /** In brackets, where anything is said. */
    public static String titled(String name, String about) {
        return about.isEmpty() ? name : name + " (" + about + ")";
    }
}
