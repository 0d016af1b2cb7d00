package hotidle.cli;

import hotidle.answer.map.MapAnswer;
import hotidle.circuits.DescribedCircuit;
import hotidle.study.WindowMap;
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
        description = "Shows the least headroom of a build over set pressure and one size. Command and spring are set"
                + " together, as by --set of sweep.")
final class MapCommand implements Callable<Integer> {

    @Mixin
    CircuitOptions asked;

    @Option(names = "--build", description = "a build; give it again for each. Default: the circuit's first")
    List<String> builds = List.of();

    @Option(
            names = "--set",
            defaultValue = "60..400/20psi",
            description = "set pressures tried; limits between them are narrowed down. Default: ${DEFAULT-VALUE}")
    String set;

    @Mixin
    private SetBy setBy;

    /** Step of the engine speeds searched, where none are given (chosen) [rev/s]. */
    private static final double STEP = 150 / 60.0;

    @Option(names = "--speed", description = OptionValues.SEARCHED_SPEEDS + "150rpm")
    String speed;

    @Option(
            names = "--vary",
            required = true,
            paramLabel = "PART.key=LOW..HIGHunit",
            description = "the size, for example hub-bushing.clearance=0.02..0.15mm; a step may follow, as in"
                    + " 0.02..0.15/0.01mm")
    String vary;

    @Option(names = "--plot", paramLabel = "FILE", description = "draws the map into this file (.png or .svg)")
    Path plot;

    @Spec
    CommandSpec spec;

    /** Maps that stay readable on one page. */
    private static final int MOST_MAPS = 2;

    @Override
    public Integer call() {
        DescribedCircuit described = asked.load();
        List<Double> pressures = SetPressures.of(set);
        List<Double> speeds = OptionValues.searched(speed, described.unit(), STEP);
        if (plot != null) {
            PictureFile.check("--plot", plot);
        }
        VariedSize varied = VariedSize.of(vary);
        List<Adjustable> chosen = Circuits.units(described, builds).stream()
                .map(unit -> described.adjustable(unit.build()))
                .toList();
        if (plot != null && chosen.size() > MOST_MAPS) {
            throw new WrongInputException(
                    "hotidle: --plot shows " + MOST_MAPS + " builds at most\nmend: name fewer builds");
        }
        MapAnswer answer = new MapAnswer(
                asked.shared.units,
                described.name(),
                described.about(),
                setBy.by(),
                chosen.stream()
                        .map(one -> study(one, varied, pressures, speeds))
                        .toList());
        if (plot != null) {
            PictureFile.write(answer.charts(), plot);
            spec.commandLine().getErr().println("drawn: " + plot);
        }
        return Printed.print(spec, asked.shared, answer);
    }

    private MapAnswer.Mapped study(Adjustable build, VariedSize varied, List<Double> pressures, List<Double> speeds) {
        build.unit().command();
        setBy.at(build.unit(), pressures.get(0), set);
        WindowMap.Axis axis = varied.axis(build);
        List<Double> values = varied.values(build, axis);
        String name = build.unit().build();
        Progress progress =
                new Progress(spec.commandLine().getErr(), "mapping " + name, pressures.size() * values.size());
        WindowMap map = WindowMap.study(build, axis, pressures, setBy.by(), values, speeds, progress::step);
        progress.end();
        return new MapAnswer.Mapped(name, map);
    }
}
