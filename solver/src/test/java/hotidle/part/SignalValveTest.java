package hotidle.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.network.Conditions;
import hotidle.network.Group;
import hotidle.network.Network;
import hotidle.network.Node;
import hotidle.network.Placed;
import hotidle.newton.SteadySolver;
import hotidle.oil.Oil;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Mechanical valves: what they ask for, by hand, and what they make of it. */
class SignalValveTest {

    private static final double DROOP = 1e4;
    private static final FlyWeights GOVERNOR = new FlyWeights(
            80e-6,
            List.of(
                    new FlyWeights.Weight(0.020, 0.028, OptionalDouble.of(14)),
                    new FlyWeights.Weight(0.004, 0.025, OptionalDouble.empty())),
            0,
            1);
    private static final ThrottleSpring CABLE = new ThrottleSpring(50e-6, 4, 4000, 0.010, 0);
    private static final Diaphragm CAPSULE = new Diaphragm(60e-6, 60, 8e-4, 1);

    private static double asked(SignalValve.Demand demand, double rpm, double throttle, double vacuum) {
        return demand.pressure(new Sensed(rpm / 60, throttle, vacuum));
    }

    /** 1000 rpm is 104.72 rad/s: 6.1411 N on the primary weight, 1.0966 N on the other. At 2000 rpm the primary has its 14 N. */
    @Test
    void governorPressureRisesWithTheSquareOfSpeedAndLessSteeplyInItsSecondStage() {
        assertEquals(0, asked(GOVERNOR, 0, 0, 0));
        assertEquals((6.1411 + 1.0966) / 80e-6, asked(GOVERNOR, 1000, 0, 0), 5);
        assertEquals((14 + 4.3865) / 80e-6, asked(GOVERNOR, 2000, 0, 0), 5);
        FlyWeights geared = new FlyWeights(GOVERNOR.area(), GOVERNOR.weights(), 2, 0.5);
        assertEquals((6.1411 + 1.0966 - 2) / 80e-6, asked(geared, 2000, 0, 0), 5, "half as fast, and a spring of 2 N");
        assertEquals(0, asked(geared, 200, 0, 0), "the spring holds it");
    }

    @Test
    void throttlePressureRisesWithTheThrottleAndFallsWithASlackCable() {
        assertEquals(4 / 50e-6, asked(CABLE, 0, 0, 0), 1e-6);
        assertEquals(44 / 50e-6, asked(CABLE, 0, 1, 0), 1e-6);
        ThrottleSpring slack = new ThrottleSpring(50e-6, 4, 4000, 0.010, -0.002);
        assertEquals(36 / 50e-6, asked(slack, 0, 1, 0), 1e-6);
        assertEquals(0, asked(slack, 0, 0, 0), "a slack cable does not pull");
    }

    @Test
    void modulatorPressureIsHighestWithoutVacuumAsWithATornDiaphragm() {
        assertEquals(60 / 60e-6, asked(CAPSULE, 0, 0, 0), 1e-6);
        assertEquals((60 - 5e4 * 8e-4) / 60e-6, asked(CAPSULE, 0, 0, 5e4), 1e-6);
        Diaphragm torn = new Diaphragm(60e-6, 60, 8e-4, 0);
        assertEquals(60 / 60e-6, asked(torn, 0, 0, 5e4), 1e-6);
        assertEquals(0, asked(CAPSULE, 0, 0, 9e4), "vacuum holds it shut");
    }

    @Test
    void itMakesThatPressureWithinItsDroopAsFarAsItsSupplyCarries() {
        double asked = asked(GOVERNOR, 1500, 0, 0);
        assertEquals(asked, made(6e5, 1500), DROOP / 2);
        double starved = made(8e4, 1500);
        assertTrue(starved < 8e4 && starved > 7e4, starved + " Pa of 80 kPa");
    }

    private static double made(double supply, double rpm) {
        SignalValve valve = new SignalValve(new Solenoid(1e-3, 1.4e-3, DROOP, false), GOVERNOR);
        Network network = new Network(
                List.of(Node.held("supply", supply), Node.free("pilot"), Node.held("sump", 0)),
                List.of(Placed.of("governor", valve, "sump", Group.VALVE_BODY, "supply", "pilot", "sump")));
        Conditions conditions = new Conditions(
                20,
                "any",
                Setting.Lockup.OFF,
                new Oil("thin", Oil.Walther.constant(1e-5), 850, 0, 0, 0, 0),
                101_325,
                Map.of("sump", 363.15),
                Map.of(),
                new Sensed(rpm / 60, 0, 0));
        return new SteadySolver(network)
                .solve(conditions, Optional.empty())
                .state()
                .orElseThrow()
                .pressure("pilot");
    }
}
