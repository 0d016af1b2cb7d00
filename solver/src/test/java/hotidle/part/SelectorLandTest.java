package hotidle.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.law.Hole;
import hotidle.oil.Oil;
import hotidle.oil.OilAt;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A shut passage of a selector leaks past the land that shuts it, where the bore is given; an open one does not care. */
class SelectorLandTest {

    private static final OilAt OIL = Oil.fixed(850, 8e-3);
    private static final double LINE = 10e5;

    private static Selector selector(Optional<Selector.Land> land) {
        return new Selector(
                List.of("line", "clutch", "sump"),
                List.of(
                        new Selector.Connection("feed", 0, 1, 3e-3, Set.of("first")),
                        new Selector.Connection("vent", 1, 2, 2e-3, Set.of("park"))),
                land);
    }

    private static Map<String, Double> flows(Selector selector, String range) {
        Map<String, Double> flows = new HashMap<>();
        selector.law(new Setting(10, range, Setting.Lockup.OFF, OIL, 0))
                .streams(Reading.of(selector.form(), LINE, 0, 0))
                .forEach(stream -> flows.put(stream.name(), stream.volume()));
        return flows;
    }

    private static Selector.Land land(double clearance) {
        return new Selector.Land(Fit.same(0.014 + 2 * clearance, 0.014), 5e-3, 1);
    }

    /** π·d·c³·(1 + 1.5·ε²)·Δp/(12·μ·L), creeping. */
    @Test
    void aShutPassageLeaksAsAnAnnularGap() {
        double clearance = 10e-6;
        double expected = Math.PI * 0.014 * Math.pow(clearance, 3) * 2.5 * LINE / (12 * 8e-3 * 5e-3);
        Map<String, Double> park = flows(selector(Optional.of(land(clearance))), "park");
        assertEquals(expected, park.get("feed"), 1e-3 * expected);
        assertTrue(flows(selector(Optional.of(land(2 * clearance))), "park").get("feed") > 7 * expected);
    }

    @Test
    void anOpenPassageIsTheSameHoleWhateverTheBore() {
        double open = flows(selector(Optional.of(land(30e-6))), "first").get("feed");
        assertEquals(flows(selector(Optional.empty()), "first").get("feed"), open);
        assertEquals(Hole.loss(3e-3, 0, 0.7).flow(LINE, 850, 8e-3).q(), open, 1e-3 * open);
    }

    @Test
    void withoutABoreAShutPassageIsTight() {
        assertEquals(Set.of("vent"), flows(selector(Optional.empty()), "park").keySet());
        assertEquals(Map.of(), selector(Optional.empty()).fits());
        assertEquals(1, selector(Optional.of(land(1e-5))).fits().size());
    }
}
