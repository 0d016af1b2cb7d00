package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Margin;
import hotidle.transmission.Adjustable;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Fits worn within the limits written for them that bring a unit down all the same: those of ten nodes. */
class LooseWrittenTest {

    private static final List<Double> SPEEDS = List.of(10.0, 30.0, 50.0);

    private static Optional<LooseWritten> found(double wear, double beyond) {
        return found(wear, beyond, "");
    }

    /** As WearTest has them worn, with limits so far beyond the sizes; none known but those of some parts. */
    private static Optional<LooseWritten> found(double wear, double beyond, String parts) {
        Adjustable worn = Fits.worn(wear);
        List<WearSize> sizes = worn.dimensions().stream()
                .filter(size -> size.kind() == WearSize.SizeKind.LENGTH)
                .filter(size -> size.part().startsWith(parts))
                .map(size -> new WearSize(
                        size.part(),
                        size.key(),
                        size.kind(),
                        size.value(),
                        size.fresh(),
                        OptionalDouble.of(size.value() + beyond),
                        OptionalDouble.empty()))
                .toList();
        return LooseWritten.of(
                new Adjustable(worn.unit(), sizes, worn.remake()),
                JudgedBuild.study(List.of(worn.unit()), SPEEDS, () -> {}).get(0),
                SPEEDS);
    }

    @Test
    void fitsWithinTheirLimitsThatTakeTheOilOfTheLineAreFound() {
        LooseWritten loose = found(4, 10e-6).orElseThrow();
        assertEquals(Margin.Kind.REGULATION, loose.first().kind());
        assertEquals(
                List.of("bores.bore", "hub-face.depth", "primary.face", "primary.tip"),
                loose.sizes().stream().map(WearSize::name).toList());
    }

    @Test
    void fitsPastTheirLimitsAreToldByThose() {
        assertTrue(found(4, -1e-6).isEmpty());
    }

    /** With the hub's face alone as new the pump still has too little oil. */
    @Test
    void aFitThatIsNotWhyIsNotFound() {
        assertTrue(found(4, 10e-6, "hub-face").isEmpty());
    }

    @Test
    void aUnitThatHoldsHasNone() {
        assertTrue(found(1, 10e-6).isEmpty());
    }
}
