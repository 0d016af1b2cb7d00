package hotidle.cli;

import hotidle.answer.gauge.GaugeAnswer;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.sheet.GaugeReadings;
import hotidle.fault.UnitFaults;
import hotidle.study.LowAtIdle;
import hotidle.study.gauge.GaugeFindings;
import hotidle.study.gauge.GaugeStudy;
import hotidle.study.gauge.NextReadings;
import hotidle.study.gauge.UnsolvedPointException;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Command;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Whether gauge readings agree with a build, and which fault explains them. */
@picocli.CommandLine.Command(
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
        Progress progress = new Progress(
                spec.commandLine().getErr(),
                "trying faults in " + unit.build(),
                UnitFaults.of(chosen).size());
        GaugeFindings found = study(chosen, read, progress);
        progress.end();
        DutyPoint idle = unit.duties().stream()
                .min(java.util.Comparator.comparingDouble(DutyPoint::speed))
                .orElseThrow();
        double highest = unit.commanded()
                .flatMap(Command::pilot)
                .map(pilot -> pilot.lineByTorque().highest())
                .orElse(0.0);
        GaugeAnswer.Hardest hardest =
                new GaugeAnswer.Hardest(idle.speed(), idle.temperatures().getOrDefault("sump", Double.NaN), highest);
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
                        hardest,
                        unit.commanded().isPresent(),
                        low(unit, found)));
    }

    private static List<String> low(Transmission unit, GaugeFindings found) {
        if (unit.commanded().isEmpty()) {
            return List.of();
        }
        return found.lineLow(unit.command().line()) ? List.of(unit.build()) : LowAtIdle.of(List.of(unit));
    }

    private GaugeFindings study(Adjustable chosen, GaugeReadings read, Progress progress) {
        try {
            return GaugeStudy.of(chosen, read.readings(), progress::step);
        } catch (UnsolvedPointException unsolved) {
            throw new WrongInputException(
                    "hotidle: no steady state was found for " + chosen.unit().build() + " in "
                            + unsolved.point().range() + " at "
                            + Math.round(unsolved.point().speed() * 60)
                            + " rpm, so nothing can be expected of its gauges there\nmend: leave these readings out");
        }
    }
}
