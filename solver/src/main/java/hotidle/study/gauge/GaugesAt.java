package hotidle.study.gauge;

import hotidle.newton.SteadySolver;
import hotidle.result.Outcome;
import hotidle.transmission.Transmission;
import java.util.OptionalDouble;

/**
 * What meters show on a unit at one test point, without what is not known of it.
 *
 * @param at      what is set
 * @param outcome the state there, or why there is none
 */
public record GaugesAt(TestPoint at, Outcome outcome) {

    /** Solves it from a cold start. */
    public static GaugesAt of(Transmission unit, TestPoint at) {
        return new GaugesAt(at, new SteadySolver(unit.network()).solve(at.conditions(unit)));
    }

    /** What a meter shows [Pa] or [m³/s]; empty where no state was found. */
    public OptionalDouble shown(Meter meter) {
        return outcome.state().stream()
                .mapToDouble(state ->
                        meter.reads() == Meter.Reads.PRESSURE ? state.pressure(meter.node()) : state.flow(meter.name()))
                .findFirst();
    }
}
