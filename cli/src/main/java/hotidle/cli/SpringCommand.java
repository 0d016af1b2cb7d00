package hotidle.cli;

import hotidle.answer.spring.SpringAnswer;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.text.Dimension;
import hotidle.study.SpringStudy;
import hotidle.study.UsefulPressure;
import hotidle.transmission.Adjustable;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Which spring, shim or boost valve gives a set pressure. */
@Command(
        name = "spring",
        mixinStandardHelpOptions = true,
        description =
                "Finds which preload, shim, spring rate or boost diameter of the regulator gives a set pressure, each alone; whether"
                        + " the coils touch before the stop; whether the unit holds with it, and which limit is first; and what else"
                        + " it moves. Pilot and throttle pressure stay as they are.")
final class SpringCommand implements Callable<Integer> {

    @Mixin
    CircuitOptions asked;

    @Option(
            names = "--build",
            paramLabel = "BUILD",
            description = "the build that is changed. Default: the circuit's first")
    String build;

    @Option(
            names = "--set",
            required = true,
            paramLabel = "PRESSURE",
            description = "set pressure wanted, the highest of the forward ranges, as 240psi")
    String set;

    @Mixin
    private JobsNoFaults work;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        double pressure = OptionValues.quantity("--set", set, Dimension.PRESSURE);
        if (!(pressure > 0)) {
            throw new WrongInputException(
                    "hotidle: --set " + set + ": a set pressure is above zero\nmend: write 240psi, for example");
        }
        DescribedCircuit described = asked.load();
        Adjustable own = Circuits.adjustable(described, build);
        BuildWork done = work.asked();
        Transmission unit = asked.after(done, described, List.of(own)).first().unit();
        unit.command();
        SpringStudy study = SpringStudy.of(unit, pressure);
        return Printed.print(
                spec,
                asked.shared,
                new SpringAnswer(
                        asked.shared.units(),
                        asked.again(),
                        study,
                        done.asked(own.unit().build()),
                        study.judged(OptionValues.searched(null, unit, MarginsCommand.STEP)),
                        UsefulPressure.below(unit, SetPressure.By.SPRING, pressure)));
    }
}
