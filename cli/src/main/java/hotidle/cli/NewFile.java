package hotidle.cli;

import hotidle.plots.WholeFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A text file that a command is asked to write and that may not be there yet: what a user has filled in is never overwritten. */
final class NewFile {

    private NewFile() {}

    /**
     * Looks before anything is made.
     *
     * @throws WrongInputException where it is there already, or its folder is not
     */
    static void check(String option, Path file) {
        if (Files.isDirectory(file)) {
            throw new WrongInputException(
                    "hotidle: " + option + " " + file + " is a folder\nmend: name a new file in it");
        }
        if (Files.exists(file)) {
            throw new WrongInputException("hotidle: " + option + " " + file
                    + " is there already, and may be filled in\nmend: name a new file");
        }
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new WrongInputException("hotidle: " + option + " " + file + ": there is no folder " + folder);
        }
    }

    /**
     * Writes.
     *
     * @throws WrongInputException where it cannot be written, with the reason
     */
    static void write(String option, Path file, String text) {
        check(option, file);
        try {
            WholeFile.write(text.getBytes(StandardCharsets.UTF_8), file);
        } catch (IOException e) {
            throw new WrongInputException(
                    "hotidle: " + option + " " + file + " cannot be written: " + FileReason.of(e));
        }
    }
}
