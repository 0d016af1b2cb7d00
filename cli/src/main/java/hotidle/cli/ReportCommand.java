package hotidle.cli;

import hotidle.answer.page.Figure;
import hotidle.answer.report.Findings;
import hotidle.answer.report.LessonAnswer;
import hotidle.answer.report.MadeOf;
import hotidle.answer.report.ReportAnswer;
import hotidle.circuits.DescribedCircuit;
import hotidle.transmission.Transmission;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** All of it on one page. */
@Command(
        name = "report",
        mixinStandardHelpOptions = true,
        description =
                "Writes one HTML file that opens in any browser without a network and prints on A4 or Letter: which build holds, what"
                        + " may be set, what must be repaired and why, with all numbers, assumptions and sources behind it.")
final class ReportCommand implements Callable<Integer> {

    @Mixin
    CircuitOptions asked;

    @Option(
            names = "--build",
            paramLabel = "BUILD",
            description =
                    "a build; give it again for each. Oil, jobs and drawing are those of the first named. Default: the circuit's first")
    List<String> builds = List.of();

    @Option(
            names = "--for",
            defaultValue = "shop",
            paramLabel = "WHOM",
            description = "shop: all of it; customer: two pages in plain words. Default: ${DEFAULT-VALUE}")
    ReportAnswer.Reader reader;

    @Option(names = "--wear", description = "how far each fit may wear too; takes minutes")
    boolean wear;

    @Option(
            names = "--lesson",
            description =
                    "a handout for learners instead: units called by letters, their gauges read, the key on a page of"
                            + " its own; each --fault makes a unit of the first build")
    boolean lesson;

    @Option(
            names = "--seed",
            paramLabel = "NUMBER",
            defaultValue = "1",
            description = "order of the builds of a handout: another number, another order. Default: ${DEFAULT-VALUE}")
    long seed;

    @Mixin
    FaultOption faults;

    @Mixin
    Letterhead head;

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "the file: a name that ends in .html")
    Path file;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        HtmlFile.check("--out", file);
        ReadInputs inputs = new ReadInputs();
        DescribedCircuit circuit = asked.load(inputs);
        return lesson ? lesson(circuit, inputs) : report(circuit, inputs);
    }

    private int lesson(DescribedCircuit circuit, ReadInputs inputs) {
        LessonAnswer answer = new LessonAnswer(
                asked.shared.units(),
                file.toString(),
                head.lines(),
                circuit,
                new LessonRun(circuit, builds, faults, seed).units(),
                ReportDrawing.ofLesson(asked.shared.units(), circuit),
                made(inputs));
        HtmlFile.write(answer.page(), file);
        return Printed.print(spec, asked.shared, answer);
    }

    private int report(DescribedCircuit circuit, ReadInputs inputs) {
        if (faults.given()) {
            throw new WrongInputException(
                    "hotidle: --fault makes a unit of a handout\nmend: write --lesson too, or ask compare, which lays it over builds");
        }
        List<Transmission> units = Circuits.units(circuit, builds);
        CompletableFuture<List<Figure>> drawing = CompletableFuture.supplyAsync(() -> drawing(circuit, units.get(0)));
        Progress progress = new Progress(spec.commandLine().getErr(), "solving for the report", ReportRun.STUDIES);
        Findings found = new ReportRun(asked.shared.units(), circuit, units, wear, progress).findings();
        progress.end();
        ReportAnswer answer = new ReportAnswer(
                asked.shared.units(),
                file.toString(),
                reader,
                head.lines(),
                circuit,
                found,
                drawing.join(),
                made(inputs));
        HtmlFile.write(answer.page(), file);
        return Printed.print(spec, asked.shared, answer);
    }

    /** Drawn while the rest is solved, since layout takes as long; a customer gets none. */
    private List<Figure> drawing(DescribedCircuit circuit, Transmission unit) {
        return reader == ReportAnswer.Reader.CUSTOMER
                ? List.of()
                : List.of(ReportDrawing.of(
                        asked.shared.units(),
                        circuit,
                        unit,
                        unit.duties().stream().findFirst()));
    }

    private MadeOf made(ReadInputs inputs) {
        return inputs.made(spec.root());
    }
}
