package hotidle.answer.phrase;

/** How much of a measurement sheet there is. */
public final class SheetPhrase {

    private SheetPhrase() {}

    /** A filled one: all sizes that it leaves blank are assumed. */
    public static String filled(String build, long measured, int sizes) {
        return "build " + build + ": " + measured + " of " + sizes + " sizes measured, all others assumed new";
    }

    /** A blank one that was written into a file. */
    public static String written(Object file, long rows, int sizes) {
        return "written: " + file + ", " + CountPhrase.of(rows, "row") + " for " + CountPhrase.of(sizes, "size")
                + ": a bore and what runs in it share a row";
    }
}
