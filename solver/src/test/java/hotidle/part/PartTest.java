package hotidle.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.law.Effectiveness;
import hotidle.law.RatedPoint;
import hotidle.oil.Oil;
import hotidle.oil.OilAt;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Parts where no published value stands for them; those are in the validation sheet. */
class PartTest {

    /** Half uncovered, a round hole has half of its circle, so half the flow of four drilled holes of its size and Cd (geometry). */
    @Test
    void aRoundHoleUncoveredByHalfPassesHalf() {
        Fit fit = Fit.same(0.016 + 1e-7, 0.016);
        SpoolValve.Opening four = new SpoolValve.Opening("bypass", 0, 1, fit, 1, 0, true, 0, 0.7, 4, 3e-3);
        SpoolValve valve = new SpoolValve(
                List.of("line", "tank"),
                List.of(four),
                List.of(new SpoolValve.Area(0, 2e-4, Set.of())),
                new SpoolSpring(1000, 10, 0, 5e-3, 0),
                OptionalDouble.empty());
        Part.Law law = valve.law(new Setting(0, "any", Setting.Lockup.OFF, Oil.fixed(850, 1e-9), 0));
        double half = law.streams(Reading.of(valve.form(), 1e6, 0, 1.5e-3))
                .iterator()
                .next()
                .volume();
        double full = law.streams(Reading.of(valve.form(), 1e6, 0, 4e-3))
                .iterator()
                .next()
                .volume();
        double drilled = 0.7 * 4 * Math.PI / 4 * 9e-6 * Math.sqrt(2 * 1e6 / 850);
        assertEquals(drilled, full, 1e-6 * drilled);
        assertEquals(drilled / 2, half, 1e-6 * drilled);
    }

    /** Open by 0.5 mm at 1 MPa: 0.43·w·x·Δp of a plain land, 40 % of it where the valve's form takes away 60 %. */
    @Test
    void aCompensatedSpoolFeelsTheFlowForceThatItsFormLeaves() {
        double plain = flowForce(0);
        assertEquals(0.43 * Math.PI * 0.016 * 0.5e-3 * 1e6, plain, 0.01 * plain);
        assertEquals(0.4 * plain, flowForce(0.6), 1e-12 * plain);
        assertEquals(0, flowForce(1), 1e-12 * plain);
    }

    private static double flowForce(double compensation) {
        SpoolValve.Opening opening = new SpoolValve.Opening(
                "bypass", 0, 1, Fit.same(0.016 + 1e-9, 0.016), 1, 0, true, 0, 0.611, 0, 0, compensation);
        SpoolValve valve = new SpoolValve(
                List.of("line", "tank"),
                List.of(opening),
                List.of(new SpoolValve.Area(0, 2e-4, Set.of())),
                new SpoolSpring(1000, 10, 0, 5e-3, 0),
                OptionalDouble.empty());
        Part.Law law = valve.law(new Setting(0, "any", Setting.Lockup.OFF, Oil.fixed(850, 1e-9), 0));
        return law.measures(Reading.of(valve.form(), 1e6, 0, 0.5e-3)).stream()
                .filter(reported -> reported.measure().equals(SpoolValve.FLOW_FORCE))
                .findAny()
                .orElseThrow()
                .value();
    }

    /** New linings press evenly: ⅔·(0.12³ − 0.06³)/(0.12² − 0.06²) = 93.33 mm, where worn-in ones have 90 mm. */
    @Test
    void newLiningsCarryMoreThanWornInOnes() {
        Clutch clutch = clutch(new Lining(4, 0.060, 0.120, 0.3, 0.25, false), 0.01);
        assertEquals(0.3 * 4 * 0.0933333 * (5e5 * 0.01 - 500), clutch.capacity(5e5, 0, false), 0.01);
        assertEquals(0.25 * 4 * 0.0933333 * (5e5 * 0.01 - 500), clutch.capacity(5e5, 0, true), 0.01);
        assertEquals(0.09, new Lining(4, 0.060, 0.120, 0.3, 0.25, true).meanRadius(), 1e-12);
        assertEquals(0, clutch.capacity(4e4, 0, false));
    }

    private static Clutch clutch(Lining lining, double area) {
        return new Clutch(Clutch.Piston.plain(area, 500), lining, 1.2, new Clutch.Seal(0.1, 1e-6, 1e-3, 0));
    }

    /**
     * By hand, 150 cm2 and 900 kPa less 500 N of spring: 13 000 N; 15 % more area: 15 525 N of pressure, 15 025 N of clamping, so
     * 15.58 % more torque, more than the area for the spring takes the same.
     */
    @Test
    void fifteenPerCentMorePistonGivesFifteenPerCentMorePressureForce() {
        Lining lining = new Lining(14, 0.065, 0.0825, 0.12, 0.12, true);
        double before = clutch(lining, 0.015).capacity(0.9e6, 0, false);
        double after = clutch(lining, 0.015 * 1.15).capacity(0.9e6, 0, false);
        assertEquals(0.12 * 14 * 0.07375 * (13_500 - 500), before, 1e-9);
        assertEquals(0.12 * 14 * 0.07375 * (15_525 - 500), after, 1e-9);
        assertEquals(1.15, (after / lining.torqueArm(false) + 500) / (before / lining.torqueArm(false) + 500), 1e-12);
    }

    /** A torque asked at the pressure that is needed for it is the capacity less the factor. */
    @Test
    void pressureNeededIsWhereTheCapacityIsTheTorqueTimesItsFactor() {
        OilRing ring = new OilRing(0.05, 0.09, 0.04);
        Clutch clutch = new Clutch(
                new Clutch.Piston(0.015, 900, Optional.of(ring), Optional.of(new OilRing(0.05, 0.085, 0.045))),
                new Lining(12, 0.06, 0.08, 0.12, 0.13, true),
                1.3,
                new Clutch.Seal(0.1, 1e-6, 1e-3, 0));
        double head = clutch.head(800, 40);
        assertTrue(head > 0 && head < ring.force(800, 40), "a balance chamber takes off part of " + head);
        for (boolean slipping : new boolean[] {false, true}) {
            assertEquals(1.3 * 700, clutch.capacity(clutch.pressureFor(700, head, slipping), head, slipping), 1e-9);
        }
    }

    /** Both ends of counterflow: NTU/(1 + NTU) at equal capacity rates, 1 − exp(−NTU) where one side does not change. */
    @Test
    void counterflowCoolerHasItsTwoLimits() {
        assertEquals(0.5, Effectiveness.counterflow(1, 1), 1e-12);
        assertEquals(1 - Math.exp(-2), Effectiveness.counterflow(2, 0), 1e-12);
    }

    /** What friction makes is what side flow and end leak carry off. */
    @Test
    void bushingReportsItsOwnHeatBalance() {
        Bushing bushing =
                new Bushing(Fit.same(0.0381 + 60e-6, 0.0381), 0.015, List.of(), 400, -Math.PI / 2, 2e-6, 7e6, 0, false);
        OilAt oil = new OilAt(383.15, 800, 5e-3, 0, 0, 101_325, -3e4, Optional.empty());
        Part.Law law = bushing.law(new Setting(20, "any", Setting.Lockup.OFF, oil, 0));
        Map<Measure, Double> found = new HashMap<>();
        law.measures(Reading.of(bushing.form(), 2e5, 0, 0.6, 0)).forEach(m -> found.put(m.measure(), m.value()));
        double leak = law.streams(Reading.of(bushing.form(), 2e5, 0, 0.6, 0))
                .iterator()
                .next()
                .volume();
        double heat = 800 * oil.specificHeat() * (found.get(Bushing.SIDE_FLOW) + leak) * found.get(Bushing.FILM_RISE);
        assertEquals(found.get(Bushing.FRICTION_POWER), heat, 1e-9 * heat);
    }

    /**
     * 8 L/min of oil at 120 °C past a medium at 90 °C give off 5 kW in the test: so they do in the circuit, and leave colder by 5 kW over
     * ρ·cp·q. Half of the tubes blocked leave less effect.
     */
    @Test
    void aCoolerGivesOffItsTestedHeatAtItsTestedPoint() {
        OilAt oil = new OilAt(393.15, 800, 5e-3, 0, 0, 101_325, -3e4, Optional.empty());
        double capacity = 8e-3 / 60 * 800 * oil.specificHeat();
        Cooler.Heat heat = new Cooler.Heat(Cooler.Heat.conductance(5000, capacity, 30), "in", "air");
        RatedPoint point = new RatedPoint(8e-3 / 60, 1e5, 5e-3, 800, 0.3);
        Map<Measure, Double> clean = cooled(new Cooler(point, 0, 0, Optional.of(heat)), oil);
        assertEquals(5000, clean.get(Cooler.HEAT), 1e-6);
        assertEquals(393.15 - 5000 / capacity, clean.get(Cooler.OUTLET_TEMPERATURE), 1e-9);
        Map<Measure, Double> blocked = cooled(new Cooler(point, 0.5, 0, Optional.of(heat)), oil);
        assertTrue(blocked.get(Cooler.HEAT) < 5000);
        assertEquals(
                1
                        - Math.exp(-heat.conductance()
                                / 2
                                / (blocked.get(Cooler.HEAT) / 30 / blocked.get(Cooler.EFFECTIVENESS))),
                blocked.get(Cooler.EFFECTIVENESS),
                1e-12);
        assertThrows(IllegalArgumentException.class, () -> Cooler.Heat.conductance(9000, capacity, 30));
    }

    private static Map<Measure, Double> cooled(Cooler cooler, OilAt oil) {
        Setting setting =
                new Setting(20, "any", Setting.Lockup.OFF, oil, 0, Map.of("in", oil.temperature(), "air", 363.15));
        Map<Measure, Double> found = new HashMap<>();
        cooler.law(setting).measures(Reading.of(cooler.form(), 1e5, 0)).forEach(m -> found.put(m.measure(), m.value()));
        return found;
    }

    /** A rated point gives back its own flow; half of the paths blocked, half of the flow at the same drop when laminar. */
    @Test
    void coolerGoesThroughItsRatedPoint() {
        RatedPoint point = new RatedPoint(1e-4, 5e4, 0.006, 800, 0.3);
        assertEquals(1e-4, point.loss().flow(5e4, 800, 0.006).q(), 1e-18);
        RatedPoint laminar = new RatedPoint(1e-4, 5e4, 0.006, 800, 0);
        assertEquals(0.5e-4, laminar.loss(0.5).flow(5e4, 800, 0.006).q(), 1e-18);
    }

    /** Linear expansion 24e-6 against 12e-6 1/K: 0.012 µm per mm and K, so 12.2 µm on 12.7 mm over 80 K (common practice). */
    @Test
    void aluminiumBoreOpensAroundASteelValve() {
        Fit fit = new Fit(12.730e-3, 12.700e-3, 24e-6, 12e-6, 293.15);
        assertEquals(30e-6 + 12.2e-6, fit.gap(373.15), 0.1e-6);
    }

    /** By hand: 6 bar on 20 cm² less 200 N pull 1000 N; e^(0.12·2·π·3/4) = 1.7603, so 76.03 N·m helped, 43.19 N·m against, at 0.1 m. */
    @Test
    void aBandHoldsMoreWhereTheDrumHelpsToPullItTight() {
        double wrap = 1.5 * Math.PI;
        Clutch.Piston servo = Clutch.Piston.plain(20e-4, 200);
        Clutch.Seal seal = new Clutch.Seal(0.05, 2e-6, 2e-3, 0);
        Clutch helped = new Clutch(servo, new Band(0.1, wrap, 1, true, 0.12, 0.10), 1.2, seal);
        Clutch against = new Clutch(servo, new Band(0.1, wrap, 1, false, 0.12, 0.10), 1.2, seal);
        assertEquals(76.03, helped.capacity(6e5, 0, false), 0.01);
        assertEquals(43.19, against.capacity(6e5, 0, false), 0.01);
        assertTrue(helped.capacity(6e5, 0, true) < helped.capacity(6e5, 0, false));
        assertEquals(6e5, against.pressureFor(against.capacity(6e5, 0, false) / 1.2, 0, false), 1e-6);
    }
}
