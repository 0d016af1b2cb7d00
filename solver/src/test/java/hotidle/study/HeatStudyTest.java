package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.heat.HeatBalance;
import hotidle.heat.HeatFlows;
import hotidle.heat.HeatItem;
import hotidle.heat.SettledUnit;
import hotidle.heat.Warmed;
import hotidle.law.RatedPoint;
import hotidle.network.Group;
import hotidle.network.Placed;
import hotidle.part.Clutch;
import hotidle.part.Converter;
import hotidle.part.Cooler;
import hotidle.part.Lining;
import hotidle.part.Sensed;
import hotidle.part.Setting;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.HeatInputs;
import hotidle.transmission.Range;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import hotidle.transmission.Warming;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The small unit with a converter, a cooler that gives off heat and an open pack. */
class HeatStudyTest {

    private static final double CELSIUS = TenNodes.CELSIUS;
    private static final double STALLED = 0;
    private static final double SLIPPING = 0.9;

    private static DutyPoint duty(String name, double torque, double speedRatio, Warming warming) {
        return new DutyPoint(
                name,
                "",
                1500 / 60.0,
                "first",
                Setting.Lockup.OFF,
                torque,
                1.05,
                OptionalDouble.of(speedRatio),
                1,
                Map.of("film", 110 + CELSIUS, "coolant", 85 + CELSIUS),
                Map.of(),
                Sensed.NOTHING,
                Optional.of(warming));
    }

    private static final DutyPoint CLIMB = duty("climb", 150, SLIPPING, new Warming.ToBalance());

    private static Transmission unit(double wear, double conductance, DutyPoint... duties) {
        Transmission plain = TenNodes.worn(wear);
        List<Placed> parts = new ArrayList<>(plain.network().parts());
        parts.add(Placed.of(
                "open-clutch",
                new Clutch(
                        Clutch.Piston.plain(0.01, 500),
                        new Lining(10, 0.06, 0.08, 0.12, 0.12, true),
                        1.2,
                        new Clutch.Seal(0.1, 2e-6, 2e-3, 0),
                        Optional.of(new Clutch.OpenPack(2e-4, Optional.of("lube-front")))),
                "sump",
                Group.VALVE_BODY,
                "lube",
                "sump"));
        RatedPoint loss = new RatedPoint(1e-4, 3e4, 5e-3, 790, 0.7);
        Transmission made = plain.with(
                new hotidle.network.Network(plain.network().nodes(), parts)
                        .with(Placed.of(
                                "converter-out",
                                new Converter(loss, 1e5, Optional.empty()),
                                "converter",
                                Group.CONVERTER,
                                "converter",
                                "cooler-in"))
                        .with(Placed.of(
                                "cooler",
                                new Cooler(
                                        new RatedPoint(2e-4, 1e5, 5e-3, 790, 0.7),
                                        0,
                                        3e-5,
                                        Optional.of(new Cooler.Heat(conductance, "converter", "coolant"))),
                                "cooled",
                                Group.COOLER,
                                "cooler-in",
                                "lube")),
                plain.command());
        return new Transmission(
                made.circuit(),
                "wear " + wear,
                made.network(),
                made.oil(),
                made.ambient(),
                List.of(new Range("first", true, Map.of(), Map.of("open-clutch", 0.5))),
                made.commanded(),
                List.of(duties),
                made.taps(),
                Optional.of(
                        new HeatInputs(35 + CELSIUS, 20, 4, 60_000, 20_000, 0.02, 0.05, 140 + CELSIUS, 175 + CELSIUS)));
    }

    private static double sump(Transmission unit, DutyPoint duty) {
        return HeatBalance.of(unit, duty).settled().orElseThrow().at().sump();
    }

    @Test
    void sourcesAndSinksMeetAtBalance() {
        Warmed warmed = HeatBalance.of(unit(1, 120, CLIMB), CLIMB);
        assertEquals(Warmed.WarmingEnd.SETTLED, warmed.verdict());
        HeatFlows flows = warmed.settled().orElseThrow().flows();
        assertEquals(0, flows.imbalance(), 1e-9);
        assertEquals(0, flows.sumpRate() / flows.generated(), 1e-9);
        assertEquals(0, flows.converterRate() / flows.generated(), 1e-9);
        assertEquals(150 * 2 * Math.PI * 25 * (1 - 1.05 * SLIPPING), flows.watts(HeatItem.Kind.CONVERTER), 1e-6);
        assertEquals(0.02 * 150 * 1.05 * 2 * Math.PI * 25 * SLIPPING, flows.watts(HeatItem.Kind.MESHES), 1e-6);
        for (HeatItem.Kind kind : List.of(
                HeatItem.Kind.PUMP, HeatItem.Kind.THROTTLING, HeatItem.Kind.OPEN_PACKS, HeatItem.Kind.CHURNING)) {
            assertTrue(flows.watts(kind) > 0, kind.name());
        }
        for (HeatItem.Kind kind : List.of(HeatItem.Kind.COOLER, HeatItem.Kind.CASE, HeatItem.Kind.HOUSING)) {
            assertTrue(flows.watts(kind) < 0, kind.name());
        }
    }

    @Test
    void oilLeavesTheConverterHotterAndTheCoolerColderThanTheSump() {
        Warmed warmed = HeatBalance.of(unit(1, 120, CLIMB), CLIMB);
        Map<String, Double> regions = warmed.settled().orElseThrow().duty().temperatures();
        assertTrue(regions.get("converter") > regions.get("sump"), regions.toString());
        assertTrue(regions.get("cooled") < regions.get("converter"), regions.toString());
        assertTrue(regions.get("cooled") > 85 + CELSIUS, regions.toString());
    }

    @Test
    void aSmallerCoolerAWornUnitAndMorePressureEachMakeItHotter() {
        Transmission unit = unit(1, 120, CLIMB);
        double before = sump(unit, CLIMB);
        assertTrue(sump(unit(1, 60, CLIMB), CLIMB) > before + 1);
        assertTrue(sump(SetPressure.of(unit, 250 * TenNodes.PSI), CLIMB) > before + 0.5);
        assertTrue(sump(unit(3, 120, CLIMB), CLIMB) != before);
    }

    /** Limits are narrowed down over the same pressures, each asking for duty points of its own. */
    @Test
    void atAPressureAskedForAgainADutyPointKeepsTheTemperatureFoundFirst() {
        DutyPoint hill = duty("hill", 100, SLIPPING, new Warming.ToBalance());
        Transmission unit = unit(1, 120, CLIMB, hill);
        Window.Raised raised = new SettledRaised((pressure, duties) -> SetPressure.of(unit, pressure));
        double higher = 250 * TenNodes.PSI;
        DutyPoint alone = raised.to(higher, Set.of("climb")).duty("climb").orElseThrow();
        Transmission both = raised.to(higher, Set.of("climb", "hill"));
        assertSame(alone, both.duty("climb").orElseThrow());
        Transmission found = SettledUnit.of(SetPressure.of(unit, higher), Set.of("climb", "hill"))
                .unit();
        assertEquals(found.duties(), both.duties());
        assertNotEquals(
                alone.temperatures(),
                raised.to(150 * TenNodes.PSI, Set.of("climb"))
                        .duty("climb")
                        .orElseThrow()
                        .temperatures());
    }

    @Test
    void aStallRunsAwayInTheConverterWithinSeconds() {
        DutyPoint stall = duty("stall", 400, STALLED, new Warming.ToBalance());
        Warmed warmed = HeatBalance.of(unit(1, 120, stall), stall);
        assertEquals(Warmed.WarmingEnd.CONVERTER_RUNS_AWAY, warmed.verdict());
        // 62.8 kW into 20 kJ/K from 35 to 175 °C, less what flows off meanwhile
        assertTrue(
                warmed.seconds().orElseThrow() > 44 && warmed.seconds().get() < 90,
                warmed.seconds().get() + " s");
    }

    @Test
    void aShortStallAfterAClimbEndsHotterInTheConverterAndHardlyInTheSump() {
        DutyPoint stall = duty("stall", 200, STALLED, new Warming.After("climb", 3));
        Transmission unit = unit(1, 120, CLIMB, stall);
        double climb = HeatBalance.of(unit, CLIMB).settled().orElseThrow().at().converter();
        Warmed warmed = HeatBalance.of(unit, stall);
        // 31.4 kW for 3 s into 20 kJ/K
        assertEquals(climb + 4.7, warmed.settled().orElseThrow().at().converter(), 0.5);
        assertEquals(sump(unit, CLIMB), warmed.settled().orElseThrow().at().sump(), 0.5);
    }

    @Test
    void theHeatOfAHotterBuildIsToldAgainstTheFirst() {
        Transmission unit = unit(3, 60, CLIMB);
        HeatStudy study = HeatStudy.of(List.of(unit, SetPressure.of(unit, 220 * TenNodes.PSI)), () -> {});
        assertTrue(study.builds().get(0).duties().get(0).cost().isEmpty());
        assertTrue(study.builds().get(1).known());
        HeatStudy.Cost cost = study.builds().get(1).duties().get(0).cost().orElseThrow();
        assertTrue(cost.sump() > 0, cost.toString());
        assertTrue(cost.line() <= 0, cost.toString());
        assertTrue(cost.film().isEmpty() || cost.film().getAsDouble() < 1e-6, cost.toString());
    }
}
