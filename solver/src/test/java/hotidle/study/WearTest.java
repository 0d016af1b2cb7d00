package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Margin;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
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
                        BoundarySearch.gone(limiting.all(within), holding),
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

    /** What leaks past the gear's face feeds the hub: one per cent tighter than the least size, and a full film wants more. */
    @Test
    void theFaceThatFeedsTheHubHasALeastClearance() {
        Adjustable build = Fits.worn(1);
        FilmFeed feed = Wear.study(build, List.of(), SPEEDS, () -> {}).feeds().stream()
                .filter(one -> one.dimension().part().equals("hub-face"))
                .findFirst()
                .orElseThrow();
        double least = feed.least().orElseThrow();
        assertTrue(least < feed.dimension().value(), least + " m");
        assertTrue(oil(build.with(feed.dimension(), least).orElseThrow()).headroom() >= 0);
        Margin tighter =
                oil(build.with(feed.dimension(), least - 2e-3 * feed.dimension().allowance())
                        .orElseThrow());
        assertTrue(tighter.headroom() < 0);
        assertEquals(Margin.Verdict.NOT_KNOWN, tighter.verdict());
        assertEquals("hot-idle", feed.by().orElseThrow().duty());
    }

    private static Margin oil(Transmission unit) {
        return Judgement.of(unit, unit.duties().get(0), SPEEDS).margins().stream()
                .filter(margin -> margin.kind() == Margin.Kind.FILM_OIL)
                .findFirst()
                .orElseThrow();
    }

    /** The film would let the bore wear by a multiple of what service manuals do. */
    @Test
    void aBushingsWearStandsBesideWhatServiceManualsAllow() {
        Adjustable build = Fits.withHub();
        List<WearSize> bore = build.dimensions().stream()
                .filter(size -> size.part().equals("hub"))
                .toList();
        Wear.WornFit fit = Wear.study(build, bore, SPEEDS, () -> {}).fits().get(0);
        assertEquals(fit.dimension().fresh() + 0.05e-3, fit.published().orElseThrow(), 1e-9);
        assertEquals(fit.size().orElse(fit.searched()) > fit.published().orElseThrow(), fit.moreGenerous());
        Wear.WornFit further = new Wear.WornFit(
                fit.dimension(), Optional.of(fit.dimension().fresh() + 0.08e-3), List.of(), 1, fit.published());
        assertTrue(further.moreGenerous());
        Wear.WornFit tighter = new Wear.WornFit(
                fit.dimension(), Optional.of(fit.dimension().fresh() + 0.04e-3), List.of(), 1, fit.published());
        assertFalse(tighter.moreGenerous());
    }
}
