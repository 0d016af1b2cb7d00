package hotidle.cli;

import hotidle.answer.Answer;
import hotidle.answer.torque.TorqueAnswer;
import hotidle.study.LowAtIdle;
import hotidle.transmission.Adjustable;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The engine torque that each range of a build holds. */
@Command(
        name = "torque",
        mixinStandardHelpOptions = true,
        description =
                "Finds the highest engine torque that each range of a build holds at the line pressure that it really"
                        + " has there, hot, what gives first (clutches by pressure, shafts and the rest by their ratings), and up"
                        + " to which set pressure more is held; three builds side by side at most.")
final class TorqueCommand implements Callable<Integer> {

    @Mixin
    CircuitOptions asked;

    @Mixin
    private BuildsOption builds;

    @Mixin
    private TestSpeed speed;

    @Option(
            names = "--try",
            paramLabel = "PRESSURES",
            defaultValue = SetPressures.USUAL,
            description = "set pressures to try, lowest..highest/step: up to which one more torque is held. Default:"
                    + " ${DEFAULT-VALUE}")
    String tried;

    @Mixin
    private AskedPressure set;

    @Mixin
    private WantedTorque wanted;

    @Mixin
    private JobsAndFaults work;

    @Option(
            names = "--needed",
            description =
                    "rows of the line pressure that each range needs for each engine torque, beside what the file commands"
                            + " and what the unit has, in place of rows of what is held (for --format csv; --full prints both)")
    boolean needed;

    @Mixin
    private StageOptions stages;

    @Mixin
    private TorquePlot plot;

    @Spec
    CommandSpec spec;

    /** Builds that stay readable side by side. */
    private static final int MOST_BUILDS = 3;

    @Override
    public Integer call() {
        plot.check();
        var asWritten = asked.load();
        double turns = speed.turns();
        List<Adjustable> named = builds.adjustable(asWritten);
        BuildsOption.atMost(MOST_BUILDS, named, "torque");
        List<Double> pressures =
                SetPressures.of(tried, named.stream().map(Adjustable::unit).toList());
        TorqueRun.check(named.get(0).unit(), set.setBy(), pressures.get(0), "--try " + tried);
        BuildWork done = work.asked(set.pressure());
        WorkedBuilds worked =
                stages.asked() ? asked.after(done, asWritten, named) : asked.afterAsHeaded(done, asWritten, named);
        var described = worked.circuit();
        List<Adjustable> units = worked.adjustable();
        TorqueRun run = new TorqueRun(
                spec.commandLine().getErr(), asked.shared.units(), set.by(), pressures, turns, wanted.torque());
        Optional<StageRun> staged = stages.of(run, described, units, named);
        List<TorqueAnswer.BuildTorque> held =
                Stop.each(units, run::held, spec.commandLine().getErr());
        plot.draw(run, described.name(), units, held);
        List<String> low = LowAtIdle.of(worked.units());
        Answer answer = staged.<Answer>map(stage -> stage.answer(held, low))
                .orElseGet(() ->
                        new TorqueAnswer(asked.shared.units(), described.name(), described.about(), held, needed, low));
        return Printed.print(spec, asked.shared, answer);
    }
}
