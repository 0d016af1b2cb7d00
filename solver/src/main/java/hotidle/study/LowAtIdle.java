package hotidle.study;

import hotidle.assess.Assessment;
import hotidle.assess.Figures;
import hotidle.assess.IdlePressure;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Which builds do not hold their line at idle, for answers that solve no idle of their own and yet invite to a test. */
public final class LowAtIdle {

    private LowAtIdle() {}

    /** Names of the builds whose line is not held at their slowest duty point, or not known there. */
    public static List<String> of(List<Transmission> builds) {
        return builds.parallelStream()
                .filter(LowAtIdle::low)
                .map(Transmission::build)
                .toList();
    }

    private static boolean low(Transmission unit) {
        DutyPoint idle = unit.duties().stream()
                .min(Comparator.comparingDouble(DutyPoint::speed))
                .orElseThrow();
        Optional<Figures> figures = AtDuty.solved(unit, idle)
                .state()
                .map(state -> Assessment.of(unit, idle, state).figures());
        return at(unit, idle, figures.map(Figures::regulated).orElse(false));
    }

    /**
     * Whether a duty is the unit's slowest and its line is not held there, or only by oil that the converter, the cooler and the
     * lubrication behind the regulator then miss: a lower set pressure alone makes no unit fit for a stall test.
     *
     * @param regulated whether the line is at the pressure commanded, which is known
     */
    static boolean at(Transmission unit, DutyPoint duty, boolean regulated) {
        boolean slowest = IdlePressure.low(unit, duty, false);
        return slowest
                && (!regulated
                        || HeldLine.at(unit, duty)
                                .balance()
                                .map(line -> line.supply() < line.demand())
                                .orElse(true));
    }
}
