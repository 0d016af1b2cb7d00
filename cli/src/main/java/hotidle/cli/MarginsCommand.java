package hotidle.cli;

import hotidle.answer.margins.MarginsAnswer;
import hotidle.assess.NotCommanded;
import hotidle.circuits.DescribedCircuit;
import hotidle.study.JudgedBuild;
import hotidle.study.LooseWritten;
import hotidle.study.SameSpeedFilms;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Every limit of a build at every duty point. */
@Command(
        name = "margins",
        mixinStandardHelpOptions = true,
        description =
                "Judges a build at each driving condition: does it regulate, do the clutches hold, is it lubricated, does the"
                        + " hub keep its film? Headroom below 0 fails, up to 10 %% is narrow.")
final class MarginsCommand implements Callable<Integer> {

    @Mixin
    CircuitOptions asked;

    @Mixin
    private BuildsOption builds;

    /** Step of the engine speeds searched, where none are given [rev/s]. */
    static final double STEP = 50 / 60.0;

    @Option(names = "--speed", paramLabel = "SPEEDS", description = OptionValues.SEARCHED_SPEEDS + "50rpm")
    String speed;

    @Mixin
    private ShownDuties shown;

    /** Now a command of its own; kept to say so. */
    @Option(names = "--sensitivity", hidden = true)
    Boolean sensitivity;

    @Mixin
    private AfterWork work;

    @Mixin
    private OwnHeat ownHeat;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        MovedOption.refuse("--sensitivity", sensitivity, "hotidle sensitivity CIRCUIT");
        DescribedCircuit asWritten = asked.load();
        WorkedBuilds worked = asked.afterAsHeaded(work.asked(), asWritten, builds.adjustable(asWritten));
        DescribedCircuit described = worked.circuit();
        List<Transmission> units = worked.units();
        List<Double> speeds = OptionValues.searched(speed, units.get(0), STEP);
        List<String> duties = shown.of(units.get(0));
        OwnHeat.Settled settled = ownHeat.at(units);
        List<JudgedBuild> judged = judge(settled.units(), speeds);
        return Printed.print(
                spec,
                asked.shared,
                new MarginsAnswer(
                        asked.shared.units(),
                        described.name(),
                        described.about(),
                        judged,
                        NotCommanded.of(units.get(0)),
                        SameSpeedFilms.of(judged),
                        settled.settling(),
                        duties,
                        ownHeat.given() ? List.of() : loose(worked, judged, speeds)));
    }

    /** Looked for at the temperatures of the file alone: at its own heat a build with other fits would be another one. */
    private static List<LooseWritten> loose(WorkedBuilds worked, List<JudgedBuild> judged, List<Double> speeds) {
        return IntStream.range(0, judged.size())
                .mapToObj(i -> LooseWritten.of(worked.adjustable().get(i), judged.get(i), speeds))
                .flatMap(Optional::stream)
                .toList();
    }

    private List<JudgedBuild> judge(List<Transmission> units, List<Double> speeds) {
        int duties = units.stream().mapToInt(unit -> unit.judgedDuties().size()).sum();
        Progress progress = new Progress(spec.commandLine().getErr(), "judging", duties);
        List<JudgedBuild> judged = JudgedBuild.study(units, speeds, progress::step);
        progress.end();
        return judged;
    }
}
