package hotidle.cli;

import hotidle.answer.page.Page;
import hotidle.cli.page.HtmlPage;
import hotidle.plots.WholeFile;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** The file of a page. */
final class HtmlFile {

    private HtmlFile() {}

    /**
     * Looks at its name before anything is solved.
     *
     * @throws WrongInputException where it ends in another ending, or its folder is not there
     */
    static void check(String option, Path file) {
        PictureFile.check(option, file, "page", List.of("html"));
    }

    /**
     * Writes it whole or not at all; an old file stays until the new one is complete.
     *
     * @throws WrongInputException where it cannot be written
     */
    static void write(Page page, Path file) {
        try {
            WholeFile.write(HtmlPage.of(page), file);
        } catch (IOException e) {
            throw new WrongInputException("hotidle: " + file + " cannot be written: " + FileReason.of(e));
        }
    }
}
