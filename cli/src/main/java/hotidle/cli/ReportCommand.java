package hotidle.cli;

import hotidle.answer.page.PageAnswer;
import hotidle.answer.report.Findings;
import hotidle.answer.report.PageHead;
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

    @Mixin
    private LessonOptions lesson;

    @Mixin
    FaultOption faults;

    @Mixin
    private ReadingsOption readings;

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
        PageHead above = head.read(inputs);
        PageAnswer answer = lesson.asked(faults) ? handout(circuit, above, inputs) : report(circuit, above, inputs);
        HtmlFile.write(answer.page(), file);
        return Printed.print(spec, asked.shared, answer);
    }

    private PageAnswer handout(DescribedCircuit circuit, PageHead above, ReadInputs inputs) {
        return new LessonRun(circuit, builds, faults, lesson.seed())
                .answer(
                        asked.shared.units(),
                        file.toString(),
                        above.lines(),
                        inputs.made(spec.root()),
                        spec.commandLine().getErr());
    }

    private PageAnswer report(DescribedCircuit circuit, PageHead above, ReadInputs inputs) {
        List<Transmission> units = Circuits.units(circuit, builds);
        var err = spec.commandLine().getErr();
        var taken = readings.of(units.get(0), inputs, err);
        boolean repaired = reader == ReportAnswer.Reader.CUSTOMER;
        // who pays is told of the unit as it is, which is named first
        Transmission told = repaired ? units.get(0) : ReportRun.told(units);
        // drawn while the rest is solved, since layout takes as long
        var drawing =
                CompletableFuture.supplyAsync(() -> ReportDrawing.of(reader, asked.shared.units(), circuit, told));
        Findings found = ReportRun.findings(asked.shared.units(), circuit, units, told, wear, repaired, taken, err);
        var made = inputs.made(spec.root());
        return ReportAnswer.of(
                asked.shared.units(), file.toString(), reader, above, circuit, found, drawing.join(), made);
    }
}
