package hotidle.cli;

import hotidle.answer.part.KindHelp;
import hotidle.answer.part.PartAnswer;
import hotidle.answer.part.PartChart;
import hotidle.answer.part.PartState;
import hotidle.circuits.kind.Kind;
import hotidle.circuits.kind.Kinds;
import hotidle.circuits.single.LibraryMaterials;
import hotidle.circuits.text.Nearest;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** One part on its own. */
@Command(
        name = "part",
        description = {
            "Solves one part on its own, with the keys of a circuit file.",
            "For example:",
            "  hotidle part annular-gap bore=14.06mm valve=14.00mm length=8mm --drop 150psi",
            "'hotidle part annular-gap --help' lists the keys of a kind, 'hotidle part --help' the kinds."
        })
final class PartCommand implements Callable<Integer> {

    @Parameters(index = "0", arity = "0..1", paramLabel = "KIND", description = "kind of part, see below")
    String kind;

    @Parameters(
            index = "1..*",
            arity = "0..*",
            paramLabel = "KEY=VALUE",
            description = "its keys as in a circuit file, each in one word: bore=14.06mm; keys within keys with dots:"
                    + " openings.feed.edge=1mm")
    List<String> words = List.of();

    @Mixin
    PartOptions duty = new PartOptions();

    @Mixin
    PartPlot plot = new PartPlot();

    @Option(
            names = {"-h", "--help"},
            description = "lists the kinds; behind a kind, its keys; with --full their sources too")
    boolean help;

    @Mixin
    OutputOptions shared;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        if (kind == null && !help) {
            throw new WrongInputException(
                    "hotidle part: name a kind of part\nkinds: " + String.join(", ", Kinds.words()));
        }
        if (kind == null) {
            spec.commandLine().usage(spec.commandLine().getOut());
            spec.commandLine().getOut().print(KindHelp.kinds());
            return HotIdle.DONE;
        }
        Kind known = Kinds.of(kind)
                .orElseThrow(() -> new WrongInputException("hotidle part: '" + kind + "' is no kind of part\nmend: "
                        + Nearest.mend(kind, Kinds.words()) + "\n'hotidle part --help' says what each is"));
        if (help) {
            spec.commandLine().getOut().print(KindHelp.keys(known, shared.full));
            return HotIdle.DONE;
        }
        return answer(known);
    }

    private int answer(Kind known) {
        plot.check();
        PartRun run = new PartRun(known, LibraryMaterials.ofLibrary());
        Optional<PartVary> over = plot.over(known);
        List<String> keys = duty.keys(known, words);
        Optional<PartChart> chart = over.map(number -> number.chart(run, keys, duty));
        chart.ifPresent(PartPlot::checkAny);
        PartState state = run.of(
                over.map(number -> number.completed(keys)).orElse(keys),
                over.map(number -> number.completed(duty)).orElse(duty));
        PartAnswer answer = new PartAnswer(state, chart, shared.units());
        answer.picture().ifPresent(picture -> {
            PictureFile.draw(
                    plot.size.of(picture), plot.file, "", spec.commandLine().getErr());
        });
        return Printed.print(spec, shared, answer);
    }
}
