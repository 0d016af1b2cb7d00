package hotidle.cli;

import hotidle.answer.map.MapAnswer;
import hotidle.study.WindowMap;
import hotidle.transmission.Adjustable;
import java.io.PrintWriter;
import java.util.List;

/**
 * Maps builds, and says how far it is.
 *
 * @param err    gets the progress
 * @param setBy  how the set pressures are reached
 * @param tried  set pressures as written
 * @param varied the size as written
 * @param speeds engine speeds searched [rev/s]
 */
record MapRun(PrintWriter err, SetBy setBy, String tried, VariedSize varied, List<Double> speeds) {

    /** A build and its map. */
    MapAnswer.Mapped mapped(Adjustable build) {
        List<Double> pressures = SetPressures.of(tried, List.of(build.unit()));
        setBy.at(build.unit(), pressures.get(0), "--try " + tried);
        WindowMap.Axis axis = varied.axis(build);
        List<Double> values = varied.values(build, axis);
        String name = build.unit().build();
        Progress progress = new Progress(err, "mapping " + name, WindowMap.points(build, axis, pressures, values));
        WindowMap map = WindowMap.study(build, axis, pressures, setBy.by(), values, speeds, progress::step);
        progress.end();
        return new MapAnswer.Mapped(name, map, build.unit().rated());
    }
}
