package hotidle.cli;

import hotidle.answer.format.Wrap;
import hotidle.assess.Figures;
import hotidle.result.Solution;
import hotidle.transmission.Command;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Optional;

/** The caution that a unit with low idle pressure is not stall-tested (common practice). */
final class NoStall {

    private NoStall() {}

    /** Whether a duty is the unit's slowest and its line is not held there, or the line is not known. */
    static boolean lowAtIdle(Transmission unit, DutyPoint duty, Optional<Solution> state) {
        Optional<Figures> figures = state.map(known -> Figures.of(unit, known));
        return lowAtIdle(
                unit,
                duty,
                figures.map(Figures::line).orElse(Double.NaN),
                figures.map(Figures::set).orElse(Double.NaN));
    }

    /** The same by line and set pressure [Pa], NaN where they are not known. */
    static boolean lowAtIdle(Transmission unit, DutyPoint duty, double line, double set) {
        boolean idle = unit.duties().stream().allMatch(other -> duty.speed() <= other.speed());
        return idle && unit.commanded().isPresent() && !(line >= set - Command.AGREE);
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
