package hotidle.cli;

import hotidle.answer.wear.BuildWear;
import hotidle.answer.wear.WearAnswer;
import hotidle.circuits.DescribedCircuit;
import hotidle.study.Wear;
import hotidle.transmission.Adjustable;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** How far each fit may wear. */
@Command(
        name = "wear",
        mixinStandardHelpOptions = true,
        description =
                "Finds for each fit alone the size at which the first limit is gone at any driving condition, and how far all fits"
                        + " may wear together.")
final class WearCommand implements Callable<Integer> {

    @Mixin
    CircuitOptions asked;

    @Mixin
    private BuildsOption builds;

    /** Step of the engine speeds searched, where none are given (chosen) [rev/s]. */
    static final double STEP = 200 / 60.0;

    @Option(names = "--speed", paramLabel = "SPEEDS", description = OptionValues.SEARCHED_SPEEDS + "200rpm")
    String speed;

    @Option(
            names = "--fit",
            paramLabel = "PART.key",
            description = "a fit to look at, part.key; give it again for each. Default: all that wear")
    List<String> fits = List.of();

    @Mixin
    PlotOption plot;

    @Mixin
    private AfterWork work;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        plot.check();
        DescribedCircuit asWritten = asked.load();
        BuildWork done = work.asked();
        WorkedBuilds worked = asked.afterAsHeaded(done, asWritten, builds.adjustable(asWritten));
        DescribedCircuit described = worked.circuit();
        List<Adjustable> chosen = worked.adjustable();
        List<Double> speeds = OptionValues.searched(speed, chosen.get(0).unit(), STEP);
        chosen.forEach(this::looked);
        WearAnswer answer = new WearAnswer(
                asked.shared.units(),
                described.name(),
                described.about(),
                done.headed(asked.shared.units()),
                Stop.each(chosen, one -> study(one, speeds), spec.commandLine().getErr()));
        plot.draw(answer::picture, spec.commandLine().getErr());
        return Printed.print(spec, asked.shared, answer);
    }

    private BuildWear study(Adjustable build, List<Double> speeds) {
        List<WearSize> looked = looked(build);
        Progress progress = new Progress(
                spec.commandLine().getErr(), "wearing fits of " + build.unit().build(), looked.size() + 1);
        BuildWear wear = WearRun.of(build, looked, speeds, progress::step);
        progress.end();
        return wear;
    }

    private List<WearSize> looked(Adjustable chosen) {
        List<WearSize> wearing = Wear.fits(chosen);
        List<String> names = wearing.stream().map(WearSize::name).toList();
        for (String fit : fits) {
            if (!names.contains(fit)) {
                throw new WrongInputException("hotidle: --fit " + fit + ": no fit of that name wears in "
                        + chosen.unit().build() + "\nmend: " + hotidle.circuits.text.Nearest.mend(fit, names));
            }
        }
        return fits.isEmpty()
                ? wearing
                : wearing.stream()
                        .filter(dimension -> fits.contains(dimension.name()))
                        .toList();
    }
}
