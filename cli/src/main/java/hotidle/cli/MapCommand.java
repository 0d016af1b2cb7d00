package hotidle.cli;

import hotidle.answer.map.MapAnswer;
import hotidle.circuits.DescribedCircuit;
import hotidle.plots.Picture;
import hotidle.transmission.Adjustable;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The least headroom over set pressure and one size. */
@Command(
        name = "map",
        mixinStandardHelpOptions = true,
        description = "Shows the least headroom of a build over set pressure and one size. The pressures are"
                + " tried, and no build stays set to one; --set of compare and margins does that.")
final class MapCommand implements Callable<Integer> {

    @Mixin
    CircuitOptions asked;

    @Mixin
    private BuildsOption builds;

    @Option(
            names = "--try",
            paramLabel = "PRESSURES",
            defaultValue = SetPressures.USUAL,
            description =
                    "set pressures to try, lowest..highest/step, and the build's own between them. Default: ${DEFAULT-VALUE}")
    String tried;

    @Mixin
    private TriedNotSet notSet;

    @Mixin
    private SetBy setBy;

    /** Step of the engine speeds searched, where none are given (chosen) [rev/s]. */
    private static final double STEP = 150 / 60.0;

    @Option(names = "--speed", paramLabel = "SPEEDS", description = OptionValues.SEARCHED_SPEEDS + "150rpm")
    String speed;

    @Option(
            names = "--vary",
            paramLabel = "PART.key=LOW..HIGHunit",
            description =
                    "the size, which must be given, for example hub-bushing.clearance=0.02..0.15mm; a step may follow, as in"
                            + " 0.02..0.15/0.01mm. What the build and its file say of the size is tried too")
    String vary;

    @Mixin
    private JobsAndFaults work;

    @Mixin
    private PictureSize size;

    @Option(names = "--plot", paramLabel = "FILE", description = "draws the map into this file (.png, .svg or .pdf)")
    Path plot;

    @Spec
    CommandSpec spec;

    /** Maps that stay readable on one page. */
    private static final int MOST_MAPS = 2;

    @Override
    public Integer call() {
        notSet.refuse();
        DescribedCircuit asWritten = asked.load();
        List<Double> speeds = OptionValues.searched(speed, asWritten.unit(), STEP);
        if (vary == null) {
            asWritten.unit().command();
            throw VaryExample.missing(
                    asked.shared.units(),
                    asked.again(),
                    builds.adjustable(asWritten).get(0));
        }
        VariedSize varied = VariedSize.of(vary);
        BuildWork done = work.asked();
        WorkedBuilds worked = asked.afterAsHeaded(done, asWritten, builds.adjustable(asWritten));
        DescribedCircuit described = worked.circuit();
        List<Adjustable> chosen = worked.adjustable();
        if (plot != null) {
            PictureFile.check("--plot", plot);
            size.check();
            BuildsOption.atMost(MOST_MAPS, chosen, "--plot");
        }
        MapRun run = new MapRun(spec.commandLine().getErr(), setBy, tried, varied, speeds);
        MapAnswer answer = new MapAnswer(
                asked.shared.units(),
                described.name(),
                described.about(),
                done.headed(asked.shared.units()),
                setBy.by(),
                Stop.each(chosen, run::mapped, spec.commandLine().getErr()));
        if (plot != null) {
            PictureFile.draw(
                    size.of(new Picture(answer.charts())),
                    plot,
                    "",
                    spec.commandLine().getErr());
        }
        return Printed.print(spec, asked.shared, answer);
    }
}
