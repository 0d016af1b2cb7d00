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
        return causes(build, readings, step).withNext(build, step);
    }

    /** Whether they agree with the build, which takes a state for each test point; no causes, and nothing to be done next. */
    public static GaugeDiagnosis agreement(Adjustable build, List<GaugeReading> readings) {
        return alone(build, GaugeStudy.agreement(build, readings));
    }

    /** Agreement and causes, without what is to be read next. */
    public static GaugeDiagnosis causes(Adjustable build, List<GaugeReading> readings, Runnable step) {
        return alone(build, GaugeStudy.of(build, readings, step));
    }

    /** The same by what was solved of a build before, for who asks again with other readings. */
    public static GaugeDiagnosis causes(SolvedFaults kept, List<GaugeReading> readings, Runnable step) {
        return alone(kept.tolerances().build(), GaugeStudy.of(GaugeTable.of(kept, readings, step), readings));
    }

    private static GaugeDiagnosis alone(Adjustable build, GaugeFindings found) {
        return new GaugeDiagnosis(found, List.of(), low(build.unit(), found));
    }

    /**
     * The same with what is to be read next.
     *
     * @param step called after each cause that was looked at, from any thread
     */
    public GaugeDiagnosis withNext(Adjustable build, Runnable step) {
        return new GaugeDiagnosis(findings, NextReadings.of(build, findings, NEXT, step), low);
    }

    /** Whether the line stays low at idle, as read or as solved; never on a bench, where none is commanded. */
    static boolean low(Transmission unit, GaugeFindings found) {
        return unit.commanded()
                .map(command -> found.lineLow(command.line())
                        || !LowAtIdle.of(List.of(unit)).isEmpty())
                .orElse(false);
    }
}
