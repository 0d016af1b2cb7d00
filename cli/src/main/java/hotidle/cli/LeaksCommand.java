package hotidle.cli;

import hotidle.answer.leaks.LeaksAnswer;
import hotidle.assess.Assessment;
import hotidle.assess.IdlePressure;
import hotidle.assess.OilBudget;
import hotidle.assess.Roles;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.text.Dimension;
import hotidle.newton.SteadySolver;
import hotidle.result.Outcome;
import hotidle.study.RepairFindings;
import hotidle.study.Repairs;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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
        Outcome outcome = new SteadySolver(unit.network()).solve(unit.conditions(at));
        Optional<Assessment> assessed = outcome.state().map(state -> Assessment.of(unit, at, roles, state));
        Optional<LeaksAnswer.Found> found = assessed.flatMap(one ->
                repairs(chosen, at, speeds).map(repairs -> found(unit, at, one.budget(), repairs, speeds.get(0))));
        LeaksAnswer answer = new LeaksAnswer(
                asked.shared.units, described.about(), described.abouts(), unit, roles, at, outcome, assessed, found);
        return Printed.print(spec, asked.shared, answer);
    }

    private static LeaksAnswer.Found found(
            Transmission unit, DutyPoint at, OilBudget budget, Repairs repairs, double lowest) {
        Repairs.Effect now = repairs.before();
        boolean low = IdlePressure.low(unit, at, OptionalDouble.of(now.line()), OptionalDouble.of(now.set()));
        return new LeaksAnswer.Found(
                budget,
                repairs,
                RepairFindings.of(repairs, unit.commanded().isPresent(), LeaksAnswer.MOST_ALONE),
                low,
                lowest);
    }

    private Optional<Repairs> repairs(Adjustable chosen, DutyPoint at, List<Double> speeds) {
        int offered = Repairs.of(chosen).size();
        Progress progress =
                new Progress(spec.commandLine().getErr(), "trying repairs", offered + Math.min(steps, offered));
        Optional<Repairs> found = Repairs.study(chosen, at, speeds, steps, progress::step);
        progress.end();
        return found;
    }
}
