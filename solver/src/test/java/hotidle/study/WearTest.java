package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class WearTest {

    private static final List<Double> SPEEDS =
            IntStream.rangeClosed(2, 12).mapToObj(i -> 250.0 * i / 60).toList();

    private static boolean fails(Transmission unit, Judgement.Key key) {
        return BoundarySearch.gone(Judgement.one(unit, unit.duties().get(0), SPEEDS, key));
    }

    /** One per cent of the wear more than the limit found, and the first margin named is gone; one per cent less, and it is not. */
    @Test
    void aWearLimitTurnsWithinOnePerCent() {
        Adjustable build = Fits.worn(1);
        Wear wear = Wear.study(build, Wear.fits(build), SPEEDS, () -> {});
        BoundarySearch limiting = new BoundarySearch(SPEEDS);
        Set<Judgement.Key> holding = new HashSet<>(limiting.all(build.unit()).keySet());
        holding.removeAll(wear.already());
        int turned = 0;
        for (Wear.WornFit fit : wear.fits()) {
            if (fit.size().isPresent()) {
                turned++;
                double size = fit.size().get();
                double worn = size - fit.dimension().fresh();
                Judgement.Key first = fit.gone().get(0);
                assertTrue(fails(build.with(fit.dimension(), size + 0.01 * worn).orElseThrow(), first));
                Transmission within =
                        build.with(fit.dimension(), size - 0.01 * worn).orElseThrow();
                assertEquals(
                        Set.of(),
                        limiting.goneOfAll(within, holding),
                        fit.dimension().name());
            } else {
                assertTrue(fit.searched() > fit.dimension().value());
            }
        }
        assertTrue(turned >= 3, turned + " limits");
        double share = wear.together().orElseThrow().share().orElseThrow();
        double least = wear.fits().stream()
                .filter(fit -> fit.size().isPresent() && fit.dimension().limit().isPresent())
                .mapToDouble(fit -> (fit.size().get() - fit.dimension().fresh())
                        / (fit.dimension().limit().getAsDouble()
                                - fit.dimension().fresh()))
                .min()
                .orElseThrow();
        assertTrue(share > 0 && share < least, "together " + share + ", the first alone " + least);
    }

    @Test
    void marginsThatFailAlreadyAreNamedAndNotCounted() {
        Adjustable build = Fits.worn(4);
        Wear wear = Wear.study(build, Wear.fits(build), SPEEDS, () -> {});
        assertFalse(wear.already().isEmpty());
        for (Wear.WornFit fit : wear.fits()) {
            assertTrue(fit.gone().stream().noneMatch(wear.already()::contains));
        }
    }

    /** An endless speed stands for one at which no state is found. */
    @Test
    void aDutyAtWhichSomethingWasNotFoundIsNamed() {
        Adjustable build = Fits.worn(1);
        List<WearSize> one = Wear.fits(build).subList(0, 1);
        List<Double> speeds = List.of(SPEEDS.get(0), SPEEDS.get(4));
        assertEquals(List.of(), Wear.study(build, one, speeds, () -> {}).unsolved());
        List<Double> open = List.of(SPEEDS.get(0), SPEEDS.get(4), Double.POSITIVE_INFINITY);
        assertEquals(List.of("hot-idle"), Wear.study(build, one, open, () -> {}).unsolved());
    }

    @Test
    void aDimensionWearsTowardsItsLimitOrWhatWasMeasured() {
        WearSize bore = new WearSize(
                "b", "bore", WearSize.SizeKind.LENGTH, 1.02, 1, OptionalDouble.of(1.05), OptionalDouble.of(1.03));
        assertEquals(0.05, bore.allowance(), 1e-12);
        WearSize hub = new WearSize(
                "b", "hub", WearSize.SizeKind.LENGTH, 1, 1, OptionalDouble.empty(), OptionalDouble.of(0.98));
        assertEquals(-0.02, hub.allowance(), 1e-12);
        WearSize mended = new WearSize(
                "p", "mesh", WearSize.SizeKind.AREA, 0.4, 0.5, OptionalDouble.empty(), OptionalDouble.empty());
        assertEquals(0.1, mended.allowance(), 1e-12);
        assertTrue(mended.wears());
    }
}
