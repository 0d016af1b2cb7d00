package hotidle.cli;

import hotidle.answer.format.Quantity;
import hotidle.answer.torque.TorqueAnswer.BuildTorque;
import hotidle.answer.torque.TorquePicture;
import hotidle.study.AskedTorque;
import hotidle.study.ClutchFactors;
import hotidle.study.LineNeeded;
import hotidle.study.TorqueByPressure;
import hotidle.study.TorqueConditions;
import hotidle.study.TorqueHeld;
import hotidle.study.UsefulPressure;
import hotidle.study.Window;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.io.PrintWriter;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Asks a build what it holds.
 *
 * @param err       where the bar of long work is drawn
 * @param units     of the user
 * @param by        what is changed for another set pressure
 * @param pressures tried [Pa], rising
 * @param speed     of the engine [rev/s]
 * @param wanted    engine torque of which is asked whether it is held [N·m]; empty where none is
 */
record TorqueRun(
        PrintWriter err,
        Quantity.UnitSystem units,
        SetPressure.By by,
        List<Double> pressures,
        double speed,
        OptionalDouble wanted) {

    /** Step of the engine speeds searched for the hub's film (chosen) [rev/s]. */
    private static final double STEP = 150 / 60.0;

    /** Limits that a unit usually has; the bar need not be exact. */
    private static final int LIMITS = 20;

    /**
     * Looks whether torque can be asked of a unit.
     *
     * @throws WrongInputException where it cannot, or the unit cannot be set to the lowest pressure
     */
    static void check(Transmission unit, SetBy setBy, double lowest, String tried) {
        check(unit);
        setBy.at(unit, lowest, tried);
    }

    /**
     * The same as it is set.
     *
     * @throws WrongInputException where torque cannot be asked of it
     */
    static void check(Transmission unit) {
        unit.command();
        if (unit.ranges().stream().allMatch(range -> range.applied().isEmpty())) {
            throw new WrongInputException("hotidle: no range of " + unit.circuit() + " applies a clutch");
        }
        if (TorqueConditions.hottest(unit).isEmpty()) {
            throw new WrongInputException("hotidle: no driving condition under load of " + unit.circuit()
                    + " gives the temperatures of all regions\nmend: give them to one that has at least half of the highest"
                    + " engine torque");
        }
    }

    BuildTorque held(Adjustable build) {
        return held(build, by, pressures, speed, wanted);
    }

    /** What a unit holds. */
    static BuildTorque held(Adjustable build, SetPressure.By by, List<Double> pressures, double speed) {
        return held(build, by, pressures, speed, OptionalDouble.empty());
    }

    private static BuildTorque held(
            Adjustable build, SetPressure.By by, List<Double> pressures, double speed, OptionalDouble wanted) {
        Transmission unit = build.unit();
        Window.Raised raised = Window.Raised.by(build, by);
        return new BuildTorque(
                unit.build(),
                unit.rated(),
                TorqueHeld.of(unit, speed),
                UsefulPressure.of(unit, raised, pressures, speed),
                LineNeeded.of(unit, speed),
                unit.highestSet(),
                unit.duties().stream()
                        .mapToDouble(DutyPoint::engineTorque)
                        .max()
                        .orElse(0),
                ClutchFactors.of(unit),
                wanted.stream()
                        .mapToObj(torque -> AskedTorque.of(torque, unit, raised, pressures, speed))
                        .findFirst());
    }

    /** Which set pressures the limits of a unit allow. */
    Window window(Adjustable build) {
        Transmission unit = build.unit();
        Progress progress =
                new Progress(err, "trying set pressures", unit.duties().size() * pressures.size() + LIMITS);
        Window window = Window.study(
                unit, Window.Raised.by(build, by), pressures, OptionValues.searched(null, unit, STEP), progress::step);
        progress.end();
        return window;
    }

    /** What is drawn of a unit. */
    TorquePicture picture(Adjustable build, UsefulPressure useful) {
        Transmission unit = build.unit();
        Progress progress = new Progress(err, "drawing " + unit.build(), pressures.size());
        TorqueByPressure held = TorqueByPressure.of(Window.Raised.by(build, by), pressures, speed, progress::step);
        progress.end();
        return new TorquePicture(units, unit.build(), unit.highestSet(), held, useful, window(build));
    }
}
