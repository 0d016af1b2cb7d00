package hotidle.cli;

import hotidle.answer.format.Wrap;
import hotidle.assess.Figures;
import hotidle.assess.IdlePressure;
import hotidle.result.Solution;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The caution that a unit with low idle pressure is not stall-tested (common practice). */
final class NoStall {

    private NoStall() {}

    /** Whether a duty is the unit's slowest and its line is not held there, or the line is not known. */
    static boolean lowAtIdle(Transmission unit, DutyPoint duty, Optional<Solution> state) {
        Optional<Figures> figures = state.map(known -> Figures.of(unit, known));
        return IdlePressure.low(
                unit,
                duty,
                figures.map(known -> OptionalDouble.of(known.line())).orElse(OptionalDouble.empty()),
                figures.map(Figures::set).orElse(OptionalDouble.empty()));
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
