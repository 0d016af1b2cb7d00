package hotidle.cli;

import hotidle.answer.StateJson;
import hotidle.circuits.kind.Kind;
import hotidle.circuits.kind.Kinds;
import hotidle.circuits.shape.Key;
import hotidle.circuits.single.LibraryMaterials;
import hotidle.circuits.single.OnePart;
import hotidle.circuits.single.PartKeys;
import hotidle.circuits.single.ReadPart;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Nearest;
import hotidle.circuits.text.Problem;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
    PartDuty.Options duty = new PartDuty.Options();

    @Option(
            names = "--chart",
            paramLabel = "FILE",
            description = "draws flow (film of a bushing) against --vary into this file (.png or .svg)")
    Path chart;

    @Option(
            names = "--vary",
            paramLabel = "KEY=FROM..TO",
            description = "what the chart goes over: any key with a number, drop or temperature: length=1..12mm")
    String vary;

    @Option(
            names = {"-h", "--help"},
            description = "lists the kinds; behind a kind, its keys")
    boolean help;

    @Mixin
    Shared shared;

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
            spec.commandLine().getOut().print(PartHelp.kinds());
            return HotIdle.DONE;
        }
        Kind known = Kinds.of(kind)
                .orElseThrow(() -> new WrongInputException("hotidle part: '" + kind + "' is no kind of part\nmend: "
                        + Nearest.mend(kind, Kinds.words()) + "\n'hotidle part --help' says what each is"));
        if (help) {
            spec.commandLine().getOut().print(PartHelp.keys(known));
            return HotIdle.DONE;
        }
        return answer(known);
    }

    private int answer(Kind known) {
        if ((chart == null) != (vary == null)) {
            throw new WrongInputException("hotidle part: --chart and --vary go together,"
                    + " for example --chart flow.png --vary length=1..12mm");
        }
        LibraryMaterials stock = LibraryMaterials.ofLibrary();
        PartVary over = vary == null ? null : PartVary.of(known, vary);
        List<String> all = withSpeed(known);
        if (over != null) {
            PartChart.write(chart, known, all, over, duty, stock, shared.units);
            spec.commandLine().getErr().println("drawn: " + chart);
        }
        List<String> base = over == null ? all : over.completed(all);
        PartAnswer answer = PartAnswer.of(read(known, base, stock), over == null ? duty : over.completed(duty), stock);
        String text =
                switch (shared.format) {
                    case TABLE -> new PartText(answer, shared.units).table();
                    case CSV -> new PartText(answer, shared.units).csv();
                    case JSON -> StateJson.text(PartJson.of(answer));
                };
        spec.commandLine().getOut().print(text);
        return answer.outcome().state().isPresent() ? HotIdle.DONE : HotIdle.UNSOLVED;
    }

    /** --speed is another way to write the key. */
    private List<String> withSpeed(Kind known) {
        List<String> all = new ArrayList<>(words);
        if (duty.speed != null) {
            if (PartKeys.of(known).stream().map(Key::name).noneMatch("speed"::equals)) {
                throw new WrongInputException("hotidle part: --speed changes nothing in " + PartHelp.a(known.word()));
            }
            Choice.quantity("--speed", duty.speed, Dimension.SPEED);
            all.add("speed=" + duty.speed);
        }
        return all;
    }

    /** Reads the part; its warnings are part of the answer. */
    static ReadPart read(Kind kind, List<String> words, LibraryMaterials stock) {
        ReadPart read = OnePart.read(kind.word(), words, stock);
        if (read.part().isEmpty()) {
            throw new WrongInputException(Circuits.text(read.problems().stream()
                    .filter(problem -> problem.severity() == Problem.Severity.ERROR)
                    .toList()));
        }
        return read;
    }
}
