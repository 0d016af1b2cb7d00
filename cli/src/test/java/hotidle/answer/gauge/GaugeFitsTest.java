package hotidle.answer.gauge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Json;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.study.gauge.FitsTogether;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The most likely sizes of all fits together, as {@code gauge --full} and its JSON tell them. */
class GaugeFitsTest {

    private static FitsTogether.FittedSize fit(
            String part, WearSize.SizeKind kind, OptionalDouble measured, double moved, double known) {
        WearSize size = new WearSize(part, "bore", kind, 0.0141, 0.0140, OptionalDouble.of(0.0142), measured);
        return new FitsTogether.FittedSize(size, 0.01412, 0.01410, 0.01414, moved, known);
    }

    private static GaugeAnswer answer() {
        return MadeReadings.answer(
                UnitSystem.METRIC,
                MadeReadings.findings(true, List.of(), 0, List.of()),
                List.of(),
                true,
                OptionalDouble.of(383.15),
                List.of());
    }

    private static final GaugeAnswer FOUND = answer().with(new FitsTogether(
            List.of(
                    fit("front", WearSize.SizeKind.LENGTH, OptionalDouble.of(0.0141), 1.2, 0.95),
                    fit("rear", WearSize.SizeKind.LENGTH, OptionalDouble.empty(), 0.1, 0.8),
                    fit("third", WearSize.SizeKind.LENGTH, OptionalDouble.empty(), 0.1, 0.95)),
            2.5,
            true));

    private static final GaugeAnswer NOT_FOUND = answer().with(new FitsTogether(List.of(), Double.NaN, false));

    private static String words(String text) {
        return text.replaceAll("\\s+", " ");
    }

    @Test
    void aFitThatMovedOrIsBetterKnownIsShownWithItsIntervalAndWhatHoldsIt() {
        String full = FOUND.full();
        assertTrue(words(full).contains("the most likely sizes leave a misfit of 2.5 of 1."), full);
        String rows = "front.bore 14.1000 mm 14.1200 mm 14.1000 14.1400 its measurement"
                + " rear.bore 14.1000 mm 14.1200 mm 14.1000 14.1400 new and limit";
        assertTrue(words(full).contains(rows), full);
        assertFalse(full.contains("third.bore"), full);
        assertTrue(words(full).contains("These readings tell nothing of the other 1 size."), full);
    }

    @Test
    void fitsThatNobodyAskedForOrThatWereNotFoundAreNone() {
        assertFalse(answer().full().contains("All fits together"));
        assertTrue(NOT_FOUND.full().contains("All fits together: no most likely sizes were found."));
        assertFalse(FOUND.screen().contains("All fits together"));
    }

    @Test
    void jsonHoldsEverySizeInItsUnit() {
        String json = Json.text(FOUND.json());
        assertTrue(words(json).contains("\"held_by\" : \"measurement\""), json);
        assertTrue(words(json).contains("\"unit\" : \"m\", \"as_is\" : 0.0141, \"most_likely\" : 0.01412"), json);
        assertEquals(3, json.split("\"most_likely\"", -1).length - 1, json);
        assertTrue(Json.text(NOT_FOUND.json()).contains("\"found\" : false"), json);
    }
}
