package hotidle.cli;

import hotidle.answer.sensitivity.SensitivityAnswer;
import hotidle.circuits.DescribedCircuit;
import hotidle.study.LowAtIdle;
import hotidle.study.Sensitivity;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What each size does to the margins. */
@Command(
        name = "sensitivity",
        mixinStandardHelpOptions = true,
        description = "Shows how much each size moves the least headroom of a build, per 0.001 in or 0.01 mm.")
final class SensitivityCommand implements Callable<Integer> {

    @Mixin
    CircuitOptions asked;

    @Mixin
    private BuildsOption builds;

    /** Step of the engine speeds searched, where none are given (chosen) [rev/s]. */
    private static final double STEP = 50 / 60.0;

    @Option(names = "--speed", paramLabel = "SPEEDS", description = OptionValues.SEARCHED_SPEEDS + "50rpm")
    String speed;

    @Mixin
    private AfterWork work;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        DescribedCircuit asWritten = asked.load();
        WorkedBuilds worked = asked.afterAsHeaded(work.asked(), asWritten, builds.adjustable(asWritten));
        DescribedCircuit described = worked.circuit();
        List<Transmission> units = worked.units();
        List<Double> speeds = OptionValues.searched(speed, units.get(0), STEP);
        List<SensitivityAnswer.BuildSlopes> found = Stop.each(
                worked.adjustable(),
                build -> study(build, speeds),
                spec.commandLine().getErr());
        return Printed.print(
                spec,
                asked.shared,
                new SensitivityAnswer(
                        asked.shared.units(), described.name(), described.about(), found, LowAtIdle.of(units)));
    }

    private SensitivityAnswer.BuildSlopes study(Adjustable build, List<Double> speeds) {
        String name = build.unit().build();
        Progress progress = new Progress(
                spec.commandLine().getErr(),
                "changing sizes of " + name,
                build.unit().duties().size() + build.dimensions().size());
        Sensitivity found = Sensitivity.study(build, speeds, progress::step);
        progress.end();
        return new SensitivityAnswer.BuildSlopes(name, found);
    }
}
