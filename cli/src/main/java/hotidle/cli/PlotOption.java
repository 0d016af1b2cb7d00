package hotidle.cli;

import hotidle.plots.Picture;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The picture of what a command answers. */
final class PlotOption {

    @Option(names = "--plot", paramLabel = "FILE", description = "draws the answer into this file (.png, .svg or .pdf)")
    private Path file;

    @Mixin
    private PictureSize size;

    /**
     * Looks at the file before anything is solved.
     *
     * @throws WrongInputException where it cannot be written
     */
    void check() {
        size.check();
        if (file != null) {
            PictureFile.check("--plot", file);
        }
    }

    /** Draws where it was asked for; what was drawn, or why nothing, goes to {@code err}. */
    void draw(Supplier<Optional<Picture>> drawn, PrintWriter err) {
        if (file == null) {
            return;
        }
        Optional<Picture> picture = drawn.get();
        if (picture.isEmpty()) {
            err.println("not drawn: " + file + ": the answer has nothing that could be drawn");
            return;
        }
        PictureFile.draw(size.of(picture.get()), file, "", err);
    }
}
