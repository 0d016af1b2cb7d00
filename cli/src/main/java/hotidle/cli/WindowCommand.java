package hotidle.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hotidle.answer.StateJson;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.Caution;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.text.Dimension;
import hotidle.plots.Chart;
import hotidle.study.Window;
import hotidle.study.WindowMap;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
                "Finds the lowest and highest set pressure that each limit allows at every duty point, and what is left"
                        + " for all of them. Command and spring are set together, as by --set of sweep.")
final class WindowCommand implements Callable<Integer> {

    @Mixin
    Asked asked;

    @Option(names = "--build", description = "a build; give it again for each. Default: the circuit's first")
    List<String> builds = List.of();

    @Option(
            names = "--set",
            defaultValue = "60..400/20psi",
            description = "set pressures tried; limits between them are narrowed down. Default: ${DEFAULT-VALUE}")
    String set;

    /** Step of the engine speeds searched, where none are given [rev/s]. */
    private static final double STEP = 150 / 60.0;

    @Option(
            names = "--speed",
            description =
                    "engine speeds searched for the hub's least film and largest load, for example 600..4000/50rpm."
                            + " Default: from the slowest duty point to 4000rpm in steps of 150rpm")
    String speed;

    @Option(
            names = "--vary",
            paramLabel = "PART.key=LOW..HIGHunit",
            description = "shows the least headroom over set pressure and this size instead, for example"
                    + " hub-bushing.clearance=0.02..0.15mm; a step may follow, as in 0.02..0.15/0.01mm")
    String vary;

    @Option(names = "--map", paramLabel = "FILE", description = "draws what --vary shows into this file (.png or .svg)")
    Path map;

    @Spec
    CommandSpec spec;

    /** Limits that a unit usually has; the bar need not be exact. */
    private static final int LIMITS = 20;

    @Override
    public Integer call() {
        DescribedCircuit described = asked.load();
        List<Double> pressures = Choice.series("--set", set, Dimension.PRESSURE);
        if (pressures.size() < 2 || pressures.get(0) <= 0) {
            throw new WrongInputException("hotidle: --set " + set
                    + ": at least two pressures above zero are needed; write 60..400/20psi, for example");
        }
        List<Double> speeds = Choice.searched(speed, described.unit(), STEP);
        if (map != null) {
            PictureFile.check("--map", map);
        }
        if (map != null && vary == null) {
            throw new WrongInputException(
                    "hotidle: --map " + map
                            + ": which size is to be varied?\nmend: add --vary hub-bushing.clearance=0.02..0.15mm, for example");
        }
        if (vary != null) {
            return map(described, pressures, speeds);
        }
        List<WindowText.One> found = new ArrayList<>();
        for (Transmission unit : Circuits.units(described, builds)) {
            unit.command();
            Progress progress = new Progress(
                    spec.commandLine().getErr(),
                    "trying set pressures",
                    unit.duties().size() * pressures.size() + LIMITS);
            found.add(new WindowText.One(unit, Window.study(unit, pressures, speeds, progress::step)));
            progress.end();
        }
        WindowText text = new WindowText(asked.shared.units, found);
        spec.commandLine()
                .getOut()
                .print(
                        switch (asked.shared.format) {
                            case TABLE -> text.tables(described.about());
                            case CSV -> text.csv();
                            case JSON -> StateJson.text(text.json());
                        });
        return HotIdle.DONE;
    }

    /** The least margin over set pressure and one size. */
    private int map(DescribedCircuit described, List<Double> pressures, List<Double> speeds) {
        VariedSize varied = VariedSize.of(vary);
        List<Adjustable> chosen = Circuits.units(described, builds).stream()
                .map(unit -> described.adjustable(unit.build()))
                .toList();
        if (map != null && chosen.size() > MOST_MAPS) {
            throw new WrongInputException(
                    "hotidle: --map shows " + MOST_MAPS + " builds at most\nmend: name fewer builds");
        }
        List<WindowMapText> maps = new ArrayList<>();
        for (Adjustable one : chosen) {
            one.unit().command();
            WindowMap.Axis axis = varied.axis(one);
            List<Double> values = varied.values(one, axis);
            Progress progress = new Progress(
                    spec.commandLine().getErr(), "mapping " + one.unit().build(), pressures.size() * values.size());
            maps.add(new WindowMapText(
                    asked.shared.units,
                    one.unit().build(),
                    WindowMap.study(one, axis, pressures, values, speeds, progress::step)));
            progress.end();
        }
        if (map != null) {
            PictureFile.write(
                    maps.stream()
                            .map(one -> (Chart) one.chart(described.name()))
                            .toList(),
                    map);
            spec.commandLine().getErr().println("drawn: " + map);
        }
        spec.commandLine()
                .getOut()
                .print(
                        switch (asked.shared.format) {
                            case TABLE -> mapTables(described, maps);
                            case CSV -> mapCsv(maps);
                            case JSON -> StateJson.text(mapJson(described, maps));
                        });
        return maps.stream().allMatch(one -> one.map().known()) ? HotIdle.DONE : HotIdle.UNSOLVED;
    }

    /** Maps that stay readable on one page. */
    private static final int MOST_MAPS = 2;

    private static String mapTables(DescribedCircuit described, List<WindowMapText> maps) {
        StringBuilder text =
                new StringBuilder(Wrap.lines(Choice.headed(described.name(), described.about()), "", "  "));
        text.append("\n").append(Caution.WHOLE).append("\n");
        maps.forEach(one -> text.append("\n").append(one.table()));
        return text.append("\n")
                .append(Wrap.lines(WindowMapText.legend(), "", ""))
                .toString();
    }

    private static String mapCsv(List<WindowMapText> maps) {
        TextTable table = new TextTable(maps.get(0).head());
        maps.forEach(one -> one.rows().forEach(table::add));
        return table.csv();
    }

    private static ObjectNode mapJson(DescribedCircuit described, List<WindowMapText> maps) {
        ObjectNode root = StateJson.object();
        root.put("circuit", described.name());
        ArrayNode all = root.putArray("builds");
        maps.forEach(one -> all.add(one.json()));
        return root;
    }
}
