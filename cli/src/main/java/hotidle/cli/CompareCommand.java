package hotidle.cli;

import hotidle.answer.compare.CompareAnswer;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.text.Dimension;
import hotidle.study.Comparison;
import hotidle.study.FrictionBands;
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

    @Option(names = "--build", description = "a build to show; give it again for each. Default: all builds")
    List<String> builds = List.of();

    @Option(
            names = "--speed",
            defaultValue = "400..4000/50rpm",
            description =
                    "engine speeds searched for the speed from which the line is held and the least film. Default: ${DEFAULT-VALUE}")
    String speed;

    @Mixin
    private ShownDuties shown;

    @Mixin
    private OwnHeat ownHeat;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        DescribedCircuit described = asked.load();
        List<String> named = builds.isEmpty()
                ? described.builds().stream().map(DescribedCircuit.Build::name).toList()
                : builds;
        List<String> duties = shown.of(described.unit());
        OwnHeat.Settled settled = ownHeat.at(Circuits.units(described, named));
        Comparison comparison = Comparison.of(settled.units(), OptionValues.series("--speed", speed, Dimension.SPEED));
        return Printed.print(
                spec,
                asked.shared,
                new CompareAnswer(
                        described,
                        comparison,
                        FrictionBands.of(comparison),
                        duties,
                        settled.settling(),
                        asked.shared.units));
    }
}
