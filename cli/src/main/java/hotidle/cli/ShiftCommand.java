package hotidle.cli;

import hotidle.answer.shift.ShiftAnswer;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.text.Dimension;
import hotidle.study.LockupHeat;
import hotidle.study.ShiftHeat;
import hotidle.study.TorqueConditions;
import hotidle.transmission.DutyPoint;
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

    @Option(
            names = "--inertia",
            paramLabel = "INERTIA",
            required = true,
            description =
                    "moment of inertia on the turbine's side, engine and converter with it, as 0.6kg.m2 or 14lb.ft2")
    String inertia;

    @Option(
            names = "--speed",
            paramLabel = "SPEED",
            defaultValue = "2800rpm",
            description = "turbine speed before the shift. Default: ${DEFAULT-VALUE}")
    String speed;

    @Option(
            names = "--torque",
            paramLabel = "TORQUE",
            description = "turbine torque, kept during the shift. Default: the highest engine torque")
    String torque;

    @Option(
            names = "--plate",
            paramLabel = "LENGTH",
            defaultValue = "2mm",
            description = "thickness of the steel plates (assumed). Default: ${DEFAULT-VALUE}")
    String plate;

    @Option(
            names = "--lockup-time",
            paramLabel = "TIME",
            defaultValue = "1s",
            description = "time over which the lockup is applied. Default: ${DEFAULT-VALUE}")
    String time;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        DescribedCircuit described = asked.load();
        Transmission unit = Circuits.adjustable(described, build).unit();
        ShiftHeat.Asked under = new ShiftHeat.Asked(
                above("--speed", speed, Dimension.SPEED),
                torque == null
                        ? unit.duties().stream()
                                .mapToDouble(DutyPoint::engineTorque)
                                .max()
                                .orElse(0)
                        : above("--torque", torque, Dimension.TORQUE),
                above("--inertia", inertia, Dimension.INERTIA),
                above("--plate", plate, Dimension.LENGTH));
        double over = above("--lockup-time", time, Dimension.TIME);
        if (!TorqueConditions.given(unit)) {
            throw new WrongInputException(
                    "hotidle: " + unit.circuit() + " applies no clutch, or no driving condition under"
                            + " load gives the temperatures of all regions, so that no shift can be asked for");
        }
        List<ShiftHeat> shifts = ShiftHeat.of(unit, under);
        return Printed.print(
                spec,
                asked.shared,
                new ShiftAnswer(
                        asked.shared.units(),
                        described.name(),
                        unit.build(),
                        under,
                        shifts,
                        shifts.isEmpty() ? List.of() : ShiftHeat.still(unit, shifts),
                        over,
                        LockupHeat.of(unit, over)));
    }

    private static double above(String option, String text, Dimension dimension) {
        double value = OptionValues.quantity(option, text, dimension);
        if (!(value > 0)) {
            throw new WrongInputException("hotidle: " + option + " " + text + ": must be above zero");
        }
        return value;
    }
}
