package hotidle.cli;

import hotidle.answer.create.NewUnitScreen;
import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.NewPhrase;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.create.NewUnit;
import hotidle.circuits.create.ReadyUnit;
import hotidle.circuits.create.UnitAnswers;
import hotidle.study.JudgedBuild;
import hotidle.study.SameSpeedFilms;
import hotidle.transmission.Transmission;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;

/**
 * Asks, makes, writes and judges a new unit.
 *
 * @param ready that it is like
 * @param file  to write
 */
record NewRun(CommandSpec spec, Quantity.UnitSystem units, ReadyUnit ready, Path file, boolean full) {

    /**
     * Runs.
     *
     * @param given   answers by question
     * @param answers file that some of them are from
     * @throws WrongInputException where an answer cannot be taken
     */
    int run(String name, Map<String, String> given, boolean ask, Optional<Path> answers) {
        Path kept = file.resolveSibling(name + "-answers.csv");
        Map<String, String> all = ask ? asked(given, kept, answers) : given;
        List<String> wrong = NewAnswers.wrong(all, ready);
        if (!wrong.isEmpty()) {
            throw new WrongInputException(String.join("\n", wrong));
        }
        UnitAnswers known = NewAnswers.of(all);
        NewUnit.MadeUnit made = NewUnit.of(name, ready, known);
        NewFile.write("--out", file, made.text());
        DescribedCircuit circuit =
                CircuitReader.read(made.text(), file.toString()).circuit().orElseThrow();
        Transmission sound = circuit.unit();
        JudgedBuild judged = judged(sound);
        NewUnitScreen screen = new NewUnitScreen(
                units,
                NewPhrase.made(
                        file,
                        made.text().lines().count(),
                        ready.name(),
                        NewPhrase.has(held(circuit, known, "clutch"), held(circuit, known, "band")),
                        sound.assumed().size()),
                judged,
                SameSpeedFilms.of(List.of(judged)),
                made.measureFirst(),
                circuit.sizes().stream()
                        .map(size -> size.part() + "." + size.key())
                        .toList(),
                NewPhrase.next(file, file.resolveSibling(name + "-sheet.csv"))
                        + (ask && Files.exists(kept) ? NewPhrase.kept(kept) : ""));
        spec.commandLine().getOut().print(full ? screen.full() : screen.screen());
        return HotIdle.DONE;
    }

    private Map<String, String> asked(Map<String, String> given, Path kept, Optional<Path> answers) {
        if (Files.exists(kept) && !answers.map(file -> same(file, kept)).orElse(false)) {
            throw new WrongInputException(
                    "hotidle: --ask: " + kept + " is there already, with the answers of another time\nmend: go on"
                            + " with them by --answers " + kept + ", or move it away");
        }
        BufferedReader lines = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        return new AskedAnswers(ready, units, kept, onTerminal(), spec).ask(given, lines);
    }

    /** Whether who is asked sits before it; the launcher asks newer Javas for the console that a pipe does not have. */
    @SuppressWarnings("SystemConsoleNull")
    private static boolean onTerminal() {
        return System.console() != null;
    }

    private static boolean same(Path one, Path other) {
        try {
            return Files.isSameFile(one, other);
        } catch (IOException notThere) {
            return false;
        }
    }

    private JudgedBuild judged(Transmission unit) {
        Progress progress = new Progress(
                spec.commandLine().getErr(), "judging", unit.judgedDuties().size());
        List<JudgedBuild> judged = JudgedBuild.study(
                List.of(unit), OptionValues.searched(null, unit, MarginsCommand.STEP), progress::step);
        progress.end();
        return judged.get(0);
    }

    /** Clutches, or bands, that its ranges apply; an answer may have made a clutch of a band. */
    private List<String> held(DescribedCircuit circuit, UnitAnswers known, String kind) {
        List<String> applied = Stream.of("clutch", "band")
                .flatMap(either -> ready.pistons(either, known.ranges()).stream())
                .toList();
        return circuit.parts().stream()
                .filter(part -> part.kind().equals(kind) && applied.contains(part.name()))
                .map(DescribedCircuit.PartLine::name)
                .toList();
    }
}
