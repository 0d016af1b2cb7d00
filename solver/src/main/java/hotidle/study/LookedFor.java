package hotidle.study;

import hotidle.newton.Series;
import hotidle.result.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * States at the speeds that a reader looks for in a sweep and that its series passes over: the driving condition's own, and the one
 * from which the line holds.
 */
final class LookedFor {

    /** A speed this near to one of the series is that one [rev/s]: a revolution a minute (chosen). */
    private static final double SAME = 1 / 60.0;

    private LookedFor() {}

    /** Those between the slowest and the fastest speed of a sweep, rising. */
    static List<Outcome> in(SpeedSweep sweep) {
        List<Outcome> shown = sweep.shown();
        double low = shown.get(0).conditions().speed();
        double high = shown.get(shown.size() - 1).conditions().speed();
        List<Outcome> found = new ArrayList<>();
        DoubleStream.concat(DoubleStream.of(sweep.duty().speed()), sweep.onset().stream())
                .filter(speed -> speed > low && speed < high)
                .filter(speed -> shown.stream()
                        .noneMatch(one -> Math.abs(one.conditions().speed() - speed) <= SAME))
                .distinct()
                .sorted()
                .forEach(speed -> found.add(at(sweep, speed)));
        return found;
    }

    /** Started from the next faster state, as the engine would come to it from there. */
    private static Outcome at(SpeedSweep sweep, double speed) {
        Series series = new Series(sweep.unit().network());
        sweep.shown().stream()
                .filter(one -> one.conditions().speed() > speed)
                .flatMap(one -> one.state().stream())
                .findFirst()
                .ifPresent(series::restart);
        series.solve(sweep.unit().conditions(sweep.duty()).atSpeed(speed));
        return series.outcome();
    }
}
