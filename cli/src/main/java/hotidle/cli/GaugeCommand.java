package hotidle.cli;

import hotidle.answer.gauge.GaugeAnswer;
import hotidle.answer.gauge.GaugePicture;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.sheet.GaugeReadings;
import hotidle.study.gauge.FitsTogether;
import hotidle.transmission.Adjustable;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Whether gauge readings agree with a build, and which fault explains them. */
@Command(
        name = "gauge",
        mixinStandardHelpOptions = true,
        description = {
            "Says whether gauge readings agree with a build, which faults explain them, which of these cannot be told apart,"
                    + " and what to read next.",
            "'hotidle sheet CIRCUIT --readings' writes the sheet to fill in."
        })
final class GaugeCommand implements Callable<Integer> {

    @Mixin
    CircuitOptions asked;

    @Option(
            names = "--build",
            paramLabel = "BUILD",
            description = "the build as it was measured. Default: the circuit's first")
    String build;

    @Option(
            names = "--readings",
            paramLabel = "FILE.csv",
            required = true,
            description = "a filled sheet of gauge readings (see 'hotidle sheet CIRCUIT --readings')")
    Path readings;

    @Mixin
    PlotOption plot;

    @Mixin
    private AfterWork work;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        plot.check();
        DescribedCircuit asWritten = asked.load();
        WorkedBuilds worked =
                asked.afterAsHeaded(work.asked(), asWritten, List.of(Circuits.adjustable(asWritten, build)));
        DescribedCircuit described = worked.circuit();
        Adjustable chosen = worked.first();
        PrintWriter err = spec.commandLine().getErr();
        GaugeReadings read = ReadingsFile.read(readings, chosen.unit(), err);
        GaugeAnswer answer = new GaugeRun(err, chosen)
                .answer(asked.shared.units(), described, readings.getFileName().toString(), read);
        plot.draw(() -> Optional.of(new GaugePicture(answer).picture()), err);
        boolean whole = asked.shared.full || asked.shared.format == OutputOptions.Format.JSON;
        return Printed.print(
                spec, asked.shared, whole ? answer.with(FitsTogether.of(chosen, read.readings())) : answer);
    }
}
