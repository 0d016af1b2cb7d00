package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** What repairs come to, of lines in kPa (set at 1000) and flows in cm³/s. */
class RepairFindingsTest {

    private static Repairs.Effect effect(double line, boolean regulated, double lube, double lost, String... starved) {
        return served(line, regulated, lube, lost, starved.length == 0 ? 1 : 0.5, starved);
    }

    private static Repairs.Effect served(
            double line, boolean regulated, double lube, double lost, double served, String... starved) {
        return new Repairs.Effect(
                line * 1e3,
                OptionalDouble.of(1e6),
                regulated,
                lube * 1e-6,
                lost * 1e-6,
                List.of(starved),
                served,
                OptionalDouble.empty());
    }

    private static final Repairs.Effect LOW = effect(600, false, 20, 400, "converter");
    private static final Repairs.Effect HELD = effect(1000, true, 40, 200);

    private static Repairs.Step step(String name, Repairs.Effect after) {
        return new Repairs.Step(new Repairs.Repair(name, List.of()), after);
    }

    private static Repairs alone(Repairs.Effect before, Repairs.Step... alone) {
        return new Repairs(before, Arrays.asList(alone), List.of(), Optional.empty());
    }

    private static Repairs order(Repairs.Effect before, Repairs.Step... order) {
        return new Repairs(before, List.of(), Arrays.asList(order), Optional.empty());
    }

    private static RepairFindings of(Repairs repairs) {
        return RepairFindings.of(repairs, true, 15);
    }

    @Test
    void whileTheLineIsLowTheBestRepairIsTheOneThatRaisesIt() {
        RepairFindings.Best best = of(alone(
                        LOW,
                        step("pump face", effect(700, false, 21, 380)),
                        step("regulator bore", effect(681, false, 30, 300)),
                        step("cover", effect(670, false, 30, 300))))
                .best()
                .orElseThrow();
        assertEquals(RepairFindings.Gain.LINE, best.gain());
        assertEquals("pump face", best.step().repair().name());
        assertEquals(
                List.of("regulator bore"),
                best.near().stream().map(step -> step.repair().name()).toList());
    }

    /** What stands above the set pressure is no gain. */
    @Test
    void aLineRaisedBeyondItsSetPressureWinsNoMoreThanOneThatJustHoldsIt() {
        RepairFindings.Best best = of(alone(
                        LOW,
                        step("relief valve", effect(1300, true, 20, 400)),
                        step("pump face", effect(1000, true, 20, 400))))
                .best()
                .orElseThrow();
        assertEquals(1, best.near().size());
    }

    /** What has enough wins nothing by more; then the oil saved is what a repair wins. */
    @Test
    void withTheLineHeldWhatIsShortOfOilCountsAndWithAllServedOilDoes() {
        Repairs.Effect shortOfOil = served(1000, true, 40, 200, 0.8, "cooler");
        assertEquals(
                RepairFindings.Gain.SERVED,
                of(alone(shortOfOil, step("converter limit", served(1000, true, 40, 200, 0.9, "cooler"))))
                        .best()
                        .orElseThrow()
                        .gain());
        assertEquals(
                RepairFindings.Gain.OIL,
                of(alone(shortOfOil, step("bore", served(1000, true, 40, 190, 0.801, "cooler"))))
                        .best()
                        .orElseThrow()
                        .gain());
        assertEquals(
                RepairFindings.Gain.OIL,
                of(alone(HELD, step("bore", effect(1000, true, 44, 190))))
                        .best()
                        .orElseThrow()
                        .gain());
    }

    /** The line is held and all is served: what saves most oil is first, whatever it does to pressure above the set one. */
    @Test
    void withTheLineHeldTheRepairThatSavesMostOilIsTheBetterOne() {
        Repairs.Effect pressure = effect(1040, true, 41, 195);
        Repairs.Effect oil = effect(1010, true, 40, 150);
        assertTrue(Repairs.BETTER.compare(oil, pressure) > 0);
        Repairs.Effect serves = served(1000, true, 39, 199, 1);
        Repairs.Effect starves = served(1000, true, 42, 100, 0.9, "cooler");
        assertTrue(Repairs.BETTER.compare(serves, starves) > 0, "a consumer that is short comes before oil");
        assertTrue(Repairs.BETTER.compare(effect(990, false, 40, 100), serves) < 0, "a line that is low before both");
    }

    @Test
    void aRepairThatWinsNothingHasNoneThatWinNearlyAsMuch() {
        assertEquals(
                List.of(),
                of(alone(LOW, step("one", LOW), step("other", LOW)))
                        .best()
                        .orElseThrow()
                        .near());
        assertTrue(of(alone(LOW)).best().isEmpty());
    }

    @Test
    void aTightValveStarvesTheLubricationOnlyWhileTheLineIsNotHeld() {
        Repairs.Step tight = step("regulator bore", effect(650, false, 12, 350));
        assertEquals(List.of(tight.repair()), of(alone(LOW, tight)).starving());
        assertEquals(List.of(), RepairFindings.of(alone(LOW, tight), false, 15).starving());
        assertEquals(List.of(), RepairFindings.of(alone(LOW, tight), true, 0).starving());
        assertEquals(
                List.of(),
                of(alone(HELD, step("bore", effect(1000, true, 12, 150)))).starving());
        assertEquals(
                List.of(),
                of(alone(LOW, step("cover", effect(650, false, 19.7, 350)))).starving());
    }

    @Test
    void theLineIsHeldAfterTheRepairThatFirstHoldsIt() {
        RepairFindings.Reach reach = of(order(
                        LOW,
                        step("a", effect(800, false, 20, 300, "converter")),
                        step("b", effect(1000, true, 30, 250, "converter", "cooler")),
                        step("c", effect(1000, true, 35, 220, "cooler")),
                        step("d", effect(1000, true, 40, 200))))
                .reach()
                .orElseThrow();
        assertEquals(OptionalInt.of(2), reach.held());
        assertEquals(List.of("converter", "cooler"), reach.starved());
        assertEquals(OptionalInt.of(4), reach.served());
    }

    @Test
    void aLineThatNoRepairHoldsIsToldByWhereItStandsAfterAllOfThem() {
        Repairs.Effect last = effect(900, false, 20, 300);
        RepairFindings.Reach reach = of(order(LOW, step("a", last))).reach().orElseThrow();
        assertEquals(OptionalInt.empty(), reach.held());
        assertEquals(OptionalInt.empty(), reach.served());
        assertEquals(last, reach.last());
    }

    @Test
    void aLineThatIsHeldAlreadyNeedsNoRepairToHoldIt() {
        assertTrue(of(order(HELD, step("a", HELD))).reach().isEmpty());
        assertTrue(of(order(LOW)).reach().isEmpty());
    }

    @Test
    void aGaugeShowsOnePoundPerSquareInchAndNotLess() {
        assertEquals(
                List.of(
                        RepairFindings.Mark.NONE,
                        RepairFindings.Mark.UNSEEN,
                        RepairFindings.Mark.HOLDS,
                        RepairFindings.Mark.NONE),
                of(order(
                                LOW,
                                step("a", effect(607, false, 20, 300)),
                                step("b", effect(613, false, 20, 300)),
                                step("c", effect(996, true, 20, 300)),
                                step("d", effect(997, true, 20, 300))))
                        .marks());
    }
}
