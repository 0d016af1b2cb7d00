package hotidle.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Temperatures over time, each state taken as steady: dT/dt = heat that stays over the heat mass, for sump and converter.
 *
 * <pre>
 * Method     embedded Runge-Kutta of second and third order: P. Bogacki, L. F. Shampine, Applied Mathematics Letters 2 (1989) 321
 *            (from memory); steps keep the error of each below 0.02 K
 * Numerics   the converter's time constant is some tenths of a minute, the sump's some minutes: explicit steps do
 * </pre>
 */
final class WarmUp {

    private static final double ERROR = 0.02;
    private static final double ROUGH = 1e-3;
    private static final int MOST_STEPS = 2000;

    /** Heat that stays over all heat generated below which nothing more is followed [-]; a steady state is then found by Newton. */
    private static final double REST = 1e-4;

    private WarmUp() {}

    /**
     * A moment.
     *
     * @param seconds since the beginning [s]
     * @param state   then
     */
    record Moment(double seconds, WarmState state) {}

    /** What limit was reached. */
    enum Reached {
        TIME,
        /** Nothing warms or cools any more to speak of. */
        REST,
        OIL_LIMIT,
        CONVERTER_LIMIT,
        /** A state was not found, or the steps ran out. */
        NO_STATE
    }

    /**
     * What came.
     *
     * @param moments all of them, the first at the beginning
     * @param reached what ended it
     */
    record Course(List<Moment> moments, Reached reached) {
        Optional<Moment> last() {
            return moments.isEmpty() ? Optional.empty() : Optional.of(moments.get(moments.size() - 1));
        }

        OptionalDouble seconds() {
            return last().map(moment -> OptionalDouble.of(moment.seconds())).orElse(OptionalDouble.empty());
        }
    }

    /**
     * Follows the temperatures until a time has passed or a limit is reached.
     *
     * @param unit    at its duty point
     * @param from    where it begins
     * @param seconds for how long [s]
     */
    static Course follow(WarmUnit unit, Temperatures from, double seconds) {
        List<Moment> moments = new ArrayList<>();
        Optional<WarmState> first = unit.at(from, ROUGH);
        if (first.isEmpty()) {
            return new Course(moments, Reached.NO_STATE);
        }
        moments.add(new Moment(0, first.get()));
        double time = 0;
        double step = Math.min(seconds, 5);
        for (int i = 0; i < MOST_STEPS && time < seconds; i++) {
            WarmState now = moments.get(moments.size() - 1).state();
            if (stays(now.flows()) < REST) {
                return new Course(moments, Reached.REST);
            }
            step = Math.min(step, seconds - time);
            Temperatures slope1 = slope(unit, now);
            Optional<WarmState> half = along(unit, now.at(), slope1, step / 2);
            double ahead = 3 * step / 4;
            Optional<WarmState> later = half.flatMap(state -> along(unit, now.at(), slope(unit, state), ahead));
            if (later.isEmpty()) {
                return new Course(moments, Reached.NO_STATE);
            }
            Temperatures slope2 = slope(unit, half.get());
            Temperatures slope3 = slope(unit, later.get());
            Temperatures mean = sum(sum(times(slope1, 2.0 / 9), times(slope2, 1.0 / 3)), times(slope3, 4.0 / 9));
            Optional<WarmState> end = along(unit, now.at(), mean, step);
            if (end.isEmpty()) {
                return new Course(moments, Reached.NO_STATE);
            }
            Temperatures slope4 = slope(unit, end.get());
            Temperatures second = sum(
                    sum(times(slope1, 7.0 / 24), times(slope2, 1.0 / 4)),
                    sum(times(slope3, 1.0 / 3), times(slope4, 1.0 / 8)));
            double error = step
                    * Math.max(Math.abs(mean.sump() - second.sump()), Math.abs(mean.converter() - second.converter()));
            if (error <= ERROR) {
                Optional<Reached> over = limit(unit, end.get().at());
                double gone = over.isPresent()
                        ? step * share(unit, now.at(), end.get().at())
                        : step;
                time += gone;
                moments.add(new Moment(time, end.get()));
                if (over.isPresent()) {
                    return new Course(moments, over.get());
                }
            }
            step *= Math.max(0.2, Math.min(4, 0.9 * Math.cbrt(ERROR / Math.max(error, 1e-12))));
        }
        return new Course(moments, time < seconds ? Reached.NO_STATE : Reached.TIME);
    }

    private static double stays(HeatFlows flows) {
        return Math.max(Math.abs(flows.sumpRate()), Math.abs(flows.converterRate())) / Math.max(flows.generated(), 1);
    }

    private static Optional<Reached> limit(WarmUnit unit, Temperatures at) {
        if (unit.hasConverter() && at.converter() >= unit.inputs().converterLimit()) {
            return Optional.of(Reached.CONVERTER_LIMIT);
        }
        return at.sump() >= unit.inputs().oilLimit() ? Optional.of(Reached.OIL_LIMIT) : Optional.empty();
    }

    /** Share of the last step after which the limit was reached, on a straight line. */
    private static double share(WarmUnit unit, Temperatures from, Temperatures to) {
        double sump = (unit.inputs().oilLimit() - from.sump()) / (to.sump() - from.sump());
        double converter = (unit.inputs().converterLimit() - from.converter()) / (to.converter() - from.converter());
        return Math.min(
                to.sump() >= unit.inputs().oilLimit() ? sump : 1,
                to.converter() >= unit.inputs().converterLimit() ? converter : 1);
    }

    private static Optional<WarmState> along(WarmUnit unit, Temperatures from, Temperatures slope, double seconds) {
        return unit.at(from.moved(slope.sump() * seconds, slope.converter() * seconds), ROUGH);
    }

    private static Temperatures slope(WarmUnit unit, WarmState state) {
        double sump = state.flows().sumpRate() / unit.inputs().sumpHeatMass();
        return new Temperatures(
                sump,
                unit.hasConverter()
                        ? state.flows().converterRate() / unit.inputs().converterHeatMass()
                        : sump);
    }

    private static Temperatures times(Temperatures slope, double factor) {
        return new Temperatures(slope.sump() * factor, slope.converter() * factor);
    }

    private static Temperatures sum(Temperatures one, Temperatures other) {
        return new Temperatures(one.sump() + other.sump(), one.converter() + other.converter());
    }
}
