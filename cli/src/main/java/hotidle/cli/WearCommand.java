package hotidle.cli;

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
                "Finds for each fit alone the size at which the first limit is gone at any duty point, and how far all fits"
                        + " may wear together.")
final class WearCommand implements Callable<Integer> {

    @Mixin
    CircuitOptions asked;

    @Option(names = "--build", description = "a build. Default: the circuit's first")
    String build;

    /** Step of the engine speeds searched, where none are given (chosen) [rev/s]. */
    private static final double STEP = 200 / 60.0;

    @Option(names = "--speed", description = OptionValues.SEARCHED_SPEEDS + "200rpm")
    String speed;

    @Option(names = "--fit", description = "a fit to look at, part.key; give it again for each. Default: all that wear")
    List<String> fits = List.of();

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        DescribedCircuit described = asked.load();
        Adjustable chosen = Circuits.adjustable(described, build);
        List<Double> speeds = OptionValues.searched(speed, chosen.unit(), STEP);
        List<WearSize> looked = looked(chosen);
        Progress progress = new Progress(spec.commandLine().getErr(), "wearing fits", looked.size() + 1);
        Wear wear = Wear.study(chosen, looked, speeds, progress::step);
        progress.end();
        return Printed.print(
                spec,
                asked.shared,
                new WearAnswer(
                        described.name(), described.about(), chosen.unit().build(), Wear.fits(chosen), wear));
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
