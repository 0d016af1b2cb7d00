package hotidle.cli;

import hotidle.answer.window.WindowAnswer;
import hotidle.study.TorqueConditions;
import hotidle.study.UsefulPressure;
import hotidle.study.Window;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;

/**
 * Finds the window of builds, and says how far it is.
 *
 * @param err     gets the progress
 * @param setBy   how the set pressures are reached
 * @param tried   set pressures as written
 * @param ownHeat at which temperatures units are judged
 * @param speeds  engine speeds searched [rev/s]
 */
record WindowRun(PrintWriter err, SetBy setBy, String tried, OwnHeat ownHeat, List<Double> speeds) {

    /** Limits that a unit usually has; the bar need not be exact. */
    private static final int LIMITS = 20;

    /** A build and its window. */
    WindowAnswer.BuildWindow of(Adjustable build) {
        Transmission unit = build.unit();
        List<Double> pressures = SetPressures.of(tried, List.of(unit));
        setBy.at(unit, pressures.get(0), "--try " + tried);
        Window.Raised given = Window.Raised.by(build, setBy.by());
        Window.Raised raised = ownHeat.asked(unit) ? given.settled() : given;
        Progress progress =
                new Progress(err, "trying set pressures", unit.duties().size() * pressures.size() + LIMITS);
        Window window = Window.study(unit, raised, pressures, speeds, progress::step);
        progress.end();
        return new WindowAnswer.BuildWindow(unit, window, useful(unit, given, pressures));
    }

    /** Up to which set pressure more torque is held; empty where torque cannot be asked of the unit. */
    static Optional<UsefulPressure> useful(Transmission unit, Window.Raised raised, List<Double> pressures) {
        return TorqueConditions.given(unit)
                ? Optional.of(UsefulPressure.of(unit, raised, pressures, TorqueConditions.USUAL_SPEED))
                : Optional.empty();
    }
}
