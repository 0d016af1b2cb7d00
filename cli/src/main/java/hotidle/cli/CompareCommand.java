package hotidle.cli;

import hotidle.answer.compare.CompareAnswer;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.text.Dimension;
import hotidle.study.Comparison;
import hotidle.study.FrictionBands;
import hotidle.transmission.Adjustable;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Builds side by side at the duty points. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        description =
                "Puts builds of a circuit side by side at each driving condition, and says in plain words what differs.")
final class CompareCommand implements Callable<Integer> {

    @Mixin
    CircuitOptions asked;

    @Option(
            names = "--build",
            paramLabel = "BUILD",
            description = "a build to show; give it again for each. Default: all builds")
    List<String> builds = List.of();

    @Option(
            names = "--speed",
            paramLabel = "SPEEDS",
            defaultValue = "400..4000/50rpm",
            description =
                    "engine speeds searched for the speed from which the line is held and the least film. Default: ${DEFAULT-VALUE}")
    String speed;

    @Mixin
    private ShownDuties shown;

    @Mixin
    private AfterWork work;

    @Mixin
    private OwnHeat ownHeat;

    @Mixin
    private ComparedTorque wanted;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        DescribedCircuit asWritten = asked.load();
        BuildWork done = work.asked();
        List<Adjustable> named = Circuits.adjustable(asWritten, named(asWritten));
        WorkSteps steps = WorkSteps.of(asked, done, asWritten, named);
        List<String> duties = shown.of(steps.circuit().unit());
        OwnHeat.Settled settled = ownHeat.at(steps.units());
        List<Double> speeds = OptionValues.series("--speed", speed, Dimension.SPEED);
        Comparison comparison = Comparison.of(settled.units(), speeds);
        return Printed.print(
                spec,
                asked.shared,
                new CompareAnswer(
                        steps.circuit(),
                        comparison,
                        FrictionBands.of(comparison),
                        duties,
                        done.given()
                                ? settled.settling()
                                        .after(done.besideSaid(asked.shared.units(), steps.left()), steps.made())
                                : settled.settling(),
                        UnmeasuredBands.of(asWritten, settled.units(), duties.get(0), speeds),
                        wanted.held(settled.units()),
                        asked.shared.units()));
    }

    private List<String> named(DescribedCircuit described) {
        return builds.isEmpty()
                ? described.builds().stream().map(DescribedCircuit.Build::name).toList()
                : builds;
    }
}
