package hotidle.cli;

import hotidle.answer.phrase.SpreadPhrase;
import hotidle.answer.spread.SpreadAnswer;
import hotidle.circuits.DescribedCircuit;
import hotidle.study.spread.SpreadFindings;
import hotidle.study.spread.SpreadQuestion;
import hotidle.study.spread.SpreadRun;
import hotidle.study.spread.SpreadTally;
import hotidle.transmission.Adjustable;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** How likely the limits hold with fits that nobody measured. */
@Command(
        name = "spread",
        mixinStandardHelpOptions = true,
        description =
                "Draws the fits that nobody measured as they may lie and says how often each limit holds at hot idle, which fits drive"
                        + " that, and which one is most worth measuring before the build.")
final class SpreadCommand implements Callable<Integer> {

    @Mixin
    CircuitOptions asked;

    @Mixin
    SpreadOptions options;

    @Mixin
    private SplitRun split;

    @Option(
            names = "--draws",
            paramLabel = "FILE.csv",
            description =
                    "writes a new file with a row for each unit drawn: its sizes [m, m2] and the headroom of each limit")
    Path draws;

    @Mixin
    PlotOption plot;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        plot.check();
        SpreadRun.RunPart one = split.checked();
        DescribedCircuit asWritten = asked.load();
        WorkedBuilds worked =
                asked.afterAsHeaded(options.work.asked(), asWritten, List.of(options.build.of(asWritten)));
        DescribedCircuit described = worked.circuit();
        Adjustable build = worked.first();
        SpreadQuestion question = options.question(build);
        Optional<SpreadTally> joined = split.joined(question);
        SpreadTally tally = joined.orElseGet(() -> run(question, one));
        split.keep(question, one, tally);
        boolean whole = joined.isPresent() || one.of() == 1;
        SpreadAnswer answer = new SpreadAnswer(
                asked.shared.units(),
                described.about(),
                question,
                tally,
                SpreadFindings.of(question.sizes(), tally),
                whole ? "" : SpreadPhrase.part(one.number(), one.of()));
        plot.draw(answer::picture, spec.commandLine().getErr());
        return Printed.print(spec, asked.shared, answer);
    }

    private SpreadTally run(SpreadQuestion question, SpreadRun.RunPart one) {
        SpreadRun run = new SpreadRun(question);
        Progress progress = new Progress(spec.commandLine().getErr(), "drawing units", run.blocks(one));
        try (DrawsFile rows = DrawsFile.of(draws, question, run.keys())) {
            return run.run(one, options.threads(), rows, progress::step);
        } catch (IllegalStateException ended) {
            throw ended.getCause() instanceof UncheckedIOException full
                    ? DrawsFile.cannot(draws, full.getCause())
                    : ended;
        } finally {
            progress.end();
        }
    }
}
