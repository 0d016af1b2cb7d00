package hotidle.study.gauge;

import hotidle.study.LowAtIdle;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import java.util.List;

/**
 * What gauge readings say of a build, and what is to be done next.
 *
 * @param findings what they say
 * @param next     readings that tell most, the best first
 * @param low      whether the line stays low at idle, as read or as solved
 */
public record GaugeDiagnosis(GaugeFindings findings, List<NextReading> next, boolean low) {

    /** Readings that are proposed (chosen). */
    private static final int NEXT = 3;

    public GaugeDiagnosis {
        next = List.copyOf(next);
    }

    /**
     * Solves it.
     *
     * @param build    as it was measured
     * @param readings taken on it, at least one
     * @param step     called after each fault that was solved, from any thread; what it throws ends the work
     * @throws UnsolvedPointException where the unit as built has no state at a test point
     */
    public static GaugeDiagnosis of(Adjustable build, List<GaugeReading> readings, Runnable step) {
        GaugeFindings found = GaugeStudy.of(build, readings, step);
        return new GaugeDiagnosis(found, NextReadings.of(build, found, NEXT), low(build.unit(), found));
    }

    /** Whether the line stays low at idle, as read or as solved; never on a bench, where none is commanded. */
    static boolean low(Transmission unit, GaugeFindings found) {
        return unit.commanded()
                .map(command -> found.lineLow(command.line())
                        || !LowAtIdle.of(List.of(unit)).isEmpty())
                .orElse(false);
    }
}
