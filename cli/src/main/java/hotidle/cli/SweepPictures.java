package hotidle.cli;

import hotidle.answer.phrase.LeftOutPhrase;
import hotidle.answer.sweep.SweepAnswer;
import hotidle.assess.Roles;
import hotidle.circuits.DescribedCircuit;
import hotidle.plots.Picture;
import hotidle.study.SpeedSweep;
import hotidle.study.gauge.ReadingsAtDuty;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The pictures that a sweep was asked for. */
final class SweepPictures {

    @Option(
            names = "--plot",
            paramLabel = "FILE",
            description =
                    "draws line pressure and where the oil goes into this file (.png, .svg or .pdf); of a bench, which holds no line,"
                            + " what its gauges read")
    private Path plot;

    @Option(
            names = "--plot-film",
            paramLabel = "FILE",
            description =
                    "draws the film of the hub bushing over the least one allowed, and the hub's load, into this file"
                            + " (.png, .svg or .pdf)")
    private Path film;

    @Option(
            names = "--plot-taps",
            paramLabel = "FILE",
            description = "draws what each gauge port reads into this file (.png, .svg or .pdf)")
    private Path taps;

    @Mixin
    private ReadingsOption readings;

    @Mixin
    private PictureSize size;

    /** Refuses what cannot be drawn, before anything is solved. */
    void check(List<Double> speeds) {
        size.check();
        check("--plot", plot, speeds);
        check("--plot-film", film, speeds);
        check("--plot-taps", taps, speeds);
    }

    private static void check(String option, Path file, List<Double> speeds) {
        if (file == null) {
            return;
        }
        PictureFile.check(option, file);
        if (speeds.size() < 2) {
            throw new WrongInputException(
                    "hotidle: " + option + " needs a series of speeds; write --speed 400..4000/50rpm");
        }
    }

    /** Draws them; what was drawn goes to {@code err}. */
    void draw(DescribedCircuit described, SweepAnswer answer, PrintWriter err) {
        ReadingsAtDuty read = read(answer.sweeps().get(0), err);
        String others = LeftOutPhrase.readings(read.others());
        if (plot != null && described.unit().commanded().isEmpty()) {
            draw(
                    answer.tapPicture(read.taken()).orElseThrow(() -> noTap("--plot", described)),
                    plot,
                    answer.leftOutOfTapPicture() + others,
                    err);
        } else if (plot != null) {
            draw(answer.pictureWith(read.taken()), plot, answer.leftOutOfPicture() + others, err);
        }
        if (taps != null) {
            draw(
                    answer.tapPicture(read.taken()).orElseThrow(() -> noTap("--plot-taps", described)),
                    taps,
                    answer.leftOutOfTapPicture() + others,
                    err);
        }
        if (film != null) {
            draw(answer.filmPicture().orElseThrow(() -> noFilm(described)), film, answer.leftOutOfFilmPicture(), err);
        }
    }

    private void draw(Picture picture, Path file, String leftOut, PrintWriter err) {
        PictureFile.draw(size.of(picture), file, leftOut, err);
    }

    private ReadingsAtDuty read(SpeedSweep first, PrintWriter err) {
        return readings.of(first.unit(), new ReadInputs(), err)
                .map(taken -> ReadingsAtDuty.of(taken.read().readings(), first.unit(), first.duty()))
                .orElseGet(() -> new ReadingsAtDuty(List.of(), 0));
    }

    private static WrongInputException noTap(String option, DescribedCircuit described) {
        return new WrongInputException("hotidle: " + option + ": there is nothing to draw: " + described.name()
                + " has no gauge port that reads anything\nmend: add taps: to the circuit");
    }

    private static WrongInputException noFilm(DescribedCircuit described) {
        return new WrongInputException("hotidle: --plot-film: there is no film to draw: "
                + (Roles.of(described.unit()).hub().isEmpty()
                        ? described.name() + " has no hub bushing that chambers load"
                        : "metal touches, or no state was found, at every speed"));
    }
}
