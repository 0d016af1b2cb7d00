package hotidle.cli;

import hotidle.answer.leaks.LeaksAnswer;
import hotidle.assess.Assessment;
import hotidle.assess.Roles;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.text.Dimension;
import hotidle.study.LeakStudy;
import hotidle.study.Repairs;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Where the oil of a build goes, and what each repair wins back. */
@Command(
        name = "leaks",
        mixinStandardHelpOptions = true,
        description =
                "Shows where every bit of oil goes at a duty point, what each repair wins back, and in which order"
                        + " repairs are best done.")
final class LeaksCommand implements Callable<Integer> {

    @Mixin
    CircuitOptions asked;

    @Option(names = "--build", description = "a build. Default: the circuit's first")
    String build;

    @Option(names = "--duty", description = "duty point. Default: the first")
    String duty;

    @Option(
            names = "--speed",
            defaultValue = "400..4000/100rpm",
            description = "engine speeds searched for the onset of regulation. Default: ${DEFAULT-VALUE}")
    String speed;

    @Option(
            names = "--steps",
            defaultValue = "12",
            description = "repairs that are put in order. Default: ${DEFAULT-VALUE}")
    int steps;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        DescribedCircuit described = asked.load();
        Adjustable chosen = Circuits.adjustable(described, build);
        Transmission unit = chosen.unit();
        DutyPoint at = duty == null ? unit.duties().get(0) : OptionValues.duty(unit, duty);
        List<Double> speeds = OptionValues.series("--speed", speed, Dimension.SPEED);
        if (steps < 0) {
            throw new WrongInputException("hotidle: --steps " + steps + ": allowed is 0 or more");
        }
        Roles roles = Roles.of(unit);
        if (roles.chambers().isEmpty()) {
            throw new WrongInputException("hotidle: " + unit.circuit() + " has no pump, so there is no oil budget");
        }
        LeakStudy study = study(chosen, at, speeds);
        LeaksAnswer answer = new LeaksAnswer(
                asked.shared.units,
                described.about(),
                described.abouts(),
                unit,
                roles,
                at,
                study.outcome(),
                study.outcome().state().map(state -> Assessment.of(unit, at, roles, state)),
                study.found());
        return Printed.print(spec, asked.shared, answer);
    }

    private LeakStudy study(Adjustable chosen, DutyPoint at, List<Double> speeds) {
        int offered = Repairs.of(chosen).size();
        Progress progress =
                new Progress(spec.commandLine().getErr(), "trying repairs", offered + Math.min(steps, offered));
        LeakStudy study = LeakStudy.of(chosen, at, speeds, steps, LeaksAnswer.MOST_ALONE, progress::step);
        progress.end();
        return study;
    }
}
