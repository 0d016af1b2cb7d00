package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.transmission.SpringChange.Lever;
import hotidle.transmission.SpringChange.SpringObstacle;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What is said of the regulator's spring. */
class SpringPhraseTest {

    @Test
    void theFirstLineSaysWhatIsSetAndWhatIsWanted() {
        assertEquals(
                "worn: set to 10.00 bar now; for 16.50 bar change one of these, and nothing else:",
                new SpringPhrase(UnitSystem.METRIC).asked("worn", 10e5, 16.5e5));
    }

    @Test
    void coilsThatTouchBeforeTheStopAreLoud() {
        SpringPhrase metric = new SpringPhrase(UnitSystem.METRIC);
        assertEquals("SOLID 1.20 mm before the stop", metric.room(OptionalDouble.of(-1.2e-3)));
        assertEquals("free, 0.80 mm left at the stop", metric.room(OptionalDouble.of(0.8e-3)));
        assertEquals("not known", metric.room(OptionalDouble.empty()));
    }

    @Test
    void everyObstacleHasItsOwnReason() {
        Set<String> said = new HashSet<>();
        for (SpringObstacle obstacle : SpringObstacle.values()) {
            assertTrue(SpringPhrase.obstacle(obstacle).startsWith("no: "));
            said.add(SpringPhrase.obstacle(obstacle));
        }
        assertEquals(SpringObstacle.values().length, said.size());
    }

    @Test
    void aBoostIsNamedByItsSignalAndALowIdleByWhatLeavesItLow() {
        assertEquals("boost diameter, throttle", SpringPhrase.name(Lever.BOOST, "throttle"));
        assertEquals("boost on throttle", SpringPhrase.column(Lever.BOOST, "throttle"));
        assertEquals("shim", SpringPhrase.column(Lever.SHIM, ""));
        assertEquals(
                "At hot-idle the pump cannot hold what is asked of it with preload, shim: LOW.",
                SpringPhrase.low("hot-idle", List.of("preload", "shim")));
        assertEquals("shim at stall, climb", SpringPhrase.at("shim", List.of("stall", "climb")));
    }
}
