package hotidle.cli;

import hotidle.answer.torque.TorqueAnswer.BuildTorque;
import hotidle.answer.torque.TorquePicture;
import hotidle.plots.Chart;
import hotidle.plots.Picture;
import hotidle.transmission.Adjustable;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The picture of torque that is asked for. */
final class TorquePlot {

    @Option(
            names = "--plot",
            paramLabel = "FILE",
            description =
                    "draws torque held against set pressure, a line a clutch or link, into this file (.png, .svg or .pdf)")
    private Path file;

    @Mixin
    private PictureSize size;

    /**
     * Looks at the file before anything is solved.
     *
     * @throws WrongInputException where it is no file of a picture
     */
    void check() {
        size.check();
        if (file != null) {
            PictureFile.check("--plot", file);
        }
    }

    /**
     * Draws a chart a build where one is asked for, and says so.
     *
     * @throws WrongInputException where nothing is known that could be drawn
     */
    void draw(TorqueRun run, String circuit, List<Adjustable> units, List<BuildTorque> held) {
        if (file == null) {
            return;
        }
        List<TorquePicture> builds = new ArrayList<>();
        for (int i = 0; i < units.size(); i++) {
            builds.add(run.picture(units.get(i), held.get(i).useful()));
        }
        List<Chart> charts = List.copyOf(TorquePicture.charts(circuit, builds));
        if (charts.isEmpty()) {
            throw new WrongInputException(
                    "hotidle: --plot " + file + ": no torque is known, so that nothing can be drawn");
        }
        PictureFile.draw(size.of(new Picture(charts)), file, "", run.err());
    }
}
