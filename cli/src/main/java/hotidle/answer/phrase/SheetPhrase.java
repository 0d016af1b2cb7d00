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

    /** A sheet of gauge readings that was written into a file. */
    public static String readingsWritten(Object file, int rows) {
        return "written: " + file + ", " + CountPhrase.of(rows, "reading")
                + " to take; fill in 'reading', 'gauge accuracy' (2 %) and 'gauge full scale', leave blank what is not read";
    }

    /** Test points that are not on a sheet of readings. */
    public static String notExpected(String range, double rpm) {
        return "left out: " + range + " at " + Math.round(rpm) + " rpm, where no steady state was found";
    }
}
