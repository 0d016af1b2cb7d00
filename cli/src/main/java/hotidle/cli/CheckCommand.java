package hotidle.cli;

import hotidle.answer.check.CheckAnswer;
import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.CountPhrase;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.ReadCircuit;
import hotidle.circuits.check.NotJudged;
import hotidle.circuits.text.Problem;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Checks a circuit file and says what it leaves to the program. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = "Checks a circuit file: every fault with its place, then what the file leaves to the program.")
final class CheckCommand implements Callable<Integer> {

    @Parameters(paramLabel = "FILE", description = "a circuit file, or the name of a ready circuit")
    String file;

    @Mixin
    private UnitsOption units;

    @Option(names = "--full", description = "all of it: every value left to the program too")
    boolean full;

    /** Now a part of the whole answer; kept to say so. */
    @Option(names = "--all", hidden = true)
    Boolean all;

    @Mixin
    FilledSheet sheet;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        MovedOption.renamed("--all", all, "--full");
        ReadCircuit read = Circuits.read(file, sheet.file());
        DescribedCircuit circuit = read.circuit()
                .orElseThrow(
                        () -> new WrongInputException(Circuits.text(read.problems()) + "\n" + totals(read.problems())));
        read.problems().forEach(problem -> spec.commandLine().getErr().println(problem.text()));
        CheckAnswer answer =
                new CheckAnswer(circuit, read.problems().size(), NotJudged.of(circuit.unit()), shown(circuit));
        spec.commandLine().getOut().print(full ? answer.full() : answer.screen());
        return HotIdle.DONE;
    }

    private Quantity.UnitSystem shown(DescribedCircuit circuit) {
        units.ofFile(circuit.unitSystem());
        return units.shown();
    }

    /** How many errors each file has: the circuit, what it is based on, a sheet. */
    private static String totals(List<Problem> problems) {
        Map<String, Long> errors = problems.stream()
                .filter(problem -> problem.severity() == Problem.Severity.ERROR)
                .collect(Collectors.groupingBy(
                        problem -> problem.position().file(), LinkedHashMap::new, Collectors.counting()));
        return errors.entrySet().stream()
                .map(file -> file.getKey() + ": " + CountPhrase.of(file.getValue(), "error"))
                .collect(Collectors.joining("\n"));
    }
}
