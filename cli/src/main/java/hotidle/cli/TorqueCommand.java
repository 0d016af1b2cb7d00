package hotidle.cli;

import hotidle.answer.torque.TorqueAnswer;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.text.Dimension;
import hotidle.study.LowAtIdle;
import hotidle.study.TorqueConditions;
import hotidle.study.TorqueHeld;
import hotidle.transmission.Transmission;
import java.util.List;
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
                        + " has there, hot, and what gives first: clutches by pressure, shafts and the rest by their ratings.")
final class TorqueCommand implements Callable<Integer> {

    @Mixin
    CircuitOptions asked;

    @Option(
            names = "--build",
            paramLabel = "BUILD",
            description = "a build; give it again for each. Default: the circuit's first")
    List<String> builds = List.of();

    @Option(
            names = "--speed",
            paramLabel = "SPEED",
            defaultValue = "2000rpm",
            description = "engine speed. Default: ${DEFAULT-VALUE}")
    String speed;

    @Spec
    CommandSpec spec;

    /** Builds that stay readable side by side. */
    private static final int MOST_BUILDS = 3;

    @Override
    public Integer call() {
        DescribedCircuit described = asked.load();
        double turns = OptionValues.quantity("--speed", speed, Dimension.SPEED);
        if (!(turns > 0 && turns <= 100)) {
            throw new WrongInputException(
                    "hotidle: --speed " + speed + " is no speed of an engine\nmend: write 2000rpm");
        }
        List<Transmission> units = Circuits.units(described, builds);
        if (units.size() > MOST_BUILDS) {
            throw new WrongInputException(
                    "hotidle: torque shows " + MOST_BUILDS + " builds at most\nmend: name fewer builds");
        }
        units.get(0).command();
        judgeable(units.get(0));
        return Printed.print(
                spec,
                asked.shared,
                new TorqueAnswer(
                        asked.shared.units(),
                        described.name(),
                        described.about(),
                        units.stream().map(unit -> held(unit, turns)).toList(),
                        LowAtIdle.of(units)));
    }

    private static void judgeable(Transmission unit) {
        if (unit.ranges().stream().allMatch(range -> range.applied().isEmpty())) {
            throw new WrongInputException("hotidle: no range of " + unit.circuit() + " applies a clutch");
        }
        if (TorqueConditions.hottest(unit).isEmpty()) {
            throw new WrongInputException("hotidle: no driving condition under load of " + unit.circuit()
                    + " gives the temperatures of all regions\nmend: give them to one that has at least half of the highest"
                    + " engine torque");
        }
    }

    static TorqueAnswer.BuildTorque held(Transmission unit, double speed) {
        return new TorqueAnswer.BuildTorque(
                unit.build(),
                unit.gears().map(gears -> !gears.links().isEmpty()).orElse(false),
                TorqueHeld.of(unit, speed));
    }
}
