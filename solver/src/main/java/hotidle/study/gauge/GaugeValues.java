package hotidle.study.gauge;

import hotidle.newton.Series;
import hotidle.newton.SteadySolver;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeSet;

/** What meters read on a unit that is known whole, without any error of theirs. */
public final class GaugeValues {

    private GaugeValues() {}

    /**
     * At a test point, which is solved from a cold start.
     *
     * @return [Pa] or [m³/s]; empty where no state is found
     */
    public static OptionalDouble of(Transmission unit, GaugeReading.Row row) {
        return new SteadySolver(unit.network())
                .solve(row.at().conditions(unit)).state().stream()
                        .mapToDouble(state -> row.meter().reads() == Meter.Reads.PRESSURE
                                ? state.pressure(row.meter().node())
                                : state.flow(row.meter().name()))
                        .findFirst();
    }

    /**
     * The same meter over rising engine speed, each state begun from those before it.
     *
     * @param speeds [rev/s]
     * @param step   called after each; what it throws ends the work
     * @return [Pa] or [m³/s] at each of the speeds, rising; empty where no state is found
     */
    public static List<OptionalDouble> overSpeed(
            Transmission unit, GaugeReading.Row row, List<Double> speeds, Runnable step) {
        Series series = new Series(unit.network());
        List<OptionalDouble> values = new ArrayList<>();
        for (double speed : new TreeSet<>(speeds)) {
            boolean found = series.solve(row.at().atSpeed(speed).conditions(unit));
            values.add(found ? OptionalDouble.of(row.meter().read(series)) : OptionalDouble.empty());
            step.run();
        }
        return values;
    }
}
