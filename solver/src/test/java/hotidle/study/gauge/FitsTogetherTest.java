package hotidle.study.gauge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.transmission.Adjustable;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** All fits together are moved the way that the readings ask for, and no further than these know. */
class FitsTogetherTest {

    private static final Adjustable BUILD = Tapped.build();

    @Test
    void readingsOfASoundUnitMoveNoFit() {
        FitsTogether fits = FitsTogether.of(BUILD, Tapped.readings(BUILD.unit()));
        assertTrue(fits.settled());
        assertEquals(0, fits.chiSquare(), 1e-6);
        fits.sizes().forEach(size -> {
            assertEquals(0, size.moved(), 1e-3, size.size().name());
            assertTrue(size.known() <= 1 + 1e-9, size.size().name());
            assertTrue(size.low() < size.value() && size.value() < size.high());
        });
    }

    @Test
    void aWornBoreIsMovedTowardsItsTruth() {
        var bore = BUILD.dimension("bores.bore").orElseThrow();
        double worn = bore.value() + 2.5 * bore.allowance();
        FitsTogether fits =
                FitsTogether.of(BUILD, Tapped.readings(BUILD.remake().with(Map.of("bores.bore", worn))));
        assertTrue(fits.settled());
        FitsTogether.FittedSize moved = fits.sizes().stream()
                .filter(size -> size.size().name().equals("bores.bore"))
                .findFirst()
                .orElseThrow();
        assertTrue(moved.moved() > 0.5, "moved by " + moved.moved());
        assertTrue(moved.value() < moved.high());
        assertTrue(fits.chiSquare() < new Misfit(Tapped.readings(BUILD.unit())).degrees(), fits.chiSquare() + "");
    }
}
