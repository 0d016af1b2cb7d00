package hotidle.answer.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import hotidle.answer.ReadyCircuits;
import hotidle.answer.format.Json;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.answer.format.Wrap;
import hotidle.heat.HeatFlows;
import hotidle.heat.HeatItem;
import hotidle.heat.Temperatures;
import hotidle.heat.WarmState;
import hotidle.heat.Warmed;
import hotidle.heat.Warmed.WarmingEnd;
import hotidle.newton.SteadySolver;
import hotidle.result.Solution;
import hotidle.study.HeatStudy;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import hotidle.transmission.Warming;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What is said of heat, by balances made by hand on a ready circuit. */
class HeatAnswerTest {

    private static final Transmission UNIT = ReadyCircuits.read("crescent-four").unit();
    private static final List<DutyPoint> WARMING = HeatStudy.warming(UNIT);
    private static final DutyPoint LASTS = WARMING.stream()
            .filter(duty -> duty.warming().orElseThrow() instanceof Warming.ToBalance)
            .findFirst()
            .orElseThrow();
    private static final Solution STATE = new SteadySolver(UNIT.network())
            .solve(UNIT.conditions(UNIT.duties().get(0)))
            .state()
            .orElseThrow();

    private static HeatItem item(HeatItem.Kind kind, double watts) {
        return HeatItem.of(kind, "", watts);
    }

    private static WarmState state(double sump, double converter, HeatItem... items) {
        return new WarmState(
                new Temperatures(sump + 273.15, converter + 273.15),
                LASTS,
                STATE,
                new HeatFlows(
                        List.of(items), 0, 0, Map.of("line", 370.0), OptionalDouble.empty(), OptionalDouble.empty()));
    }

    private static final WarmState WARM = state(
            90,
            120,
            item(HeatItem.Kind.PUMP, 800),
            item(HeatItem.Kind.CONVERTER, 3000),
            item(HeatItem.Kind.COOLER, -3500),
            item(HeatItem.Kind.HOUSING, -300));

    private static HeatStudy.DutyHeat ends(WarmingEnd end, Optional<WarmState> state, Optional<Double> seconds) {
        return new HeatStudy.DutyHeat(
                new Warmed(LASTS, state, List.of(), end, seconds, Optional.empty()),
                Optional.empty(),
                Optional.empty());
    }

    private static HeatStudy.DutyHeat settled(WarmState state, Optional<HeatStudy.Cost> cost) {
        return new HeatStudy.DutyHeat(
                new Warmed(
                        LASTS, Optional.of(state), List.of(), WarmingEnd.SETTLED, Optional.empty(), Optional.empty()),
                Optional.empty(),
                cost);
    }

    private static HeatAnswer answer(UnitSystem units, HeatStudy.DutyHeat... builds) {
        return new HeatAnswer(
                "rig",
                "",
                new HeatStudy(IntStream.range(0, builds.length)
                        .mapToObj(i -> new HeatStudy.BuildHeat(UNIT.named("build-" + i), List.of(builds[i])))
                        .toList()),
                units);
    }

    private static String words(String text) {
        return text.replaceAll("\\s+", " ");
    }

    @Test
    void whereADrivingConditionEndsIsToldOfSumpAndConverter() {
        String screen =
                answer(UnitSystem.METRIC, settled(WARM, Optional.empty())).screen();
        assertTrue(screen.contains("90 / 120 degC"), screen);
        String shop = answer(UnitSystem.SHOP, settled(WARM, Optional.empty())).screen();
        assertTrue(shop.contains("194 / 248 degF"), shop);
    }

    @Test
    void aUnitWithoutAConverterHousingHasOneTemperature() {
        WarmState alone = state(90, 90, item(HeatItem.Kind.PUMP, 800), item(HeatItem.Kind.CASE, -800));
        String screen =
                answer(UnitSystem.METRIC, settled(alone, Optional.empty())).screen();
        assertTrue(screen.contains("90 degC"), screen);
        assertFalse(screen.contains("/ 90"), screen);
    }

    @Test
    void sourcesOfOneSortAreAddedUpOnTheFirstScreenAndApartInFull() {
        HeatAnswer answer = answer(UnitSystem.METRIC, settled(WARM, Optional.empty()));
        assertTrue(answer.screen().lines().anyMatch(line -> line.matches("to the cooler +-3\\.50")), answer.screen());
        assertTrue(answer.screen().lines().anyMatch(line -> line.matches("pump, oil on its way, film +0\\.80")));
        assertTrue(answer.full().lines().anyMatch(line -> line.matches("pump drag and slip +0\\.80")), answer.full());
    }

    @Test
    void whatMakesNoHeatInAnyBuildHasNoRow() {
        String full = answer(UnitSystem.METRIC, settled(WARM, Optional.empty())).full();
        assertFalse(full.contains("churning"), full);
        WarmState churns = state(95, 120, item(HeatItem.Kind.CHURNING, 100), item(HeatItem.Kind.CASE, -100));
        String two = answer(UnitSystem.METRIC, settled(WARM, Optional.empty()), settled(churns, Optional.empty()))
                .full();
        assertTrue(two.lines().anyMatch(line -> line.matches("churning +0\\.00 +0\\.10")), two);
    }

    @Test
    void aBuildThatRunsAwayIsToldByItsTimeAndItsHeatIsADash() {
        HeatAnswer answer = answer(
                UnitSystem.METRIC,
                settled(WARM, Optional.empty()),
                ends(WarmingEnd.SUMP_RUNS_AWAY, Optional.empty(), Optional.of(725.0)));
        assertTrue(answer.screen().contains("oil limit in 12 min"), answer.screen());
        assertTrue(words(answer.screen()).contains("Where a limit is named no steady temperature lies below it."));
        assertTrue(
                answer.full().lines().anyMatch(line -> line.matches("pump drag and slip +0\\.80 +-")), answer.full());
        assertTrue(answer.complete(), "that it runs away is known");
    }

    @Test
    void aStateThatWasNotFoundLeavesTheAnswerIncomplete() {
        assertFalse(answer(UnitSystem.METRIC, ends(WarmingEnd.NOT_SOLVED, Optional.empty(), Optional.empty()))
                .complete());
        assertFalse(answer(UnitSystem.METRIC, ends(WarmingEnd.START_NOT_KNOWN, Optional.empty(), Optional.empty()))
                .complete());
        assertTrue(answer(UnitSystem.METRIC, settled(WARM, Optional.empty())).complete());
    }

    @Test
    void whereEveryDutyRunsAwayNoHeatIsShown() {
        HeatAnswer answer =
                answer(UnitSystem.METRIC, ends(WarmingEnd.CONVERTER_RUNS_AWAY, Optional.empty(), Optional.of(22.0)));
        assertFalse(answer.screen().contains("makes most heat"), answer.screen());
        assertTrue(answer.screen().contains("converter limit in 22 s"), answer.screen());
    }

    @Test
    void severalTemperaturesAreSaidFromColdToHot() {
        Warmed several = new Warmed(
                LASTS,
                Optional.of(WARM),
                List.of(state(130, 150)),
                WarmingEnd.SEVERAL,
                Optional.empty(),
                Optional.empty());
        HeatAnswer answer =
                answer(UnitSystem.METRIC, new HeatStudy.DutyHeat(several, Optional.empty(), Optional.empty()));
        assertTrue(
                words(answer.screen())
                        .contains("settles at 90 degC from cold; come hotter, it would stay at 130 degC."),
                answer.screen());
        assertEquals(
                130,
                Json.tree(answer.json()).at("/builds/0/duties/0/others_c/0").doubleValue(),
                1e-9);
    }

    @Test
    void whatABuildsHeatCostsIsToldAgainstTheFirst() {
        HeatStudy.Cost cost = new HeatStudy.Cost(12, 8, -2e5, -1e-6, OptionalDouble.of(-2e-6));
        HeatAnswer answer = answer(
                UnitSystem.METRIC,
                settled(WARM, Optional.empty()),
                settled(state(102, 128, item(HeatItem.Kind.HOUSING, -1)), Optional.of(cost)));
        String said = words(answer.full());
        assertTrue(
                said.contains("build-1 differs from build-0 by +12 K in the sump and +8 K from the converter."), said);
        assertTrue(said.contains("line pressure by -2.00 bar"), said);
        assertTrue(said.contains("hub film by -2.0 um"), said);
    }

    @Test
    void aSpreadsheetHasARowABuildAndEmptyCellsWhereNothingIsKnown() {
        List<String> rows = answer(
                        UnitSystem.SHOP,
                        settled(WARM, Optional.empty()),
                        ends(WarmingEnd.SUMP_RUNS_AWAY, Optional.empty(), Optional.of(725.0)))
                .csv()
                .lines()
                .toList();
        assertEquals(3, rows.size());
        assertTrue(rows.get(1).startsWith("build-0," + LASTS.name() + ",settled,,90.0,120.0,800.0,"), rows.get(1));
        assertTrue(rows.get(2).startsWith("build-1," + LASTS.name() + ",sump runs away,725.0,,,"), rows.get(2));
    }

    @Test
    void jsonTellsHeatInWattsAndWhatClosesIt() {
        JsonNode duty = Json.tree(
                        answer(UnitSystem.SHOP, settled(WARM, Optional.empty())).json())
                .at("/builds/0/duties/0");
        assertEquals(-3500, duty.at("/heat_w/cooler").doubleValue(), 1e-9);
        assertEquals(0, duty.get("imbalance").doubleValue(), 1e-12, "3800 W in, 3800 W out");
        assertEquals(370 - 273.15, duty.at("/nodes_c/line").doubleValue(), 1e-9);
        assertTrue(duty.get("seconds").isNull());
        JsonNode away = Json.tree(
                        answer(UnitSystem.SHOP, ends(WarmingEnd.NOT_SOLVED, Optional.empty(), Optional.empty()))
                                .json())
                .at("/builds/0/duties/0");
        assertTrue(away.get("heat_w").isNull());
        assertTrue(away.get("state").isNull());
    }

    @Test
    void theFirstScreenFitsWithFiveBuildsThatEachCostSomething() {
        HeatStudy.Cost cost = new HeatStudy.Cost(12, 8, -2e5, -1e-6, OptionalDouble.of(-2e-6));
        HeatStudy.DutyHeat more = settled(WARM, Optional.of(cost));
        List<String> lines = answer(UnitSystem.SHOP, settled(WARM, Optional.empty()), more, more, more, more)
                .screen()
                .lines()
                .toList();
        assertTrue(lines.size() <= Wrap.LINES, String.join("\n", lines));
        lines.forEach(line -> assertTrue(line.length() <= Wrap.WIDTH, line));
        assertTrue(lines.get(lines.size() - 1).contains("unit maker's procedure"), "the caution stays");
    }
}
