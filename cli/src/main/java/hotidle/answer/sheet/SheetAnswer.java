package hotidle.answer.sheet;

import hotidle.circuits.sheet.SheetWriter;

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

    /** Rows of fits to fill in; those that calibrate a test stand are none. */
    public long rows() {
        return file.lines().filter(line -> !line.startsWith(SheetWriter.STAND)).count() - 1;
    }
}
