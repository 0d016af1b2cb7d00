package hotidle.answer.sweep;

import hotidle.answer.format.Rpm;
import hotidle.study.SpeedSweep;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** Up to which speed a sweep is worth to be seen larger: somewhat past the speed at which the last build holds its line. */
final class LowSpeeds {

    /** Past the last onset (chosen) [-]. */
    private static final double PAST = 1.25;

    /** Rounded up to [rpm]. */
    private static final double ROUND = 100;

    /** Not larger than this share of the speeds; else nothing is won by it (chosen) [-]. */
    private static final double LARGEST = 0.6;

    /** States of each sweep in it, so that there are curves (chosen). */
    private static final int LEAST = 4;

    private LowSpeeds() {}

    /** The speed [rpm]; empty where no build is found to begin to hold among these speeds, or nothing is won. */
    static OptionalDouble of(List<SpeedSweep> sweeps) {
        double first = sweeps.stream().mapToDouble(sweep -> rpm(sweep, 0)).max().orElseThrow();
        double high = sweeps.stream()
                .mapToDouble(sweep -> rpm(sweep, sweep.shown().size() - 1))
                .max()
                .orElseThrow();
        return sweeps.stream()
                .flatMap(sweep -> Rpm.of(sweep.onset()).stream().boxed())
                .filter(onset -> onset > first)
                .mapToDouble(onset -> ROUND * Math.ceil(PAST * onset / ROUND))
                .max()
                .stream()
                .filter(speed ->
                        speed <= LARGEST * high && sweeps.stream().allMatch(sweep -> below(sweep, speed) >= LEAST))
                .findFirst();
    }

    private static long below(SpeedSweep sweep, double speed) {
        return IntStream.range(0, sweep.shown().size())
                .filter(i -> rpm(sweep, i) <= speed)
                .count();
    }

    private static double rpm(SpeedSweep sweep, int at) {
        return Rpm.of(sweep.shown().get(at).conditions().speed());
    }
}
