package hotidle.circuits.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Margin;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.Library;
import hotidle.study.Judgement;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Range;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Gear train of the demonstration unit, and whether its clutches hold full engine torque. */
class ShuttleFiveClutchTest {

    private static final Ready READY = Ready.of("shuttle-five");

    /** Full throttle of its engine, at stall and above [N·m]. */
    private static final double FULL = 750;

    private static final List<Double> SPEEDS = List.of(1900 / 60.0);

    private static final double SUN = 28;
    private static final double RING = 80;
    private static final double LARGE_SUN = 36;
    private static final double SMALL_SUN = 30;
    private static final double REAR_RING = 84;

    /** Of the front set, whose sun stands: turbine over carrier. */
    private static final double FRONT = 1 + SUN / RING;

    private static List<Margin> apply(String build, String duty) {
        Transmission unit = READY.circuit().unit(build);
        return Judgement.of(unit, unit.duty(duty).orElseThrow(), SPEEDS).margins().stream()
                .filter(margin -> margin.kind() == Margin.Kind.APPLY || margin.kind() == Margin.Kind.APPLY_SLIDING)
                .toList();
    }

    private static Margin holding(String build, String duty, String clutch) {
        return apply(build, duty).stream()
                .filter(margin -> margin.part().equals(clutch) && margin.kind() == Margin.Kind.APPLY)
                .findFirst()
                .orElseThrow();
    }

    /** Willis and the balance of each set by hand, without losses: ratio, torque over the turbine's and speed of the drum. */
    @Test
    void withoutLossesTheTrainGivesWhatItsTeethGiveByHand() {
        String text = Library.text("shuttle-five")
                .orElseThrow()
                .replace("  output: output\n", "  output: output\n  mesh-efficiency: 100 %\n");
        Transmission unit =
                CircuitReader.read(text, "x.yaml").circuit().orElseThrow().unit();
        double drum = 1 / FRONT;
        range(unit, "first", FRONT * REAR_RING / SMALL_SUN, Map.of("low-clutch", new Range.Applied(FRONT, drum)));
        // the small sun drives and the large one stands; what the case has to give beyond the front sun is the brake's
        double second = FRONT * (1 + LARGE_SUN / SMALL_SUN) / (1 + LARGE_SUN / REAR_RING);
        range(
                unit,
                "second",
                second,
                Map.of(
                        "low-clutch", new Range.Applied(FRONT, drum),
                        "second-brake", new Range.Applied(second - FRONT, 0)));
        // the rear set turns as one: both suns share so that the carrier, free, carries nothing
        double direct = FRONT * (REAR_RING / SMALL_SUN - 1) / (REAR_RING / SMALL_SUN + REAR_RING / LARGE_SUN);
        range(
                unit,
                "third",
                FRONT,
                Map.of(
                        "low-clutch", new Range.Applied(FRONT - direct, drum),
                        "direct-clutch", new Range.Applied(direct, drum)));
        // the turbine drives the rear carrier, and the large sun gives back to it through the front set
        double back = 1 / (1 + REAR_RING / LARGE_SUN - 1 / FRONT);
        range(
                unit,
                "fourth",
                back * REAR_RING / LARGE_SUN,
                Map.of(
                        "direct-clutch", new Range.Applied(back, drum),
                        "overdrive-clutch", new Range.Applied(back * (1 + REAR_RING / LARGE_SUN), 1)));
        double fifth = REAR_RING / (REAR_RING + LARGE_SUN);
        range(
                unit,
                "fifth",
                fifth,
                Map.of(
                        "overdrive-clutch", new Range.Applied(1, 1),
                        "second-brake", new Range.Applied(1 - fifth, 0)));
        double reverse = FRONT * REAR_RING / LARGE_SUN;
        range(
                unit,
                "reverse",
                -reverse,
                Map.of(
                        "direct-clutch", new Range.Applied(FRONT, drum),
                        "reverse-brake", new Range.Applied(FRONT + reverse, 0)));
    }

    private static void range(Transmission unit, String name, double ratio, Map<String, Range.Applied> byHand) {
        Range range = unit.range(name).orElseThrow();
        assertEquals(ratio, range.driven().orElseThrow().ratio(), 1e-12, name);
        assertEquals(byHand.keySet(), range.applied().keySet(), name);
        byHand.forEach((clutch, applied) -> {
            assertEquals(applied.torqueShare(), range.applied().get(clutch).torqueShare(), 1e-12, name + " " + clutch);
            assertEquals(applied.speedRatio(), range.applied().get(clutch).speedRatio(), 1e-12, name + " " + clutch);
        });
    }

    /** Stated factor included, and a tenth to spare: at stall forward and in reverse, and at full load in every other range. */
    @Test
    void theSoundUnitHoldsFullEngineTorqueInEveryRange() {
        for (String build : List.of("fresh", "restored")) {
            Transmission unit = READY.circuit().unit(build);
            List<DutyPoint> full = unit.duties().stream()
                    .filter(duty -> duty.engineTorque() >= FULL)
                    .toList();
            assertEquals(
                    Set.of("first", "second", "third", "fourth", "fifth", "reverse"),
                    full.stream().map(DutyPoint::range).collect(Collectors.toSet()));
            for (DutyPoint duty : full) {
                for (Margin margin : apply(build, duty.name())) {
                    assertTrue(margin.headroom() > 0.1, build + " " + duty.name() + " " + margin);
                }
            }
        }
    }

    /** The pump has oil enough at stall; what leaks past rings and plate takes the low clutch down to the least of it. */
    @Test
    void theWornUnitJustHoldsAtStallAndCouldNotWithTheLineOfItsHotIdle() {
        Margin stall = holding("worn", "stall", "low-clutch");
        assertTrue(stall.headroom() > 0 && stall.headroom() < 0.12, stall.toString());
        assertTrue(stall.headroom() < holding("fresh", "stall", "low-clutch").headroom() - 0.02);
        double idle = READY.at("worn", "hot-idle").pressure("low");
        assertTrue(idle < stall.needed(), "it needs " + stall.needed() + " Pa and has " + idle + " Pa at hot idle");
    }

    /** Its lining grips better while it slips: the share of the return spring apart, the pressures are as the coefficients. */
    @Test
    void theSecondBrakeNeedsLessWhileItSlipsThanAtRest() {
        List<Margin> second = apply("fresh", "full-throttle-shift").stream()
                .filter(margin -> margin.part().equals("second-brake"))
                .toList();
        double spring = 800 / 110e-4;
        assertEquals(2, second.size());
        assertEquals(
                0.12 / 0.135, (second.get(1).needed() - spring) / (second.get(0).needed() - spring), 1e-9);
    }
}
