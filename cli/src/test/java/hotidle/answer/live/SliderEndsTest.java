package hotidle.answer.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.ReadyCircuits;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class SliderEndsTest {

    private static WearSize size(String key, WearSize.SizeKind kind, double value, double fresh, OptionalDouble limit) {
        return new WearSize("regulator", key, kind, value, fresh, limit, OptionalDouble.empty());
    }

    private static final WearSize BORE =
            size("bore", WearSize.SizeKind.LENGTH, 0.0200, 0.0200, OptionalDouble.of(0.0201));
    private static final WearSize VALVE =
            size("valve", WearSize.SizeKind.LENGTH, 0.0199, 0.0199, OptionalDouble.empty());

    @Test
    void noSetPressureIsSlidToThatTheUnitCannotBeSetTo() {
        assertEquals(
                50 * ReadyCircuits.PSI,
                SliderEnds.setPressure(ReadyCircuits.read("shuttle-five").unit())
                        .low(),
                1);
        double least = SliderEnds.setPressure(
                        ReadyCircuits.read("crescent-four").unit())
                .low();
        assertEquals(83 * ReadyCircuits.PSI, least, ReadyCircuits.PSI, "throttle pressure alone holds that");
        assertEquals(
                50 * ReadyCircuits.PSI,
                SliderEnds.setPressure(ReadyCircuits.read("training-rig").unit())
                        .low(),
                1);
    }

    @Test
    void aBoreIsSlidToThreeTimesItsAllowance() {
        SliderEnds ends = SliderEnds.of(BORE, List.of(BORE, VALVE), false);
        assertEquals(0.0203, ends.high(), 1e-9);
        assertEquals(0.019975, ends.low(), 1e-9);
    }

    @Test
    void aValveWithoutALimitIsSlidSmallerAsFarAsItsBoreAndNeverIntoIt() {
        SliderEnds ends = SliderEnds.of(VALVE, List.of(BORE, VALVE), true);
        assertEquals(0.0196, ends.low(), 1e-9);
        assertTrue(ends.high() < BORE.fresh(), ends.toString());
    }

    @Test
    void aDiameterOnWhichNothingHasALimitIsSlidByASmallPartOfItself() {
        SliderEnds ends = SliderEnds.of(VALVE, List.of(VALVE), true);
        assertEquals(0.0199 * (1 - 0.006), ends.low(), 1e-9);
    }

    @Test
    void aClearanceOrScoresWithoutALimitAreSlidToFourTimesNewAndNotBelowNothing() {
        WearSize gap = size("gap", WearSize.SizeKind.LENGTH, 2e-6, 2e-6, OptionalDouble.empty());
        assertEquals(8e-6, SliderEnds.of(gap, List.of(gap), false).high(), 1e-12);
        WearSize scores = size("area", WearSize.SizeKind.AREA, 9e-6, 1e-6, OptionalDouble.empty());
        assertEquals(25e-6, SliderEnds.of(scores, List.of(scores), false).high(), 1e-12);
        assertEquals(0, SliderEnds.of(scores, List.of(scores), false).low());
    }
}
