package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Margin;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class SensitivityTest {

    /** One speed, so that the hub's film and load are asked at the same speed whatever the size. */
    private static final List<Double> SPEED = List.of(650 / 60.0);

    private static final Adjustable BUILD = Fits.worn(2);
    private static Sensitivity found;

    @BeforeAll
    static void study() {
        found = Sensitivity.study(BUILD, SPEED, () -> {});
    }

    private static double headroom(WearSize dimension, double shift, Judgement.Key key) {
        Transmission unit = BUILD.with(dimension, dimension.value() + shift).orElseThrow();
        DutyPoint duty = unit.duties().get(0);
        return Judgement.one(unit, duty, SPEED, key).orElseThrow().headroom();
    }

    @Test
    void everySlopeIsWhatANewSolveOfTheChangedUnitGives() {
        assertEquals(
                BUILD.dimensions().size() * found.margins().size(),
                found.rates().size());
        for (Sensitivity.Rate rate : found.rates()) {
            double step = 1e-6 * rate.dimension().value();
            double difference =
                    (headroom(rate.dimension(), step, rate.key()) - headroom(rate.dimension(), -step, rate.key()))
                            / (2 * step);
            double headroom = Math.abs(found.margins().get(rate.key()).headroom());
            // differences of second order at one step: good to some 1e-5 here
            double allowed = 1e-4 * Math.max(Math.abs(difference), 1e-3 * headroom / 24e-6);
            assertEquals(
                    difference,
                    rate.slope(),
                    allowed,
                    rate.key() + " " + rate.dimension().name());
        }
    }

    @Test
    void regulationAndFilmAreAmongThem() {
        assertTrue(found.margins().keySet().stream().anyMatch(key -> key.kind() == Margin.Kind.REGULATION));
        assertTrue(found.margins().keySet().stream().anyMatch(key -> key.kind() == Margin.Kind.FILM));
        Judgement.Key regulation = found.margins().keySet().stream()
                .filter(key -> key.kind() == Margin.Kind.REGULATION)
                .findFirst()
                .orElseThrow();
        assertTrue(
                found.rates().stream()
                        .filter(rate -> rate.key().equals(regulation))
                        .allMatch(rate -> rate.slope() < 0),
                "every fit that opens takes from what the pump can hold");
    }

    @Test
    void theSteepestForItsStepComesFirst() {
        Judgement.Key least = found.least().orElseThrow();
        List<Sensitivity.Rate> ranked = found.of(least, dimension -> 1e-5);
        for (int i = 1; i < ranked.size(); i++) {
            assertTrue(Math.abs(ranked.get(i - 1).slope())
                    >= Math.abs(ranked.get(i).slope()));
        }
        assertEquals(
                found.margins().values().stream()
                        .mapToDouble(Margin::headroom)
                        .min()
                        .orElseThrow(),
                found.margins().get(least).headroom());
    }

    @Test
    void aSizeThatIsNilIsLeftOutWithItsReason() {
        WearSize nil = new WearSize(
                "bores", "taper", WearSize.SizeKind.LENGTH, 0, 0, OptionalDouble.empty(), OptionalDouble.empty());
        Sensitivity one =
                Sensitivity.study(new Adjustable(BUILD.unit(), List.of(nil), BUILD.remake()), SPEED, () -> {});
        assertEquals(List.of(), one.rates());
        assertEquals(
                Optional.of(LeftOut.size(LeftOut.LeftOutCause.SIZE_IS_NIL, "bores.taper")),
                one.leftOut().stream().reduce((first, last) -> last));
        assertFalse(one.margins().isEmpty());
    }
}
