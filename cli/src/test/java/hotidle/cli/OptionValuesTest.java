package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.ReadyCircuits;
import hotidle.circuits.text.Dimension;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How what stands behind an option is read. */
class OptionValuesTest {

    private static final Transmission UNIT = ReadyCircuits.read("crescent-four").unit();

    private static String refused(org.junit.jupiter.api.function.Executable read) {
        return assertThrows(WrongInputException.class, read).getMessage();
    }

    @Test
    void aQuantityIsReadInItsUnit() {
        assertEquals(240 * ReadyCircuits.PSI, OptionValues.quantity("--set", "240psi", Dimension.PRESSURE), 1);
        assertEquals(2.4e6, OptionValues.quantity("--set", "24 bar", Dimension.PRESSURE), 1e-6);
    }

    @Test
    void aQuantityWithoutItsUnitOrWithAnotherOneIsRefusedByItsOption() {
        String bare = refused(() -> OptionValues.quantity("--set", "240", Dimension.PRESSURE));
        assertTrue(bare.startsWith("hotidle: --set 240,"), bare);
        assertTrue(bare.contains("\nmend: "), bare);
        String length = refused(() -> OptionValues.quantity("--set", "24mm", Dimension.PRESSURE));
        assertTrue(length.startsWith("hotidle: --set 24mm,"), length);
    }

    @Test
    void aSeriesHasBothItsEnds() {
        List<Double> speeds = OptionValues.series("--speed", "600..3000/600rpm", Dimension.SPEED);
        assertEquals(5, speeds.size());
        assertEquals(10, speeds.get(0), 1e-12);
        assertEquals(50, speeds.get(4), 1e-9);
    }

    @Test
    void oneValueIsASeriesOfOne() {
        assertEquals(List.of(10.0), OptionValues.series("--speed", "600rpm", Dimension.SPEED));
    }

    @Test
    void aSeriesThatIsNoneIsRefusedWithAnExample() {
        for (String text : List.of("3000..600/50rpm", "600..3000/0rpm", "600..3000/50", "600..3000", "a..b/50rpm")) {
            String wrong = refused(() -> OptionValues.series("--speed", text, Dimension.SPEED));
            assertTrue(wrong.contains("--speed " + text) && wrong.contains("mend: write --speed"), wrong);
        }
    }

    @Test
    void anEngineTurnsOneWay() {
        String wrong = refused(() -> OptionValues.series("--speed", "-600..600/50rpm", Dimension.SPEED));
        assertTrue(wrong.contains("an engine turns one way"), wrong);
    }

    @Test
    void theHubIsSearchedFromTheSlowestDrivingConditionTo4000Rpm() {
        double slowest =
                UNIT.duties().stream().mapToDouble(DutyPoint::speed).min().orElseThrow();
        List<Double> speeds = OptionValues.searched(null, UNIT, 150 / 60.0);
        assertEquals(slowest, speeds.get(0), 1e-12);
        double last = speeds.get(speeds.size() - 1);
        assertTrue(last <= 4000 / 60.0 && last > 3850 / 60.0, last * 60 + " rpm");
    }

    @Test
    void speedsThatAreGivenAreSearchedInPlaceOfThese() {
        assertEquals(List.of(20.0), OptionValues.searched("1200rpm", UNIT, 150 / 60.0));
    }

    @Test
    void aValueBeyondItsLimitIsRefusedAndOneAtItIsNot() {
        assertEquals(5, OptionValues.within("--speed", "5", 5, 5, "0 to 5"));
        assertEquals(
                "hotidle: --speed 6: allowed is 0 to 5",
                refused(() -> OptionValues.within("--speed", "6", 6, 5, "0 to 5")));
    }

    @Test
    void aDrivingConditionIsFoundByNameAndOneThatIsNoneIsRefusedWithAllOfThem() {
        String first = UNIT.duties().get(0).name();
        assertEquals(first, OptionValues.duty(UNIT, first).name());
        String wrong = refused(() -> OptionValues.duty(UNIT, "nosuch"));
        UNIT.duties().forEach(duty -> assertTrue(wrong.contains(duty.name()), wrong));
    }

    @Test
    void theSlowestDrivingConditionIsTheOneWithTheSlowestEngine() {
        DutyPoint slowest = OptionValues.slowest(UNIT);
        assertTrue(UNIT.duties().stream().allMatch(duty -> duty.speed() >= slowest.speed()));
    }

    @Test
    void aRangeThatTheUnitDoesNotHaveIsRefusedWithThoseItHas() {
        DutyPoint duty = UNIT.duties().get(0);
        String other = UNIT.ranges().get(UNIT.ranges().size() - 1).name();
        assertEquals(other, OptionValues.inRange(UNIT, duty, other).range());
        String wrong = refused(() -> OptionValues.inRange(UNIT, duty, "seventh"));
        assertTrue(wrong.contains("no range seventh\nranges: "), wrong);
    }

    @Test
    void withAHotterSumpEveryRegionKeepsItsDistanceFromIt() {
        DutyPoint duty = UNIT.duties().get(0);
        DutyPoint hotter = duty.withSump(duty.temperatures().get("sump") + 7);
        assertEquals(duty.temperatures().keySet(), hotter.temperatures().keySet());
        duty.temperatures()
                .forEach((region, kelvin) ->
                        assertEquals(kelvin + 7, hotter.temperatures().get(region), 1e-9, region));
    }
}
