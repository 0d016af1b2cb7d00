package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.heat.HeatItem;
import hotidle.heat.Warmed;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class HeatPhraseTest {

    @Test
    void aDutyEndsAtTheTemperaturesOfPanAndConverter() {
        assertEquals("230 / 293 degF", HeatPhrase.ends(UnitSystem.SHOP, 110 + 273.15, OptionalDouble.of(145 + 273.15)));
        assertEquals("110 degC", HeatPhrase.ends(UnitSystem.METRIC, 110 + 273.15, OptionalDouble.empty()));
    }

    @Test
    void howHotABuildGetsComesFirst() {
        assertEquals(
                "worn: hottest sump 103 degC (climb), converter out 150 degC (hot-idle).",
                HeatPhrase.hottest(
                        UnitSystem.METRIC,
                        "worn",
                        103 + 273.15,
                        "climb",
                        OptionalDouble.of(150 + 273.15),
                        "hot-idle",
                        List.of()));
        assertEquals(
                "worn: hottest sump 103 degC (climb); BUT NO TEMPERATURE at stall, idle.",
                HeatPhrase.hottest(
                        UnitSystem.METRIC,
                        "worn",
                        103 + 273.15,
                        "climb",
                        OptionalDouble.empty(),
                        "",
                        List.of("stall", "idle")));
        assertEquals("worn: NO TEMPERATURE at any driving condition.", HeatPhrase.nowhere("worn"));
    }

    @Test
    void whatRunsAwayIsToldByTheTimeToItsLimit() {
        assertEquals("oil limit in 12 min", HeatPhrase.endsAt(Warmed.WarmingEnd.SUMP_RUNS_AWAY, Optional.of(725.0)));
        assertEquals(
                "converter limit in 22 s", HeatPhrase.endsAt(Warmed.WarmingEnd.CONVERTER_RUNS_AWAY, Optional.of(22.2)));
        assertEquals("start not known", HeatPhrase.endsAt(Warmed.WarmingEnd.START_NOT_KNOWN, Optional.empty()));
        assertEquals("not solved", HeatPhrase.endsAt(Warmed.WarmingEnd.NOT_SOLVED, Optional.empty()));
        assertThrows(
                IllegalArgumentException.class, () -> HeatPhrase.endsAt(Warmed.WarmingEnd.SETTLED, Optional.empty()));
    }

    @Test
    void aStallIsCoolOnlyBecauseItIsSoonOver() {
        assertEquals("5 s after hot-idle", HeatPhrase.heldFor(5, "hot-idle"));
        assertEquals(
                "stall makes 150.00 kW in worn, 20 times what climb makes, but only for 5 s: so it ends cooler.",
                HeatPhrase.soonOver(UnitSystem.METRIC, "worn", "stall", 150e3, 5, "climb", 7.5e3));
    }

    @Test
    void theTemperatureThatOtherScreensTakeIsNamed() {
        assertEquals(
                "Other screens take hot-idle at 110 degC as the file has it; --temperature balance takes these.",
                HeatPhrase.elsewhere(UnitSystem.METRIC, "hot-idle", 110 + 273.15));
    }

    @Test
    void timesAreToldAsAWorkshopTellsThem() {
        assertEquals("5 s", HeatPhrase.time(5));
        assertEquals("89 s", HeatPhrase.time(89.4));
        assertEquals("1.5 min", HeatPhrase.time(90));
        assertEquals("15 min", HeatPhrase.time(900));
    }

    @Test
    void theDrivingConditionWhoseHeatIsShownIsTheOneThatMakesMost() {
        assertEquals(
                "Of the driving conditions that last, climb makes most heat in worn; it comes from (and goes):",
                HeatPhrase.most("climb", "worn"));
        assertEquals("climb, kW", HeatPhrase.at(UnitSystem.METRIC, "climb"));
    }

    @Test
    void hotterSteadyTemperaturesAreNamed() {
        assertEquals(
                "worn at climb settles at 100 degC from cold; come hotter, it would stay at 120 degC or 130 degC.",
                HeatPhrase.several(UnitSystem.METRIC, "worn", "climb", 373.15, List.of(393.15, 403.15)));
    }

    @Test
    void whatHotterOilTakesIsToldWithItsSign() {
        assertEquals(
                "hot-idle: raised differs from worn by +5 K in the sump and +8 K from the converter. Against raised at the temperatures of worn that alone changes line"
                        + " pressure by -1.00 bar, lubrication by -0.60 L/min, hub film by -1.0 um.",
                HeatPhrase.cost(
                        UnitSystem.METRIC,
                        "raised",
                        "worn",
                        "hot-idle",
                        "+5 K",
                        Optional.of("+8 K"),
                        -1e5,
                        -1e-5,
                        OptionalDouble.of(-1e-6)));
        assertEquals(
                "hot-idle: cool differs from worn by -2 K in the sump. Against cool at the temperatures of worn that alone changes line pressure by +0.20 bar, lubrication"
                        + " by 0.00 L/min.",
                HeatPhrase.cost(
                        UnitSystem.METRIC,
                        "cool",
                        "worn",
                        "hot-idle",
                        "-2 K",
                        Optional.empty(),
                        2e4,
                        0,
                        OptionalDouble.empty()));
    }

    @Test
    void aDifferenceOfTemperaturesIsThatOfTheTwoThatAreShown() {
        // 100.4 and 109.6 degC: apart by 9.2 K, shown as 100 and 110
        assertEquals("+10 K", HeatPhrase.hotter(UnitSystem.METRIC, 382.75, 373.55));
        assertEquals("-10 K", HeatPhrase.hotter(UnitSystem.METRIC, 373.55, 382.75));
        assertEquals("0 degF", HeatPhrase.hotter(UnitSystem.SHOP, 373.55, 373.56));
    }

    @Test
    void everySourceAndSinkHasANameOfItsOwnAndASumOfItsSide() {
        HeatItem.Kind[] kinds = HeatItem.Kind.values();
        assertEquals(
                kinds.length,
                Arrays.stream(kinds).map(HeatPhrase::named).distinct().count());
        for (HeatItem.Kind kind : kinds) {
            HeatPhrase.Sum sum = HeatPhrase.Sum.of(kind);
            assertEquals(
                    HeatItem.of(kind, "", 1).sink(),
                    sum == HeatPhrase.Sum.COOLER || sum == HeatPhrase.Sum.AIR,
                    kind.name());
        }
    }
}
