package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.newton.SteadySolver;
import hotidle.study.TorqueHeld.Carrier;
import hotidle.study.TorqueHeld.Held;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Up to which set pressure ten nodes with a brake and a shaft hold more torque. */
class CrossingOfTenNodesTest {

    private static final double PSI = TenNodes.PSI;
    private static final double SPEED = TenNodesWithTrain.SPEED;
    private static final double SHAFT = 500;
    private static final List<Double> PRESSURES =
            Stream.of(50, 100, 150, 200).map(psi -> psi * PSI).toList();

    private static Transmission unit(double shaft) {
        return TenNodesWithTrain.unit(1, 8, shaft, TenNodesWithTrain.LEVEL);
    }

    private static UsefulPressure useful(Transmission unit) {
        return UsefulPressure.of(unit, Window.Raised.by(unit, SetPressure.By.COMMAND_AND_SPRING), PRESSURES, SPEED);
    }

    /** What holds least of all ranges at a set pressure. */
    private static Held least(Transmission unit, double pressure) {
        return TorqueHeld.atOneSpeed(SetPressure.of(unit, pressure), SPEED).stream()
                .map(range -> range.held().orElseThrow())
                .min(Comparator.comparingDouble(Held::torque))
                .orElseThrow();
    }

    /** The shaft bears 500 N·m of the turbine, half of which the brake holds; the piston's pressure for that follows by hand. */
    @Test
    void atTheCrossingThePistonHasThePressureThatTheShaftsRatingAsksOfTheBrake() {
        Transmission unit = unit(SHAFT);
        UsefulPressure useful = useful(unit);
        assertTrue(useful.crosses());
        assertEquals("input-shaft", useful.weakest().orElseThrow().name());
        assertEquals("first", useful.range());
        assertEquals(List.of(), useful.unsolved());
        double torque = SHAFT / TenNodesWithTrain.CONVERTER;
        assertEquals(torque, useful.weakest().orElseThrow().torque(), 1e-9);
        Transmission set = SetPressure.of(unit, useful.pressure().orElseThrow());
        double piston = new SteadySolver(set.network())
                .solve(set.conditions(
                        TorqueConditions.of(set, set.range("first").orElseThrow(), SPEED)
                                .duty(torque, SPEED)))
                .state()
                .orElseThrow()
                .pressure("brake-apply");
        double byHand = (TenNodesWithTrain.FACTOR * 0.5 * SHAFT / TenNodesWithTrain.arm(8) + TenNodesWithTrain.SPRING)
                / TenNodesWithTrain.AREA;
        assertEquals(byHand, piston, 2e-3 * byHand);
    }

    @Test
    void theBrakeGivesBeforeTheShaftBelowTheCrossingAndTheShaftBeforeTheBrakeAboveIt() {
        Transmission unit = unit(SHAFT);
        double at = useful(unit).pressure().orElseThrow();
        Held below = least(unit, 0.97 * at);
        Held above = least(unit, 1.03 * at);
        double bearable = SHAFT / TenNodesWithTrain.CONVERTER;
        assertEquals("brake", below.links().get(0).name());
        assertTrue(below.torque() < bearable && below.torque() > 0.9 * bearable, below.toString());
        assertEquals("input-shaft", above.links().get(0).name());
        assertEquals(bearable, above.torque(), 1e-9 * bearable);
    }

    @Test
    void aWeakShaftGivesFirstAtEveryPressureAndAStrongOneAtNone() {
        UsefulPressure weak = useful(unit(50));
        assertFalse(weak.crosses());
        assertEquals(PRESSURES.get(0), weak.pressure().orElseThrow());
        // the one-way clutch, at 900 N·m over half of 1.8 times the engine's, is then what bears least
        UsefulPressure strong = useful(unit(TenNodesWithTrain.STRONG));
        assertEquals("one-way", strong.weakest().orElseThrow().name());
        assertTrue(strong.pressure().isEmpty(), strong.toString());
        assertFalse(strong.crosses());
        assertEquals(200 * PSI, strong.highest());
    }

    private static AskedTorque asked(Transmission unit, double torque) {
        return AskedTorque.of(
                torque, unit, Window.Raised.by(unit, SetPressure.By.COMMAND_AND_SPRING), PRESSURES, SPEED);
    }

    /** What the search over torque finds at a pressure is held from that pressure on, and a little more is not. */
    @Test
    void aTorqueThatIsHeldAtAPressureIsHeldFromThatPressureOn() {
        Transmission unit = unit(TenNodesWithTrain.STRONG);
        double held = least(unit, 120 * PSI).torque();
        AskedTorque asked = asked(unit, held);
        assertEquals(120, asked.from().orElseThrow() / PSI, 0.5);
        assertEquals(200 * PSI, asked.to(), "more pressure holds it too");
        assertTrue(asked.gives().isEmpty() && asked.pressureDecides());
        assertTrue(asked(unit, 1.05 * held).from().orElseThrow() > 1.02 * 120 * PSI);
    }

    @Test
    void aTorqueAboveTheShaftsIsHeldAtNoPressureAndTheShaftIsNamed() {
        AskedTorque asked = asked(unit(SHAFT), 1.01 * SHAFT / TenNodesWithTrain.CONVERTER);
        assertTrue(asked.from().isEmpty());
        assertEquals("input-shaft", asked.gives().orElseThrow().name());
        assertEquals("first", asked.range());
        assertFalse(asked.pressureDecides());
    }

    @Test
    void aTorqueThatNoPressureTriedHoldsNamesTheClutchAtTheHighest() {
        Transmission unit = TenNodesWithTrain.withGears(unit(SHAFT), Optional.empty());
        double most = least(unit, 200 * PSI).torque();
        AskedTorque asked = asked(unit, 1.1 * most);
        assertTrue(asked.from().isEmpty());
        assertEquals("brake", asked.gives().orElseThrow().name());
        assertTrue(asked.gives().orElseThrow().torque() < 1.1 * most);
        assertTrue(asked.pressureDecides());
    }

    @Test
    void theFactorInHandIsThatOfTheClutchesThatAreApplied() {
        assertEquals(
                new ClutchFactors(TenNodesWithTrain.FACTOR, TenNodesWithTrain.FACTOR), ClutchFactors.of(unit(SHAFT)));
        assertEquals(new ClutchFactors(1.1, 1.3), new ClutchFactors(1.1, 1.2).with(new ClutchFactors(1.15, 1.3)));
    }

    @Test
    void withoutRatingsThereIsNoCrossing() {
        UsefulPressure none = useful(TenNodesWithTrain.withGears(unit(SHAFT), Optional.empty()));
        assertTrue(none.weakest().isEmpty() && none.pressure().isEmpty());
        assertEquals("", none.range());
        assertEquals(50 * PSI, none.lowest());
    }

    @Test
    void overSetPressureTheBrakeRisesAndTheShaftLiesFlat() {
        Transmission unit = unit(SHAFT);
        AtomicInteger steps = new AtomicInteger();
        TorqueByPressure by = TorqueByPressure.of(
                Window.Raised.by(unit, SetPressure.By.COMMAND_AND_SPRING),
                PRESSURES,
                SPEED,
                () -> steps.incrementAndGet());
        assertEquals(PRESSURES.size(), steps.get());
        double flat = SHAFT / TenNodesWithTrain.CONVERTER;
        double before = 0;
        for (TorqueByPressure.TorqueAtPressure point : by.points()) {
            assertEquals(flat, of(point, "input-shaft"), 1e-9 * flat);
            double brake = of(point, "brake");
            assertTrue(brake > before, point.toString());
            before = brake;
            assertEquals(Math.min(brake, flat), point.held().orElseThrow(), 1e-3 * flat);
            assertEquals(
                    point.links().stream()
                            .sorted(Comparator.comparingDouble(Carrier::torque))
                            .toList(),
                    point.links());
        }
        assertTrue(of(by.points().get(0), "brake") < flat && flat < before);
        // of the two ranges the one that loads it most counts
        assertEquals(900 / 0.5 / TenNodesWithTrain.CONVERTER, of(by.points().get(0), "one-way"), 1e-9);
    }

    private static double of(TorqueByPressure.TorqueAtPressure point, String link) {
        return point.links().stream()
                .filter(one -> one.name().equals(link))
                .mapToDouble(Carrier::torque)
                .findFirst()
                .orElseThrow();
    }
}
