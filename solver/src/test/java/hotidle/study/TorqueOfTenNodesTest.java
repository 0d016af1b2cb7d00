package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Margin;
import hotidle.network.Placed;
import hotidle.newton.SteadySolver;
import hotidle.part.OilRing;
import hotidle.result.Solution;
import hotidle.study.TorqueHeld.Carrier;
import hotidle.study.TorqueHeld.Held;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Range;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The engine torque that ten nodes with a brake, a clutch and a shaft hold. */
class TorqueOfTenNodesTest {

    private static final double SPEED = TenNodesWithTrain.SPEED;
    private static final double PSI = TenNodes.PSI;

    private static Map<String, TorqueHeld> found(Transmission unit) {
        return TorqueHeld.of(unit, SPEED).stream().collect(Collectors.toMap(TorqueHeld::range, one -> one));
    }

    private static Held held(Transmission unit, String range) {
        return found(unit).get(range).held().orElseThrow();
    }

    private static Solution solved(Transmission unit, DutyPoint duty) {
        return new SteadySolver(unit.network())
                .solve(unit.conditions(duty))
                .state()
                .orElseThrow();
    }

    private static Carrier carrier(Held held, String name) {
        return held.links().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** In first the brake bears half of 1.8 times the engine's torque, in second the clutch a third of the engine's. */
    @Test
    void aClutchHoldsWhatItsPressureItsLiningsAndItsShareGiveByHand() {
        Transmission unit = TenNodesWithTrain.unit(1, 3, TenNodesWithTrain.STRONG, TenNodesWithTrain.LEVEL);
        Map<String, TorqueHeld> found = found(unit);
        assertEquals(2, found.size(), "park applies nothing");
        Held first = found.get("first").held().orElseThrow();
        Solution state = solved(unit, found.get("first").at().duty(first.torque(), SPEED));
        double clamping = state.pressure("brake-apply") * TenNodesWithTrain.AREA - TenNodesWithTrain.SPRING;
        double byHand =
                TenNodesWithTrain.arm(3) * clamping / TenNodesWithTrain.FACTOR / 0.5 / TenNodesWithTrain.CONVERTER;
        assertEquals(byHand, first.torque(), 1e-6 * byHand);
        assertEquals("brake", first.links().get(0).name());
        assertEquals(1.5, found.get("first").ratio().orElseThrow(), 1e-12);
        Held second = found.get("second").held().orElseThrow();
        double pressing = second.line() * TenNodesWithTrain.AREA - TenNodesWithTrain.SPRING;
        double direct = TenNodesWithTrain.arm(8) * pressing / TenNodesWithTrain.FACTOR * 3;
        assertEquals(direct, second.torque(), 1e-6 * direct);
        assertFalse(second.links().get(0).shared());
    }

    /** Above its set pressure the line stands by what the spring, 6000 N/m, gains over the valve's 4 mm of travel, on 180 mm². */
    @Test
    void aLevelCommandHoldsItsPressureAndHasNoLastRowToLieBeyond() {
        Held first = held(TenNodesWithTrain.unit(1, 8, TenNodesWithTrain.STRONG, TenNodesWithTrain.LEVEL), "first");
        assertEquals(150 * PSI, first.commanded().orElseThrow(), 1e-6 * 150 * PSI);
        double above = first.line() - 150 * PSI;
        assertTrue(above > 0 && above < 6000 * 4e-3 / 180e-6, above + " Pa");
        assertFalse(first.beyond());
        assertEquals(OptionalDouble.empty(), first.from(), "the fresh pump holds the line at idle");
    }

    /** Judging margins knows nothing of this search. */
    @Test
    void theMarginOfTheBrakeTurnsBetweenTheRowsAtTheTorqueThatIsHeld() {
        Transmission unit = TenNodesWithTrain.unit(1, 3, TenNodesWithTrain.STRONG, TenNodesWithTrain.RISING);
        TorqueHeld found = found(unit).get("first");
        Held held = found.held().orElseThrow();
        assertTrue(held.torque() > 100 && held.torque() < 300, held.toString());
        assertFalse(held.beyond());
        double commanded = TenNodesWithTrain.RISING.at(held.torque());
        assertEquals(commanded, held.commanded().orElseThrow(), 1e-6 * commanded);
        assertTrue(apply(unit, found, 0.99).headroom() > 0);
        assertTrue(apply(unit, found, 1.01).headroom() < 0);
        assertEquals(held.torque(), carrier(held, "brake").torque(), 1e-3 * held.torque());
    }

    private static Margin apply(Transmission unit, TorqueHeld found, double share) {
        DutyPoint duty = found.at().duty(share * found.held().orElseThrow().torque(), SPEED);
        return margin(unit, duty, Margin.Kind.APPLY, "brake");
    }

    private static Margin margin(Transmission unit, DutyPoint duty, Margin.Kind kind, String part) {
        return Judgement.of(unit, duty, List.of(SPEED)).margins().stream()
                .filter(margin -> margin.kind() == kind && margin.part().equals(part))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void beyondItsLastRowTheCommandIsHeldOn() {
        Held first = held(TenNodesWithTrain.unit(1, 8, TenNodesWithTrain.STRONG, TenNodesWithTrain.RISING), "first");
        Held level = held(TenNodesWithTrain.unit(1, 8, TenNodesWithTrain.STRONG, TenNodesWithTrain.LEVEL), "first");
        assertTrue(first.beyond());
        assertTrue(first.torque() > 300);
        assertEquals(level.torque(), first.torque(), 1e-6 * level.torque());
    }

    @Test
    void aWeakShaftGivesFirstAndTheConverterLoadsItInTheLowestRangeAlone() {
        Transmission unit = TenNodesWithTrain.unit(1, 8, 200, TenNodesWithTrain.LEVEL);
        Held first = held(unit, "first");
        Held second = held(unit, "second");
        assertEquals(200 / TenNodesWithTrain.CONVERTER, first.torque(), 1e-9);
        assertEquals(200, second.torque(), 1e-9);
        assertEquals("input-shaft", first.links().get(0).name());
        assertFalse(first.links().get(0).clutch());
        DutyPoint over = found(unit).get("second").at().duty(201, SPEED);
        assertTrue(margin(unit, over, Margin.Kind.RATED_TORQUE, "input-shaft").headroom() < 0);
        DutyPoint within = found(unit).get("second").at().duty(199, SPEED);
        assertTrue(margin(unit, within, Margin.Kind.RATED_TORQUE, "input-shaft").headroom() > 0);
    }

    /** 900 N·m over half of 1.8 times the engine's. */
    @Test
    void theOneWayClutchCarriesInFirstAloneAndSharesWithTheBrake() {
        Transmission unit = TenNodesWithTrain.unit(1, 8, TenNodesWithTrain.STRONG, TenNodesWithTrain.LEVEL);
        Carrier oneWay = carrier(held(unit, "first"), "one-way");
        assertEquals(900 / 0.5 / TenNodesWithTrain.CONVERTER, oneWay.torque(), 1e-9);
        assertTrue(oneWay.shared());
        assertTrue(carrier(held(unit, "first"), "brake").shared());
        assertTrue(held(unit, "second").links().stream()
                .noneMatch(one -> one.name().equals("one-way")));
    }

    @Test
    void withoutAGearTrainClutchesAloneCarry() {
        Transmission unit = TenNodesWithTrain.withGears(
                TenNodesWithTrain.unit(1, 8, 200, TenNodesWithTrain.LEVEL), Optional.empty());
        Held first = held(unit, "first");
        assertTrue(first.links().stream().allMatch(Carrier::clutch));
        assertTrue(first.torque() > 200 / TenNodesWithTrain.CONVERTER);
    }

    /** By hand: what the ring of oil presses with, times the arm, over factor and share. */
    @Test
    void oilThatTurnsWithTheDrumHelpsWhereTheTurbinesSpeedIsKnown() {
        OilRing ring = new OilRing(0.03, 0.05, 0.02);
        Transmission plain = TenNodesWithTrain.unit(1, 8, TenNodesWithTrain.STRONG, TenNodesWithTrain.LEVEL);
        Transmission turning = ringed(plain, "direct", ring);
        double density = plain.oil().at(110 + TenNodes.CELSIUS, 101_325).liquidDensity();
        double more = TenNodesWithTrain.arm(8) * ring.force(density, SPEED) / TenNodesWithTrain.FACTOR * 3;
        assertEquals(
                more, held(turning, "second").torque() - held(plain, "second").torque(), 1e-3 * more);
    }

    /** The brake's drum made to turn with the turbine, whose speed the converter leaves open in first. */
    @Test
    void oilThatTurnsWithTheDrumIsNoHelpWhereTheTurbinesSpeedIsNotKnown() {
        Transmission standing = TenNodesWithTrain.unit(1, 8, TenNodesWithTrain.STRONG, TenNodesWithTrain.LEVEL);
        Range first = standing.range("first").orElseThrow();
        Range.Applied turns = new Range.Applied(first.applied().get("brake").torqueShare(), 1);
        Transmission plain = TenNodesWithTrain.withRanges(
                standing,
                List.of(
                        new Range("first", true, Map.of("brake", turns), Map.of(), first.driven()),
                        standing.range("second").orElseThrow()));
        Transmission turning = ringed(plain, "brake", new OilRing(0.03, 0.05, 0.02));
        assertEquals(held(plain, "first").torque(), held(turning, "first").torque(), 1e-9);
    }

    private static Transmission ringed(Transmission unit, String name, OilRing ring) {
        Placed placed = unit.network().part(name).orElseThrow();
        double bleed = name.equals("brake") ? 0.0008 : 0;
        return unit.with(
                unit.network().with(placed.with(TenNodesWithTrain.clutch(8, bleed, Optional.of(ring)))),
                unit.command());
    }

    @Test
    void aWornPumpHoldsNineTenthsFromASpeedOnAndNotBelowIt() {
        Transmission unit = TenNodesWithTrain.unit(4, 8, TenNodesWithTrain.STRONG, TenNodesWithTrain.LEVEL);
        TorqueHeld found = found(unit).get("first");
        Held held = found.held().orElseThrow();
        double from = held.from().orElseThrow();
        assertTrue(from > 650 / 60.0 && from < SPEED, from * 60 + " rpm");
        DutyPoint at = found.at().duty(0.9 * held.torque(), from);
        DutyPoint below = found.at().duty(0.9 * held.torque(), from - 15 / 60.0);
        assertTrue(capacity(unit, at) >= at.engineTorque());
        assertTrue(capacity(unit, below) < below.engineTorque());
        TorqueHeld.atOneSpeed(unit, SPEED)
                .forEach(one -> assertEquals(
                        OptionalDouble.empty(), one.held().orElseThrow().from()));
    }

    private static double capacity(Transmission unit, DutyPoint duty) {
        double clamping =
                solved(unit, duty).pressure("brake-apply") * TenNodesWithTrain.AREA - TenNodesWithTrain.SPRING;
        return TenNodesWithTrain.arm(8) * clamping / TenNodesWithTrain.FACTOR / 0.5 / TenNodesWithTrain.CONVERTER;
    }
}
