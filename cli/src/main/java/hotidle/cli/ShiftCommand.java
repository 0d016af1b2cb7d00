package hotidle.cli;

import hotidle.answer.shift.ShiftAnswer;
import hotidle.circuits.DescribedCircuit;
import hotidle.study.LockupHeat;
import hotidle.study.ShiftHeat;
import hotidle.study.TorqueConditions;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The heat of a shift. */
@Command(
        name = "shift",
        mixinStandardHelpOptions = true,
        description =
                "Finds for each shift up what the clutch that closes carries, how long it slips, the heat that it makes and how warm"
                        + " its steel plates get, from given inertia and speed; and the heat of a lockup applied over a time"
                        + " against one held slipping. Wear is not computed.")
final class ShiftCommand implements Callable<Integer> {

    @Mixin
    CircuitOptions asked;

    @Option(names = "--build", paramLabel = "BUILD", description = "the build. Default: the circuit's first")
    String build;

    @Mixin
    private ShiftOptions conditions;

    @Mixin
    PlotOption plot;

    @Mixin
    private AfterWork work;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        plot.check();
        DescribedCircuit described = asked.load();
        Transmission unit = asked.after(work.asked(), described, List.of(Circuits.adjustable(described, build)))
                .first()
                .unit();
        ShiftHeat.AskedShift under = conditions.of(unit);
        double over = conditions.lockupTime();
        if (!TorqueConditions.given(unit)) {
            throw new WrongInputException(
                    "hotidle: " + unit.circuit() + " applies no clutch, or no driving condition under"
                            + " load gives the temperatures of all regions, so that no shift can be asked for");
        }
        List<ShiftHeat> shifts = ShiftHeat.of(unit, under);
        ShiftAnswer answer = new ShiftAnswer(
                asked.shared.units(),
                described.name(),
                unit.build(),
                under,
                shifts,
                shifts.isEmpty() ? List.of() : ShiftHeat.still(unit, shifts),
                over,
                LockupHeat.of(unit, over));
        plot.draw(answer::picture, spec.commandLine().getErr());
        return Printed.print(spec, asked.shared, answer);
    }
}
