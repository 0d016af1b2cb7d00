package hotidle.cli;

import hotidle.answer.sweep.SweepAnswer;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.text.Dimension;
import hotidle.study.FrictionBands;
import hotidle.study.LowAtIdle;
import hotidle.study.SpeedSweep;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Pressures and flows over engine speed. */
@Command(
        name = "sweep",
        mixinStandardHelpOptions = true,
        description = "Solves a circuit over engine speed, rising and falling, and shows or draws what comes of it.")
final class SweepCommand implements Callable<Integer> {

    /** Limit of the option, that of a circuit file [rev/s]. */
    private static final double MOST_SPEED = 20_000 / 60.0 + 1e-9;

    @Mixin
    CircuitOptions asked;

    @Mixin
    private BuildsOption builds;

    @Option(
            names = "--speed",
            paramLabel = "SPEEDS",
            defaultValue = "500..3500/100rpm",
            description = "engine speeds, first..last/step. Default: ${DEFAULT-VALUE}")
    String speed;

    @Mixin
    SweptDuty swept;

    @Option(
            names = "--from",
            paramLabel = "START",
            defaultValue = "rising",
            description =
                    "where each state shown is started from: ${COMPLETION-CANDIDATES}. It matters only where the"
                            + " circuit has two steady states; both sweeps are always run and compared. Default: ${DEFAULT-VALUE}")
    SpeedSweep.From from = SpeedSweep.From.RISING;

    @Mixin
    private SweepPictures pictures;

    @Mixin
    private AfterWork work;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        DescribedCircuit asWritten = asked.load();
        List<Double> speeds = OptionValues.series("--speed", speed, Dimension.SPEED);
        pictures.check(speeds);
        OptionValues.within("--speed", speed, speeds.get(speeds.size() - 1), MOST_SPEED, "0 to 20000 rpm");
        refuseUncommanded(asWritten.unit());
        WorkedBuilds worked = asked.after(work.asked(), asWritten, builds.adjustable(asWritten));
        DescribedCircuit described = worked.circuit();
        List<SpeedSweep> sweeps = new ArrayList<>();
        for (Transmission unit : worked.units()) {
            for (DutyPoint point : swept.duties(unit)) {
                sweeps.add(SpeedSweep.run(unit, point, speeds, from));
            }
        }
        SweepAnswer answer = new SweepAnswer(
                described,
                sweeps,
                FrictionBands.of(sweeps),
                swept.warm(),
                asked.shared.units(),
                LowAtIdle.of(sweeps.stream().map(SpeedSweep::unit).distinct().toList()));
        answer.warnings().forEach(spec.commandLine().getErr()::println);
        pictures.draw(described, answer, spec.commandLine().getErr());
        return Printed.print(spec, asked.shared, answer);
    }

    private void refuseUncommanded(Transmission unit) {
        if (work.setAsked() && unit.commanded().isEmpty()) {
            throw new WrongInputException("hotidle: --set asks for a set pressure, but " + unit.circuit()
                    + " is not commanded\nmend: leave out --set, or give the circuit a command section");
        }
    }
}
