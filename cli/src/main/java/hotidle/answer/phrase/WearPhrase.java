package hotidle.answer.phrase;

/** A size against its wear limit. */
public final class WearPhrase {

    private WearPhrase() {}

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
