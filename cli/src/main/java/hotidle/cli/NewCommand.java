package hotidle.cli;

import hotidle.circuits.Library;
import hotidle.circuits.create.ReadyUnit;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes a unit of one's own from a ready circuit and a dozen answers. */
@Command(
        name = "new",
        mixinStandardHelpOptions = true,
        description = {
            "Makes the circuit file of a unit of your own from a ready circuit like it and what you know of it: what you do not know is"
                    + " scaled from the ready circuit and marked as assumed.",
            "Give answers as options, as rows 'question,answer' of a CSV file, or let yourself be asked with --ask,"
                    + " in this order: displacement, engine-torque, set-pressure, idle-pressure, idle-speed, reverse-pressure,"
                    + " converter-feed, cooler-flow, lubrication, ranges, clutch, faces, hub-diameter, hub-clearance, bore-diameter, bores."
        })
final class NewCommand implements Callable<Integer> {

    @Parameters(paramLabel = "NAME", description = "name of the unit; the file is NAME.yaml")
    String name;

    @Option(names = "--like", required = true, paramLabel = "CIRCUIT", description = "the ready circuit it is like")
    String like;

    @Option(
            names = "--answers",
            paramLabel = "FILE.csv",
            description = "rows 'question,answer'; a question is the name of an option")
    Path answers;

    @Option(
            names = "--ask",
            description =
                    "asks each question that is not answered yet; an empty line leaves it as it is, the end of a file of answers stops. Answers are kept in"
                            + " NAME-answers.csv beside the new file")
    boolean ask;

    @Option(
            names = "--out",
            paramLabel = "FILE.yaml",
            description = "file to write; it must be new. Default: NAME.yaml")
    Path out;

    @Option(names = "--full", description = "every limit of the new unit, not only those that fail or are narrow")
    boolean full;

    @Mixin
    private UnitsOption units;

    @Mixin
    NewQuestions questions;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        if (!name.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
            throw new WrongInputException(
                    "hotidle: " + name
                            + " is no name of a unit\nwhy:  a name has small letters, digits and hyphens\nmend: write bus-12, for example");
        }
        Path file = out == null ? Path.of(name + ".yaml") : out;
        NewFile.check("--out", file);
        ReadyUnit ready = ReadyUnit.of(
                like,
                Library.text(like)
                        .orElseThrow(() -> new WrongInputException("hotidle: --like " + like
                                + " is no ready circuit\nready circuits: " + String.join(", ", Library.names()))));
        Map<String, String> given = questions.answered();
        if (answers != null) {
            AnswersFile.read(answers, NewQuestions.ALL).forEach(given::putIfAbsent);
        }
        return new NewRun(spec, units.shown(), ready, file, full).run(name, given, ask, Optional.ofNullable(answers));
    }
}
