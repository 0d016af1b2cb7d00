package hotidle.answer.sheet;

/**
 * A measurement sheet to fill in.
 *
 * @param file what stands in a file, CSV with a byte order mark for the spreadsheet that opens it
 */
public record SheetAnswer(String file) {

    private static final String MARK = "\uFEFF";

    /** The same without its mark, which on a screen or in a pipe is a stray sign. */
    public String screen() {
        return file.replace(MARK, "");
    }

    /** Rows to fill in. */
    public long rows() {
        return file.lines().count() - 1;
    }
}
