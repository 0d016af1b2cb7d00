package hotidle.cli;

import hotidle.study.spread.SpreadQuestion;
import hotidle.study.spread.SpreadRun;
import hotidle.study.spread.SpreadTally;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Option;

/** Options that share a long run out among machines, and add up its parts. */
final class SplitRun {

    private static final int MOST_PARTS = 10_000;
    private static final Pattern WRITTEN = Pattern.compile("(\\d{1,6})/(\\d{1,6})");

    @Option(
            names = "--part",
            paramLabel = "K/N",
            description =
                    "only this part of the run, for example 3/10, to run the others elsewhere. Default: all of it")
    private String part;

    @Option(
            names = "--keep",
            paramLabel = "FILE",
            description = "writes what came of it to a new file that --join reads, with every digit")
    private Path keep;

    @Option(
            names = "--join",
            paramLabel = "FILE",
            description = "draws nothing: adds up what --keep wrote of all parts of this run; give it again for each")
    private List<Path> join = List.of();

    /**
     * The part of the run, as 3/10; the whole run where none is asked for. Looks at the file to be written, too.
     *
     * @throws WrongInputException where it is no part, or the file cannot be written
     */
    SpreadRun.RunPart checked() {
        SpreadRun.RunPart one = part();
        if (keep != null) {
            NewFile.check("--keep", keep);
        }
        return one;
    }

    private SpreadRun.RunPart part() {
        if (part == null) {
            return SpreadRun.RunPart.WHOLE;
        }
        Matcher matcher = WRITTEN.matcher(part);
        int number = matcher.matches() ? Integer.parseInt(matcher.group(1)) : 0;
        int of = matcher.matches() ? Integer.parseInt(matcher.group(2)) : 0;
        if (number < 1 || number > of || of > MOST_PARTS) {
            throw new WrongInputException(
                    "hotidle: --part " + part + " is no part of a run\nmend: write 3/10 for the third of ten parts");
        }
        return new SpreadRun.RunPart(number, of);
    }

    /** What parts of the run that were kept add up to; empty where none are named, so that units must be drawn. */
    Optional<SpreadTally> joined(SpreadQuestion question) {
        return join.isEmpty() ? Optional.empty() : Optional.of(SpreadParts.joined(question, join));
    }

    /** Writes what came of a part, where that is asked for. */
    void keep(SpreadQuestion question, SpreadRun.RunPart one, SpreadTally tally) {
        if (keep != null) {
            NewFile.write("--keep", keep, SpreadParts.text(question, one, tally));
        }
    }
}
