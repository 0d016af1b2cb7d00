package hotidle.answer.phrase;

/** A size against its wear limit. */
public final class WearPhrase {

    private WearPhrase() {}

    /** A size with how far it is past its limit. */
    public static String by(String size, String past) {
        return size + " by " + past;
    }

    /** Over a table of all of them on a page. */
    public static final String SIZES =
            "Sizes that wear: what is not measured is assumed new in the file; builds say what they change";

    /** In the row of a size that was not measured. */
    public static final String ASSUMED_NEW = "not measured: assumed new";

    /** In the row of a size that lies beyond its limit by a length. */
    public static String pastLimit(String by) {
        return "past its limit by " + by;
    }

    /** Beneath the table. */
    public static String pastLimit(long past, int sizes) {
        return past + " of " + sizes + " measured past the wear limit";
    }
}
