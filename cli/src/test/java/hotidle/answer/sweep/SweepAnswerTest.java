package hotidle.answer.sweep;

import static hotidle.answer.ReadyCircuits.PSI;
import static hotidle.answer.ReadyCircuits.rpm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import hotidle.answer.ReadyCircuits;
import hotidle.answer.format.Json;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.circuits.DescribedCircuit;
import hotidle.study.FrictionBands;
import hotidle.study.SpeedSweep;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The ready five-speed unit over four engine speeds, and the training rig, on which nothing is commanded. */
class SweepAnswerTest {

    static final DescribedCircuit FIVE = ReadyCircuits.read("shuttle-five");
    static final DescribedCircuit RIG = ReadyCircuits.read("training-rig");
    static final SpeedSweep WORN = sweep(FIVE.unit("worn"), 600, 1200, 1800, 2400);
    static final SpeedSweep BENCH = sweep(RIG.unit("worn"), 400, 500);

    static SpeedSweep sweep(Transmission unit, double... speeds) {
        return SpeedSweep.run(unit, unit.duties().get(0), rpm(speeds));
    }

    static SweepAnswer answer(DescribedCircuit circuit, UnitSystem units, SpeedSweep... sweeps) {
        List<SpeedSweep> all = List.of(sweeps);
        return new SweepAnswer(circuit, all, FrictionBands.of(all), false, units, List.of());
    }

    static final SweepAnswer SHOP = answer(FIVE, UnitSystem.SHOP, WORN);

    static double line(SpeedSweep sweep, int speed) {
        return sweep.shown().get(speed).state().orElseThrow().pressure("line");
    }

    @Test
    void speedsAtWhichTheLineStandsAlikeAreOneLineOfAFirstScreen() {
        DescribedCircuit six = ReadyCircuits.read("vane-six");
        SpeedSweep fresh = sweep(six.unit("fresh"), 600, 700, 1200, 1700, 2200, 2700, 3200);
        List<String> rows = answer(six, UnitSystem.SHOP, fresh)
                .screen()
                .lines()
                .filter(line -> line.matches("\\d+ .*"))
                .toList();
        assertEquals(3, rows.size(), rows.toString());
        assertTrue(rows.get(1).startsWith("650 "), "the driving condition's own speed stands alone");
        assertTrue(rows.get(2).matches("700 to 3200 +79 +86 to 87  regulating .*"), rows.get(2));
        assertEquals(
                7,
                answer(six, UnitSystem.SHOP, fresh)
                        .full()
                        .lines()
                        .filter(line -> line.matches("\\d+ .*"))
                        .count(),
                "the whole text has each");
    }

    @Test
    void speedsAtWhichItFailsOtherwiseStandApart() {
        List<String> rows =
                SHOP.screen().lines().filter(line -> line.matches("\\d+ .*")).toList();
        assertTrue(rows.size() >= 4, rows.toString());
        assertTrue(rows.stream().noneMatch(row -> row.contains(" to ")), rows.toString());
    }

    @Test
    void everySpeedHasARowWithTheLinePressureOfItsState() {
        List<String> rows =
                SHOP.full().lines().filter(line -> line.matches("\\d+ .*")).toList();
        assertEquals(4, rows.size());
        for (int i = 0; i < 4; i++) {
            assertTrue(
                    rows.get(i)
                            .matches(
                                    String.format(Locale.ROOT, "%d +150 +%.0f .*", 600 * (i + 1), line(WORN, i) / PSI)),
                    rows.get(i));
        }
    }

    @Test
    void theHeadSaysFromWhereTheRegulatorWorks() {
        List<String> lines = SHOP.full().lines().toList();
        assertEquals("shuttle-five, worn, hot-idle (650 rpm) in first, sump 230 degF", lines.get(0));
        assertEquals(
                String.format(
                        Locale.ROOT,
                        "line holds from: %.0f rpm",
                        60 * WORN.onset().orElseThrow()),
                lines.get(1).split(";", -1)[0]);
        assertTrue(lines.get(1).contains("; secondary unloads from: "), lines.get(1));
    }

    /** 650 rpm and the speed from which it holds lie between speeds of the series; all else is as the series has it. */
    @Test
    void theScreenHasTheIdleAndTheSpeedFromWhichItHoldsBetweenTheSpeedsAsked() {
        long holds = Math.round(60 * WORN.onset().orElseThrow());
        assertEquals(
                List.of("600", "650", String.valueOf(holds), "1200", "1800", "2400"),
                SHOP.screen()
                        .lines()
                        .filter(line -> line.matches("\\d+ +\\d+ .*"))
                        .map(line -> line.split(" ", 2)[0])
                        .toList());
        assertTrue(SHOP.screen().lines().anyMatch(line -> line.matches(holds + " +150 +150 .*")), SHOP.screen());
        assertFalse(SHOP.full().contains("\n650 "), "the series is what was asked for");
    }

    @Test
    void aSeriesThatStopsBelowIdleIsShownAsItIs() {
        SpeedSweep slow = sweep(FIVE.unit("worn"), 500, 600);
        assertEquals(List.of(), slow.lookedFor());
    }

    @Test
    void aLowIdleForbidsTheStallTestHereToo() {
        List<SpeedSweep> all = List.of(WORN);
        SweepAnswer low = new SweepAnswer(FIVE, all, FrictionBands.of(all), false, UnitSystem.SHOP, List.of("worn"));
        String loud = "IDLE PRESSURE IS LOW with worn: no stall test";
        assertTrue(low.screen().contains(loud) && low.full().contains(loud), low.screen());
        assertFalse(SHOP.screen().contains("IDLE PRESSURE"), SHOP.screen());
    }

    @Test
    void bothWaysThroughTheSpeedsAreComparedAndAgreeHere() {
        assertTrue(SHOP.full().contains("\nrising and falling sweeps agree\n"), SHOP.screen());
        assertTrue(Json.tree(SHOP.json())
                .at("/builds/0/rising_falling_differences")
                .isEmpty());
    }

    @Test
    void aBenchHasAColumnForEachGaugeAndNoOnset() {
        String screen = answer(RIG, UnitSystem.METRIC, BENCH).full();
        assertTrue(screen.contains("\nnot commanded: no set pressure, no speed from which it holds\n"), screen);
        assertTrue(
                screen.lines().anyMatch(line -> line.matches("rpm +line bar +middle bar +last bar +power kW")), screen);
        assertTrue(
                screen.lines()
                        .anyMatch(
                                line -> line.matches(String.format(Locale.ROOT, "400 +%.2f .*", line(BENCH, 0) / 1e5))),
                screen);
    }

    @Test
    void aSpreadsheetGetsBuildDutyAndSumpBesideEverySpeed() {
        List<String> rows = answer(FIVE, UnitSystem.METRIC, WORN).csv().lines().toList();
        assertEquals(5, rows.size());
        assertTrue(rows.get(0).startsWith("build,duty,sump degC,rpm,set bar,line bar,regulator,"), rows.get(0));
        assertTrue(
                rows.get(1)
                        .startsWith(String.format(
                                Locale.ROOT, "worn,hot-idle,110,600,10.34,%.2f,on its seat,", line(WORN, 0) / 1e5)),
                rows.get(1));
        assertTrue(SHOP.complete());
    }

    @Test
    void theRecordHasEveryStateAtItsOwnSpeed() {
        JsonNode build = Json.tree(SHOP.json()).at("/builds/0");
        assertEquals("worn", build.get("build").textValue());
        assertEquals(4, build.get("states").size());
        assertEquals(1800, build.at("/states/2/engine_speed_rpm").doubleValue(), 1e-9);
        assertEquals(line(WORN, 2), build.at("/states/2/pressures_pa/line").doubleValue());
        assertEquals(
                60 * WORN.onset().orElseThrow(), build.at("/onset_rpm/hot-idle").doubleValue(), 1e-9);
        assertTrue(Json.tree(answer(RIG, UnitSystem.SI, BENCH).json())
                .at("/builds/0/onset_rpm/slow")
                .isNull());
    }

    @Test
    void whereSeveralTemperaturesWereAskedForTheirSweepsAreToldApart() {
        SweepAnswer warm =
                new SweepAnswer(FIVE, List.of(WORN), FrictionBands.of(List.of(WORN)), true, UnitSystem.SHOP, List.of());
        assertTrue(Json.tree(warm.json()).at("/builds/0/onset_rpm").has("hot-idle at 110.0 degC"));
    }

    private static SpeedSweep bench(double celsius) {
        Transmission unit = RIG.unit("worn");
        DutyPoint slow = unit.duties().get(0);
        Map<String, Double> temperatures = new HashMap<>(slow.temperatures());
        temperatures.put("sump", celsius + 273.15);
        DutyPoint warm = new DutyPoint(
                slow.name(),
                slow.about(),
                slow.speed(),
                slow.range(),
                slow.lockup(),
                slow.engineTorque(),
                slow.torqueRatio(),
                slow.turbineSpeed(),
                slow.lubeNeed(),
                temperatures,
                slow.commands());
        return SpeedSweep.run(unit, warm, rpm(400, 500));
    }

    /** Two curves of one name were an error of ours, two keys of one name lost an onset. */
    @Test
    void temperaturesThatDifferByATenthAreToldApartInPictureAndRecord() {
        List<SpeedSweep> near = List.of(bench(110.12), bench(110.14), bench(30));
        assertEquals("worn at 110.12 degC", SweepPicture.name(near, near.get(0), UnitSystem.METRIC));
        assertEquals("worn at 110.14 degC", SweepPicture.name(near, near.get(1), UnitSystem.METRIC));
        SweepAnswer answer = new SweepAnswer(RIG, near, FrictionBands.of(near), true, UnitSystem.METRIC, List.of());
        JsonNode onsets = Json.tree(answer.json()).at("/builds/0/onset_rpm");
        assertEquals(3, onsets.size());
        assertTrue(onsets.has("slow at 110.12 degC"), onsets.toString());
        assertTrue(SweepPicture.subtitle(RIG, near, UnitSystem.METRIC).startsWith("training-rig, slow in bench; "));
        assertTrue(SweepPicture.subtitle(RIG, near.subList(0, 1), UnitSystem.METRIC)
                .startsWith("training-rig, slow in bench, sump 110 degC; "));
    }

    @Test
    void theSweepsOfOneBuildStandUnderOneNameInTheRecord() {
        JsonNode builds = Json.tree(answer(RIG, UnitSystem.SI, BENCH, sweep(RIG.unit("one-hole"), 400), BENCH)
                        .json())
                .get("builds");
        assertEquals(2, builds.size());
        assertEquals(4, builds.at("/0/states").size());
    }

    /** The rig's fastest duty point runs at 800 rpm. */
    @Test
    void whatWasAskedBeyondTheCircuitIsWarnedOfOnceForAllBuilds() {
        SweepAnswer fast = answer(
                RIG, UnitSystem.SHOP, sweep(RIG.unit("worn"), 400, 2500), sweep(RIG.unit("one-hole"), 400, 2500));
        assertEquals(
                1,
                fast.warnings().stream()
                        .filter(line -> line.equals(
                                "warning: 2500 rpm is far beyond the circuit's fastest driving condition, 800 rpm"))
                        .count());
        assertEquals(
                2,
                fast.warnings().stream()
                        .filter(line -> line.contains("relief valve opens"))
                        .count());
        assertEquals(List.of(), answer(RIG, UnitSystem.SHOP, BENCH).warnings());
    }
}
