package hotidle.cli;

import hotidle.study.spread.SizePrior;
import hotidle.study.spread.SpreadQuestion;
import hotidle.study.spread.Unmeasured;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import java.util.List;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What is drawn, how many times, and where it is judged. */
final class SpreadOptions {

    private static final int MOST_UNITS = 100_000_000;
    private static final int MOST_PAIRS = 1_000_000;
    private static final int MOST_THREADS = 256;

    @Mixin
    OneBuildOption build;

    @Mixin
    AfterWork work;

    @Option(
            names = "--duty",
            paramLabel = "NAME",
            description =
                    "a driving condition at which units are judged, at its own speed; give it again for each. Default: the slowest"
                            + " one")
    List<String> duties = List.of();

    @Option(
            names = "--samples",
            paramLabel = "COUNT",
            defaultValue = "2000",
            description = "units drawn. Default: ${DEFAULT-VALUE}")
    int samples;

    @Option(
            names = "--pairs",
            paramLabel = "COUNT",
            defaultValue = "50",
            description =
                    "pairs of units that tell what drives the limits; each takes a unit for every size drawn, and two. Default:"
                            + " ${DEFAULT-VALUE}")
    int pairs;

    @Option(
            names = "--seed",
            paramLabel = "NUMBER",
            defaultValue = "1",
            description = "seed of the draws. Default: ${DEFAULT-VALUE}")
    long seed;

    @Option(
            names = "--threads",
            paramLabel = "COUNT",
            description = "threads; the answer is the same on any number. Default: all there are")
    Integer threads;

    @Option(
            names = "--unmeasured",
            paramLabel = "WORD",
            description =
                    "how a fit is taken of which the build says nothing: sound or worn. Default: worn where any fit of the build is")
    Unmeasured.FitState unmeasured;

    /** What is asked of a build. */
    SpreadQuestion question(Adjustable of) {
        within("--samples", samples, 1, MOST_UNITS);
        within("--pairs", pairs, 0, MOST_PAIRS);
        threads();
        Transmission unit = of.unit();
        duties.forEach(name -> OptionValues.duty(unit, name));
        List<String> judged = duties.isEmpty()
                ? List.of(OptionValues.slowest(unit).name())
                : duties.stream().distinct().toList();
        List<SizePrior> sizes = unmeasured == null ? Unmeasured.of(of) : Unmeasured.of(of, unmeasured);
        return new SpreadQuestion(of, sizes, judged, samples, pairs, seed);
    }

    /** Threads to run on. */
    int threads() {
        int all = threads == null ? Runtime.getRuntime().availableProcessors() : threads;
        within("--threads", all, 1, MOST_THREADS);
        return all;
    }

    private static void within(String option, int value, int least, int most) {
        if (value < least || value > most) {
            throw new WrongInputException("hotidle: " + option + " " + value + ": allowed is " + least + " to " + most);
        }
    }
}
