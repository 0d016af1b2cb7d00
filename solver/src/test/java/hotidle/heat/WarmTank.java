package hotidle.heat;

import hotidle.law.Poppet;
import hotidle.law.Slot;
import hotidle.network.Group;
import hotidle.network.Network;
import hotidle.network.Node;
import hotidle.network.Placed;
import hotidle.oil.Oil;
import hotidle.part.Orifice;
import hotidle.part.ReliefValve;
import hotidle.part.Setting;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.HeatInputs;
import hotidle.transmission.Range;
import hotidle.transmission.Transmission;
import hotidle.transmission.Warming;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A unit without a pump whose heat can be worked by hand: meshes warm the sump, the case cools it, so that
 * T(t) = T∞ + (T0 − T∞)·exp(−t·k/C).
 */
final class WarmTank {

    static final double AIR = 300;
    static final double LOSS = 20;
    static final double MASS = 50_000;
    static final double SHARE = 0.05;
    static final double SPEED = 30;

    private WarmTank() {}

    static Transmission unit(double limit, DutyPoint... duties) {
        Poppet relief = new Poppet(0.010, 40_000, 196, 0.0025, 0.65, Slot.annular(0.010, 2e-6, 1e-3, 0));
        return new Transmission(
                "tank",
                "one",
                new Network(
                        List.of(Node.held("sump", 0), Node.free("line")),
                        List.of(
                                Placed.of("relief", new ReliefValve(relief), "sump", Group.VALVE_BODY, "line", "sump"),
                                Placed.of(
                                        "hole",
                                        new Orifice(0.002, 0, 0.7, 1),
                                        "sump",
                                        Group.VALVE_BODY,
                                        "line",
                                        "sump"))),
                new Oil("thin", Oil.Walther.constant(20e-6), 850, 0.65, 0, 0, 0),
                101_325,
                List.of(new Range("drive", true, Map.of())),
                Optional.empty(),
                List.of(duties),
                List.of(),
                Optional.of(new HeatInputs(AIR, LOSS, 0, MASS, 1, SHARE, 0, limit, 500)));
    }

    static DutyPoint duty(String name, double torque, Warming warming) {
        return new DutyPoint(
                name,
                "",
                SPEED,
                "drive",
                Setting.Lockup.ON,
                torque,
                1,
                OptionalDouble.of(1),
                1,
                Map.of(),
                Map.of(),
                hotidle.part.Sensed.NOTHING,
                Optional.of(warming));
    }

    /** Temperature at which it settles with a torque [K]. */
    static double rest(double torque) {
        return AIR + SHARE * torque * 2 * Math.PI * SPEED / LOSS;
    }
}
