package hotidle.cli;

import hotidle.answer.page.Figure;
import hotidle.answer.report.Findings;
import hotidle.answer.report.PageHead;
import hotidle.answer.report.ReportAnswer;
import hotidle.circuits.DescribedCircuit;
import hotidle.cli.live.OtherCommands;
import hotidle.cli.page.HtmlPage;
import hotidle.study.Window;
import hotidle.transmission.Transmission;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import picocli.CommandLine.Model.CommandSpec;

/**
 * Other commands for a live page.
 *
 * @param circuit of the page
 * @param inputs  files that it was read from
 * @param program by which a report says what it was made with
 */
record LiveCommands(DescribedCircuit circuit, ReadInputs inputs, CommandSpec program) implements OtherCommands {

    private static final String FILE = "report.html";

    @Override
    public List<Double> searched(Transmission unit) {
        return OptionValues.searched(null, unit, MarginsCommand.STEP);
    }

    @Override
    public Window window(Transmission unit, Window.Raised raised, Runnable step) {
        List<Double> speeds = OptionValues.searched(null, unit, WindowCommand.STEP);
        return Window.study(unit, raised, SetPressures.of(SetPressures.USUAL, List.of(unit)), speeds, step);
    }

    @Override
    public String report(AskedReport asked) {
        try {
            return new String(HtmlPage.of(answer(asked).page()), StandardCharsets.UTF_8);
        } catch (WrongInputException none) {
            throw new IllegalArgumentException(none.getMessage(), none);
        }
    }

    private ReportAnswer answer(AskedReport asked) {
        ReadInputs own = inputs.copy();
        DescribedCircuit whole = asked.changed()
                .map(file -> Circuits.written(file.text(), file.name(), own))
                .orElse(circuit);
        Transmission unit = whole.unit(asked.build());
        PrintWriter nobody = new PrintWriter(Writer.nullWriter());
        CompletableFuture<List<Figure>> drawing = CompletableFuture.supplyAsync(
                () -> ReportDrawing.of(ReportAnswer.Reader.SHOP, asked.units(), whole, unit));
        Optional<ReadingsOption.TakenReadings> taken =
                asked.readings().map(read -> new ReadingsOption.TakenReadings(asked.sheet(), read));
        Findings found = ReportRun.findings(asked.units(), whole, List.of(unit), unit, false, false, taken, nobody);
        return ReportAnswer.of(
                asked.units(),
                FILE,
                ReportAnswer.Reader.SHOP,
                new PageHead(asked.notes(), List.of()),
                whole,
                found,
                drawing.join(),
                own.made(program));
    }
}
