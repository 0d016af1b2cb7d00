package hotidle.cli;

import hotidle.answer.wear.BuildWear;
import hotidle.study.Wear;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.OptionalDouble;

/** Looks how far fits of a build may wear. */
final class WearRun {

    private WearRun() {}

    /**
     * What is found.
     *
     * @param looked fits that are looked at alone
     * @param speeds engine speeds searched for the hub's film and load [rev/s], rising
     * @param step   called after each fit and after all together, from any thread
     */
    static BuildWear of(Adjustable build, List<WearSize> looked, List<Double> speeds, Runnable step) {
        Transmission unit = build.unit();
        OptionalDouble set =
                unit.commanded().isPresent() ? OptionalDouble.of(unit.highestSet()) : OptionalDouble.empty();
        return new BuildWear(unit.build(), set, Wear.fits(build), Wear.study(build, looked, speeds, step));
    }
}
