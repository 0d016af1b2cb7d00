package hotidle.part;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.law.Effectiveness;
import hotidle.law.RatedPoint;
import hotidle.oil.Oil;
import hotidle.oil.OilAt;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
                new SpoolValve.Spring(1000, 10, 0, 5e-3, 0),
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

    /** New linings press evenly: ⅔·(0.12³ − 0.06³)/(0.12² − 0.06²) = 93.33 mm, where worn-in ones have 90 mm. */
    @Test
    void newLiningsCarryMoreThanWornInOnes() {
        Clutch clutch = new Clutch(0.01, 500, 4, 0.060, 0.120, 0.3, 0.1, 1e-6, 1e-3, 0);
        assertEquals(0.3 * 4 * 0.0933333 * (5e5 * 0.01 - 500), clutch.capacity(5e5), 0.01);
        assertEquals(0.09, clutch.meanRadius(true), 1e-12);
        assertEquals(0, clutch.capacity(4e4));
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
        Bushing bushing = new Bushing(Fit.same(0.0381 + 60e-6, 0.0381), 0.015, List.of(), 400, -Math.PI / 2, 2e-6, 7e6);
        OilAt oil = new OilAt(383.15, 800, 5e-3, 0, 0, 101_325, -3e4);
        Part.Law law = bushing.law(new Setting(20, "any", Setting.Lockup.OFF, oil, 0));
        Map<String, Double> found = new HashMap<>();
        law.measures(Reading.of(bushing.form(), 2e5, 0, 0.6)).forEach(m -> found.put(m.name(), m.value()));
        double leak = law.streams(Reading.of(bushing.form(), 2e5, 0, 0.6))
                .iterator()
                .next()
                .volume();
        double heat =
                800 * oil.specificHeat() * (found.get("side_flow_m3_s") + leak) * found.get("heat_balance_rise_k");
        assertEquals(found.get("friction_power_w"), heat, 1e-9 * heat);
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
}
