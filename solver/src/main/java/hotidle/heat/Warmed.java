package hotidle.heat;

import hotidle.transmission.DutyPoint;
import java.util.List;
import java.util.Optional;

/**
 * What heat makes of a duty point.
 *
 * @param duty     as its author gives it
 * @param settled  where it comes to; empty where it comes to no temperature below the limits
 * @param others   further steady states, each hotter than the one before, that it would stay in if it came there
 * @param verdict  what became of it
 * @param seconds  until a limit is reached, or for as long as the duty point lasts; empty at balance and where no state was found
 * @param from     duty point from which the time counts; empty where it counts from a unit as cold as the air
 */
public record Warmed(
        DutyPoint duty,
        Optional<WarmState> settled,
        List<WarmState> others,
        WarmingEnd verdict,
        Optional<Double> seconds,
        Optional<String> from) {

    /** What became of a duty point. */
    public enum WarmingEnd {
        /** It has settled, or its time is over below all limits. */
        SETTLED,
        /** It would settle at several temperatures; it comes to the coldest from a cold start. */
        SEVERAL,
        /** The sump reaches the oil's limit. */
        SUMP_RUNS_AWAY,
        /** What leaves the converter reaches its limit. */
        CONVERTER_RUNS_AWAY,
        /** The duty point from which it starts comes to no temperature itself. */
        START_NOT_KNOWN,
        /** A state on the way was not found. */
        NOT_SOLVED
    }

    public Warmed {
        others = List.copyOf(others);
    }

    /** Whether there is a temperature to judge it at. */
    public boolean known() {
        return settled.isPresent();
    }
}
