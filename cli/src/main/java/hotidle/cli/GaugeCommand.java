package hotidle.cli;

import hotidle.answer.gauge.GaugeAnswer;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.sheet.GaugeReadings;
import hotidle.study.gauge.GaugeFindings;
import hotidle.study.gauge.NextReadings;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import java.nio.file.Path;
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

    @Spec
    CommandSpec spec;

    /** Readings that are proposed. */
    private static final int NEXT = 3;

    @Override
    public Integer call() {
        DescribedCircuit described = asked.load();
        Adjustable chosen = Circuits.adjustable(described, build);
        Transmission unit = chosen.unit();
        GaugeReadings read =
                ReadingsFile.read(readings, unit, spec.commandLine().getErr());
        GaugeRun run = new GaugeRun(spec.commandLine().getErr(), chosen);
        GaugeFindings found = run.findings(read);
        return Printed.print(
                spec,
                asked.shared,
                new GaugeAnswer(
                        asked.shared.units(),
                        described.name(),
                        described.about(),
                        unit.build(),
                        readings.getFileName().toString(),
                        found,
                        NextReadings.of(chosen, found, NEXT),
                        run.hardest(),
                        unit.commanded().isPresent(),
                        run.low(found)));
    }
}
