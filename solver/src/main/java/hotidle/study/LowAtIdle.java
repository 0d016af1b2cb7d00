package hotidle.study;

import hotidle.assess.Assessment;
import hotidle.assess.Figures;
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
     * lubrication behind the regulator then miss: however little is wanting, the pump has no oil to spare, and a lower set pressure
     * alone makes no unit fit for a stall test.
     *
     * @param regulated whether the line is at the pressure commanded, which is known
     */
    static boolean at(Transmission unit, DutyPoint duty, boolean regulated) {
        return slowest(unit, duty) && (!regulated || shortOfOil(HeldLine.at(unit, duty)));
    }

    /** The same where the line held is solved already. */
    static boolean at(Transmission unit, DutyPoint duty, boolean regulated, HeldLine held) {
        return slowest(unit, duty) && (!regulated || shortOfOil(held));
    }

    private static boolean slowest(Transmission unit, DutyPoint duty) {
        return unit.commanded().isPresent() && unit.duties().stream().allMatch(other -> duty.speed() <= other.speed());
    }

    private static boolean shortOfOil(HeldLine held) {
        return held.balance().map(line -> line.supply() < line.demand()).orElse(true);
    }
}
