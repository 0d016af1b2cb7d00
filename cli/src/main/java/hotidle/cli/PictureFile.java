package hotidle.cli;

import hotidle.answer.phrase.LeftOutPhrase;
import hotidle.plots.Picture;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** A picture that a command is asked to draw. */
final class PictureFile {

    private PictureFile() {}

    /**
     * Looks at the name of the file before anything is solved.
     *
     * @param option that names it
     * @throws WrongInputException where it ends in none of the known endings, or its folder is not there
     */
    static void check(String option, Path file) {
        check(option, file, Picture.ENDINGS);
    }

    /**
     * The same for a picture that can have other formats.
     *
     * @param endings of file names, the last in the order of the message last
     * @throws WrongInputException where it ends in none of them, or its folder is not there
     */
    static void check(String option, Path file, List<String> endings) {
        check(option, file, "picture", endings);
    }

    /**
     * The same for a file of another kind.
     *
     * @param kind    what it is, in a word
     * @param endings of file names, the last in the order of the message last
     * @throws WrongInputException where it ends in none of them, or its folder is not there
     */
    static void check(String option, Path file, String kind, List<String> endings) {
        String name =
                file.getFileName() == null ? "" : file.getFileName().toString().toLowerCase(Locale.ROOT);
        if (endings.stream().noneMatch(ending -> name.endsWith("." + ending))) {
            String but = endings.subList(0, endings.size() - 1).stream()
                    .map(ending -> "." + ending)
                    .collect(Collectors.joining(", "));
            throw new WrongInputException("hotidle: " + option + " " + file
                    + " names no kind of " + kind + "\nmend: end the name in " + but + (but.isEmpty() ? "" : " or ")
                    + "." + endings.get(endings.size() - 1));
        }
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new WrongInputException("hotidle: " + option + " " + file + ": there is no folder " + folder);
        }
    }

    /**
     * Draws, and says so.
     *
     * @param leftOut what is left out of the answer, behind the name of the file; may be empty
     * @throws WrongInputException where it cannot be written
     */
    static void draw(Picture picture, Path file, String leftOut, PrintWriter err) {
        write(picture, file);
        err.println("drawn: " + file + leftOut
                + LeftOutPhrase.charts(picture.shown().size(), picture.charts().size()));
    }

    private static void write(Picture picture, Path file) {
        try {
            picture.write(file);
        } catch (IllegalArgumentException | IOException e) {
            throw new WrongInputException("hotidle: " + file + " cannot be drawn: " + e.getMessage());
        }
    }
}
