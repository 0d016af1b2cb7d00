package hotidle.answer.torque;

import hotidle.answer.torque.TorqueAnswer.BuildTorque;
import hotidle.part.Setting;
import hotidle.study.AskedTorque;
import hotidle.study.ClutchFactors;
import hotidle.study.TorqueConditions;
import hotidle.study.TorqueHeld;
import hotidle.study.TorqueHeld.Carrier;
import hotidle.study.UsefulPressure;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Range;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a made-up unit holds: a reverse brake in reverse, a low clutch in first, an input shaft in both. */
final class MadeTorque {

    static final double SHAFT = 850;

    private MadeTorque() {}

    private static DutyPoint climb() {
        return new DutyPoint(
                "climb",
                "",
                30,
                "first",
                Setting.Lockup.OFF,
                500,
                1.9,
                OptionalDouble.empty(),
                1,
                Map.of("sump", 380.0),
                Map.of());
    }

    private static TorqueHeld range(
            String name, boolean forward, String clutch, double torque, double line, double set) {
        Range range = new Range(name, forward, Map.of(clutch, new Range.Applied(1, 0)));
        List<Carrier> links =
                List.of(new Carrier(clutch, true, torque, false), new Carrier("input-shaft", false, SHAFT, false));
        return new TorqueHeld(
                name,
                OptionalDouble.of(3),
                new TorqueConditions(range, 2000 / 60.0, 1.9, climb(), climb()),
                Optional.of(new TorqueHeld.Held(
                        torque, line, OptionalDouble.of(set), false, OptionalDouble.empty(), links)),
                Optional.empty());
    }

    /** A build set to 10 bar forward and 14 in reverse that holds so much in reverse and a hundredth more in first. */
    static BuildTorque build(String name, double torque, Optional<AskedTorque> asked) {
        return new BuildTorque(
                name,
                true,
                List.of(
                        range("reverse", false, "reverse-brake", torque, 15e5, 14e5),
                        range("first", true, "low-clutch", 1.01 * torque, 11e5, 10e5)),
                new UsefulPressure(
                        Optional.of(new Carrier("input-shaft", false, SHAFT, false)),
                        "first",
                        OptionalDouble.of(14e5),
                        4e5,
                        27e5,
                        List.of()),
                List.of(),
                10e5,
                0.9 * torque,
                new ClutchFactors(1.2, 1.2),
                asked);
    }

    /** That an engine torque [N·m] is held from 12 bar on. */
    static Optional<AskedTorque> from12(double torque) {
        return Optional.of(
                new AskedTorque(torque, "", Optional.empty(), OptionalDouble.of(12e5), 27e5, 4e5, 27e5, List.of()));
    }

    /** That the shaft bears less than an engine torque [N·m]. */
    static Optional<AskedTorque> never(double torque) {
        return Optional.of(new AskedTorque(
                torque,
                "first",
                Optional.of(new Carrier("input-shaft", false, SHAFT, false)),
                OptionalDouble.empty(),
                4e5,
                4e5,
                27e5,
                List.of()));
    }
}
