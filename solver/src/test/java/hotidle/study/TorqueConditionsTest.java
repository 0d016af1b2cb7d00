package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.part.Setting;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Range;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Under what the torque of ten nodes is asked for. */
class TorqueConditionsTest {

    private static final double SPEED = TenNodesWithTrain.SPEED;
    private static final Transmission UNIT =
            TenNodesWithTrain.unit(1, 8, TenNodesWithTrain.STRONG, TenNodesWithTrain.LEVEL);

    private static Map<String, Double> sump(double celsius) {
        return Map.of("sump", celsius + TenNodes.CELSIUS, "film", 130 + TenNodes.CELSIUS);
    }

    private static Transmission at(DutyPoint... duties) {
        return UNIT.at(List.of(duties));
    }

    private static TorqueConditions of(Transmission unit, String range) {
        return TorqueConditions.of(unit, unit.range(range).orElseThrow(), SPEED);
    }

    @Test
    void temperaturesAreThoseOfTheHottestDutyPointUnderLoad() {
        DutyPoint hotIdle = TenNodesWithTrain.pull("hot-idle", "first", 40, sump(140));
        DutyPoint half = TenNodesWithTrain.pull("half", "first", 160, sump(120));
        DutyPoint full = TenNodesWithTrain.pull("full", "second", 320, sump(100));
        Transmission unit = at(hotIdle, half, full);
        assertEquals(
                Optional.of(half), TorqueConditions.hottest(unit), "hotter than full load; idle is not under load");
        DutyPoint asked = of(unit, "second").duty(123, 20);
        assertEquals(sump(120), asked.temperatures());
        assertEquals(123, asked.engineTorque());
        assertEquals(20, asked.speed());
        assertEquals("second", asked.range());
        assertEquals(Setting.Lockup.OFF, asked.lockup());
    }

    @Test
    void aDutyPointThatLeavesARegionOutIsNotTaken() {
        DutyPoint partial = TenNodesWithTrain.pull("hot", "first", 320, Map.of("sump", 420.0));
        DutyPoint whole = TenNodesWithTrain.pull("whole", "first", 300, sump(100));
        assertEquals(Optional.of(whole), TorqueConditions.hottest(at(partial, whole)));
        DutyPoint light = TenNodesWithTrain.pull("light", "first", 100, sump(100));
        Transmission none = at(partial, light);
        assertFalse(TorqueConditions.given(none));
        assertTrue(TorqueConditions.given(UNIT));
        assertThrows(IllegalArgumentException.class, () -> of(none, "first"));
    }

    @Test
    void aUnitThatAppliesNothingCannotBeAsked() {
        assertFalse(TorqueConditions.given(TenNodes.worn(1)));
    }

    /** Solenoids stand as the range itself has them under most torque; a range without a duty point takes the hottest's. */
    @Test
    void solenoidsAreCommandedAsTheRangeHasThem() {
        DutyPoint first =
                TenNodesWithTrain.pull("first", "first", 320, sump(110)).with(Setting.Lockup.OFF, Map.of("shift", 1e5));
        DutyPoint light =
                TenNodesWithTrain.pull("light", "second", 100, sump(80)).with(Setting.Lockup.OFF, Map.of("shift", 2e5));
        DutyPoint heavy =
                TenNodesWithTrain.pull("heavy", "second", 140, sump(80)).with(Setting.Lockup.OFF, Map.of("shift", 3e5));
        assertEquals(
                Map.of("shift", 3e5),
                of(at(first, light, heavy), "second").duty(1, SPEED).commands());
        assertEquals(
                Map.of("shift", 1e5), of(at(first), "second").duty(1, SPEED).commands());
    }

    @Test
    void theConverterCountsInTheRangeOfTheGreatestRatioWhereverItStandsInTheFile() {
        assertEquals(TenNodesWithTrain.CONVERTER, of(UNIT, "first").torqueRatio());
        assertEquals(1, of(UNIT, "second").torqueRatio());
        List<Range> turned = List.of(UNIT.ranges().get(1), UNIT.ranges().get(0));
        Transmission other = TenNodesWithTrain.withRanges(UNIT, turned);
        assertEquals(TenNodesWithTrain.CONVERTER, of(other, "first").torqueRatio());
        assertEquals(1, of(other, "second").torqueRatio());
    }

    @Test
    void withoutATrainItCountsInTheFirstRangeThatAppliesSomethingAndInReverse() {
        Map<String, Range.Applied> applied = Map.of("brake", new Range.Applied(0.5, 0));
        Transmission plain = TenNodesWithTrain.withRanges(
                UNIT,
                List.of(
                        new Range("reverse", false, applied),
                        new Range("neutral", true, Map.of()),
                        new Range("low", true, applied),
                        new Range("high", true, applied)));
        assertEquals(TenNodesWithTrain.CONVERTER, of(plain, "reverse").torqueRatio());
        assertEquals(TenNodesWithTrain.CONVERTER, of(plain, "low").torqueRatio());
        assertEquals(1, of(plain, "high").torqueRatio());
    }

    /** Where the converter multiplies, the turbine's speed is not known. */
    @Test
    void theTurbineTurnsWithTheEngineOnlyWhereTheConverterDoesNotMultiply() {
        assertEquals(OptionalDouble.empty(), of(UNIT, "first").duty(100, SPEED).speedRatio());
        assertEquals(180, of(UNIT, "first").duty(100, SPEED).turbineTorque(), 1e-9);
        assertEquals(OptionalDouble.of(1), of(UNIT, "second").duty(100, SPEED).speedRatio());
        assertEquals(100, of(UNIT, "second").duty(100, SPEED).turbineTorque(), 1e-9);
    }
}
