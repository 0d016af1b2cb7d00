package hotidle.cli;

import hotidle.duty.DutyPoint;
import hotidle.duty.Unit;
import hotidle.result.State;
import hotidle.study.Figures;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The caution that a unit with low idle pressure is not stall-tested (common practice). */
final class NoStall {

    private NoStall() {}

    /** A gauge within this of what is commanded is not low: 10 psi (common practice) [Pa]. */
    private static final double AGREE = 10 * 6894.757293168361;

    /** Whether a duty is the unit's slowest and its line is not held there, or the line is not known. */
    static boolean lowAtIdle(Unit unit, DutyPoint duty, Optional<State> state) {
        DutyPoint slowest = unit.duties().stream()
                .min(Comparator.comparingDouble(DutyPoint::speed))
                .orElseThrow();
        return slowest.name().equals(duty.name())
                && unit.commanded().isPresent()
                && state.map(known -> Figures.of(unit, known))
                        .map(figures -> figures.line() < figures.set() - AGREE)
                        .orElse(true);
    }

    /** The caution for the builds concerned; empty without any. */
    static String of(List<String> builds) {
        return builds.isEmpty()
                ? ""
                : Wrap.lines(
                        "IDLE PRESSURE IS LOW with " + String.join(", ", builds)
                                + ": no stall test, whatever is worked out for one here.",
                        "",
                        "");
    }
}
