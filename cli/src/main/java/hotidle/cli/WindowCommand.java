package hotidle.cli;

import hotidle.answer.window.WindowAnswer;
import hotidle.circuits.DescribedCircuit;
import hotidle.study.LowAtIdle;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Which set pressures each margin allows. */
@Command(
        name = "window",
        mixinStandardHelpOptions = true,
        description =
                "Finds the lowest and highest set pressure that each limit allows at every driving condition, and what is left"
                        + " for all of them. The pressures are tried, and no build stays set to one; --set of compare and margins does that.")
final class WindowCommand implements Callable<Integer> {

    @Mixin
    CircuitOptions asked;

    @Mixin
    private BuildsOption builds;

    @Option(
            names = "--try",
            paramLabel = "PRESSURES",
            defaultValue = SetPressures.USUAL,
            description =
                    "set pressures to try, lowest..highest/step; limits between them are narrowed down. Default: ${DEFAULT-VALUE}")
    String tried;

    @Mixin
    private TriedNotSet notSet;

    @Mixin
    private SetBy setBy;

    @Mixin
    private JobsAndFaults work;

    @Mixin
    private OwnHeat ownHeat;

    /** Step of the engine speeds searched, where none are given [rev/s]. */
    static final double STEP = 150 / 60.0;

    @Option(names = "--speed", paramLabel = "SPEEDS", description = OptionValues.SEARCHED_SPEEDS + "150rpm")
    String speed;

    @Mixin
    private MovedToMap moved;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        notSet.refuse();
        moved.refuse();
        DescribedCircuit asWritten = asked.load();
        List<Double> speeds = OptionValues.searched(speed, asWritten.unit(), STEP);
        BuildWork done = work.asked();
        WorkedBuilds worked = asked.afterAsHeaded(done, asWritten, builds.adjustable(asWritten));
        DescribedCircuit described = worked.circuit();
        PrintWriter err = spec.commandLine().getErr();
        WindowRun run = new WindowRun(err, setBy, tried, ownHeat, speeds);
        return Printed.print(
                spec,
                asked.shared,
                new WindowAnswer(
                        asked.shared.units(),
                        described.name(),
                        described.about(),
                        done.headed(asked.shared.units()),
                        setBy.by(),
                        ownHeat.given(),
                        Stop.each(worked.adjustable(), run::of, err),
                        LowAtIdle.of(worked.units())));
    }
}
