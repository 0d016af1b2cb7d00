package hotidle.geartrain;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.geartrain.ToothFit.ToothMisfit;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class ToothFitTest {

    private static List<ToothMisfit> single(int sun, int ring, int planet, int count) {
        return new ToothFit(sun, ring, false, OptionalInt.of(planet), OptionalInt.of(count)).misfits();
    }

    @Test
    void sunPlusTwicePlanetIsTheRing() {
        assertEquals(List.of(), single(28, 80, 26, 4));
        assertEquals(List.of(), single(38, 85, 23, 3));
        assertEquals(List.of(ToothMisfit.PLANET_SIZE), single(28, 80, 28, 4));
    }

    @Test
    void planetsAtEqualAnglesNeedAWholeShareOfTheTeeth() {
        assertEquals(List.of(ToothMisfit.UNEQUAL_ANGLES), single(28, 80, 26, 5));
        assertEquals(List.of(), new ToothFit(30, 84, true, OptionalInt.empty(), OptionalInt.of(3)).misfits());
        assertEquals(
                List.of(ToothMisfit.UNEQUAL_ANGLES),
                new ToothFit(31, 84, true, OptionalInt.empty(), OptionalInt.of(3)).misfits());
    }

    @Test
    void largePlanetsTouch() {
        assertEquals(List.of(ToothMisfit.PLANETS_TOUCH), single(20, 100, 40, 5));
        assertEquals(List.of(), single(20, 100, 40, 4)); // tips of 42 modules at centres 42.4 modules apart
    }

    @Test
    void aSunThatFillsItsRingLeavesNoRoom() {
        assertEquals(List.of(ToothMisfit.NO_ROOM), single(70, 80, 5, 3));
    }
}
