package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.HubReading;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ThinnestFilmTest {

    private static final List<Double> SPEEDS =
            IntStream.rangeClosed(2, 12).mapToObj(i -> 250.0 * i / 60).toList();

    private static boolean unbalanced(double rpm, double unloading, double bypassing) {
        return ThinnestFilm.unbalanced(rpm / 60, OptionalDouble.of(unloading / 60), OptionalDouble.of(bypassing / 60));
    }

    @Test
    void aFilmBelowTheLeastAllowedIsTooThinAndOneAtItIsNot() {
        assertTrue(new ThinnestFilm(10, 2.9e-6, 3e-6, false).tooThin());
        assertFalse(new ThinnestFilm(10, 3e-6, 3e-6, false).tooThin());
    }

    /** From where the secondary unloads until shortly after the primary begins to bypass. */
    @Test
    void theSideLoadIsUnbalancedFromUnloadingUntilSoonAfterTheBypassOpens() {
        assertFalse(unbalanced(990, 1000, 1200));
        assertTrue(unbalanced(1000, 1000, 1200));
        assertTrue(unbalanced(1310, 1000, 1200));
        assertFalse(unbalanced(1330, 1000, 1200));
    }

    @Test
    void withoutUnloadingOrBypassNothingIsSaidOfTheBalance() {
        assertFalse(ThinnestFilm.unbalanced(20, OptionalDouble.empty(), OptionalDouble.of(20)));
        assertFalse(ThinnestFilm.unbalanced(20, OptionalDouble.of(20), OptionalDouble.empty()));
    }

    @Test
    void noSpeedOfTheSweepHasAThinnerFilm() {
        Transmission unit = TenNodes.worn(1);
        SpeedSweep sweep = SpeedSweep.run(unit, unit.duties().get(0), SPEEDS);
        ThinnestFilm thinnest = ThinnestFilm.of(sweep).orElseThrow();
        assertEquals(SPEEDS.size(), sweep.states().size());
        double least = sweep.states().stream()
                .flatMapToDouble(state -> HubReading.of(sweep.roles(), state).least().stream())
                .min()
                .orElseThrow();
        assertEquals(least, thinnest.film());
        assertTrue(SPEEDS.contains(thinnest.speed()), thinnest.speed() + " rev/s");
        assertTrue(thinnest.allowed() > 0);
    }
}
