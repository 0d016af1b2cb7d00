package hotidle.cli;

import hotidle.answer.window.WindowAnswer;
import hotidle.circuits.DescribedCircuit;
import hotidle.study.LowAtIdle;
import hotidle.study.TorqueConditions;
import hotidle.study.UsefulPressure;
import hotidle.study.Window;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Optional;
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
                        + " for all of them. Command and spring are set together, as by --set of sweep.")
final class WindowCommand implements Callable<Integer> {

    @Mixin
    CircuitOptions asked;

    @Option(
            names = "--build",
            paramLabel = "BUILD",
            description = "a build; give it again for each. Default: the circuit's first")
    List<String> builds = List.of();

    @Option(
            names = "--set",
            paramLabel = "PRESSURES",
            defaultValue = "60..400/20psi",
            description = "set pressures tried; limits between them are narrowed down. Default: ${DEFAULT-VALUE}")
    String set;

    @Mixin
    private SetBy setBy;

    @Mixin
    private OwnHeat ownHeat;

    /** Step of the engine speeds searched, where none are given [rev/s]. */
    static final double STEP = 150 / 60.0;

    @Option(names = "--speed", paramLabel = "SPEEDS", description = OptionValues.SEARCHED_SPEEDS + "150rpm")
    String speed;

    /** Now a command of its own; kept to say so. */
    @Option(names = "--vary", hidden = true)
    String vary;

    /** Went with it. */
    @Option(names = "--map", hidden = true)
    String map;

    @Spec
    CommandSpec spec;

    /** Limits that a unit usually has; the bar need not be exact. */
    private static final int LIMITS = 20;

    @Override
    public Integer call() {
        MovedOption.refuse("--vary", vary, "hotidle map CIRCUIT --vary PART.key=LOW..HIGHunit");
        MovedOption.refuse("--map", map, "hotidle map CIRCUIT --vary PART.key=LOW..HIGHunit --plot FILE");
        DescribedCircuit described = asked.load();
        List<Double> pressures = SetPressures.of(set);
        List<Double> speeds = OptionValues.searched(speed, described.unit(), STEP);
        List<Transmission> units = Circuits.units(described, builds);
        return Printed.print(
                spec,
                asked.shared,
                new WindowAnswer(
                        asked.shared.units(),
                        described.name(),
                        described.about(),
                        setBy.by(),
                        ownHeat.given(),
                        Stop.each(
                                units,
                                unit -> study(unit, pressures, speeds),
                                spec.commandLine().getErr()),
                        LowAtIdle.of(units)));
    }

    /** Up to which set pressure more torque is held; empty where torque cannot be asked of the unit. */
    static Optional<UsefulPressure> useful(Transmission unit, Window.Raised raised, List<Double> pressures) {
        return TorqueConditions.given(unit)
                ? Optional.of(UsefulPressure.of(unit, raised, pressures, TorqueConditions.USUAL_SPEED))
                : Optional.empty();
    }

    private WindowAnswer.BuildWindow study(Transmission unit, List<Double> pressures, List<Double> speeds) {
        unit.command();
        setBy.at(unit, pressures.get(0), set);
        Window.Raised given = Window.Raised.by(unit, setBy.by());
        Window.Raised raised = ownHeat.asked(unit) ? given.settled() : given;
        Progress progress = new Progress(
                spec.commandLine().getErr(),
                "trying set pressures",
                unit.duties().size() * pressures.size() + LIMITS);
        Window window = Window.study(unit, raised, pressures, speeds, progress::step);
        progress.end();
        return new WindowAnswer.BuildWindow(unit, window, useful(unit, given, pressures));
    }
}
