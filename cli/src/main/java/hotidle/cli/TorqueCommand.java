package hotidle.cli;

import hotidle.answer.Answer;
import hotidle.answer.torque.TorqueAnswer;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.text.Dimension;
import hotidle.study.LowAtIdle;
import hotidle.transmission.Transmission;
import java.nio.file.Path;
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
                        + " to which set pressure more is held.")
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

    @Option(
            names = "--set",
            paramLabel = "PRESSURES",
            defaultValue = "60..400/20psi",
            description =
                    "set pressures among which is searched up to which one more is held. Default: ${DEFAULT-VALUE}")
    String set;

    @Mixin
    private SetBy setBy;

    @Option(
            names = "--needed",
            description =
                    "rows of the line pressure that each range needs for each engine torque, beside what the file commands"
                            + " and what the unit has, in place of rows of what is held (for --format csv; --full prints both)")
    boolean needed;

    @Option(
            names = "--stages",
            description =
                    "builds side by side as stages that a shop quotes: torque, what gives first, set pressures that hold"
                            + " every limit, wear that is left, jobs")
    boolean stages;

    @Option(
            names = "--from",
            paramLabel = "BUILD",
            description =
                    "with --stages: the build as it comes in. Default: the nearest one, not asked for, that the first"
                            + " build stands on")
    String from;

    @Option(
            names = "--plot",
            paramLabel = "FILE",
            description =
                    "draws torque held against set pressure, a line a clutch or link, into this file (.png or .svg)")
    Path plot;

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
        List<Double> pressures = SetPressures.of(set);
        TorqueRun.check(units.get(0), setBy, pressures.get(0), set);
        if (plot != null) {
            PictureFile.check("--plot", plot);
        }
        TorqueRun run = new TorqueRun(spec.commandLine().getErr(), asked.shared.units(), setBy.by(), pressures, turns);
        Optional<StageRun> staged = stages ? Optional.of(StageRun.of(run, described, units, from)) : Optional.empty();
        List<TorqueAnswer.BuildTorque> held =
                Stop.each(units, run::held, spec.commandLine().getErr());
        if (plot != null) {
            PictureFile.write(run.charts(described.name(), units, held, plot), plot);
            spec.commandLine().getErr().println("drawn: " + plot);
        }
        List<String> low = LowAtIdle.of(units);
        Answer answer = staged.<Answer>map(stage -> stage.answer(held, low))
                .orElseGet(() ->
                        new TorqueAnswer(asked.shared.units(), described.name(), described.about(), held, needed, low));
        return Printed.print(spec, asked.shared, answer);
    }
}
