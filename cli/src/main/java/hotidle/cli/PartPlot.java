package hotidle.cli;

import hotidle.answer.part.PartChart;
import hotidle.answer.phrase.ArticlePhrase;
import hotidle.circuits.kind.Kind;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The picture that is asked for of a part on its own. */
final class PartPlot {

    @Option(
            names = "--plot",
            paramLabel = "FILE",
            description = "draws flow (film of a bushing) against --vary into this file (.png, .svg or .pdf)")
    Path file;

    @Option(names = "--chart", paramLabel = "FILE", hidden = true)
    Path chart;

    @Option(
            names = "--vary",
            paramLabel = "KEY=FROM..TO",
            description = "what the chart goes over: any key with a number, drop or temperature: length=1..12mm")
    String vary;

    @Mixin
    PictureSize size;

    /**
     * Looks at the file before anything is solved.
     *
     * @throws WrongInputException where it cannot be written, or what to draw is not said
     */
    void check() {
        if (chart != null) {
            throw new WrongInputException("hotidle: --chart is called --plot now\nmend: write --plot " + chart);
        }
        if ((file == null) != (vary == null)) {
            throw new WrongInputException("hotidle part: --plot and --vary go together,"
                    + " for example --plot flow.png --vary length=1..12mm");
        }
        if (file != null) {
            PictureFile.check("--plot", file);
            size.check();
        }
    }

    /** What it goes over; empty where none is asked for. */
    Optional<PartVary> over(Kind kind) {
        return Optional.ofNullable(vary).map(text -> PartVary.of(kind, text));
    }

    /** Refuses one that would be empty. */
    static void checkAny(PartChart drawn) {
        if (!drawn.any()) {
            throw new WrongInputException("hotidle part: there is nothing to draw: "
                    + (drawn.film()
                            ? "metal touches at every value"
                            : ArticlePhrase.of(drawn.kind()) + " passes no oil"));
        }
    }
}
