package hotidle.cli;

import hotidle.answer.draw.DrawnState;
import hotidle.result.Solution;
import hotidle.study.AtDuty;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.Optional;

/** A build as it is drawn: with its state at a driving condition, and marked against another build. */
final class DrawnBuild {

    private DrawnBuild() {}

    /** What is shown of it; what is not asked for, or has no state, is left out. */
    static DrawnState at(Transmission unit, Optional<DutyPoint> at, Optional<Transmission> against) {
        return new DrawnState(
                unit,
                DrawnState.range(unit, at),
                at,
                at.flatMap(point -> AtDuty.solved(unit, point).state()),
                against,
                against.flatMap(before -> at.flatMap(point -> state(before, point))));
    }

    private static Optional<Solution> state(Transmission of, DutyPoint at) {
        return of.duty(at.name()).flatMap(own -> AtDuty.solved(of, own).state());
    }
}
