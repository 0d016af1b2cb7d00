package hotidle.study.spread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.transmission.WearSize;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** How sizes may lie that no gauge has read. */
class SizePriorTest {

    private static final WearSize BORE = size("bore", 0.020026, 0.020026, 0.020060);

    /** A shaft wears towards smaller sizes. */
    private static final WearSize SHAFT = size("valve", 0.020000, 0.020000, 0.019980);

    private static final WearSize SCORES = new WearSize(
            "primary",
            "orifice-slip-area",
            WearSize.SizeKind.AREA,
            1.2e-6,
            0.6e-6,
            OptionalDouble.empty(),
            OptionalDouble.empty());

    static WearSize size(String key, double value, double fresh, double limit) {
        return new WearSize(
                "regulator",
                key,
                WearSize.SizeKind.LENGTH,
                value,
                fresh,
                OptionalDouble.of(limit),
                OptionalDouble.empty());
    }

    private static final List<SizePrior> ALL = List.of(
            SizePrior.sound(BORE),
            SizePrior.worn(BORE),
            SizePrior.worn(SHAFT),
            SizePrior.measured(BORE),
            SizePrior.assumed(SCORES));

    @Test
    void aSoundBoreLiesWithinAFifthOfItsWayToTheLimit() {
        SizePrior sound = SizePrior.sound(BORE);
        assertEquals(0.020026, sound.quantile(0.5), 1e-12);
        assertEquals(0.020026 - 6.8e-6, sound.quantile(0), 1e-12);
        assertEquals(0.020026 + 6.8e-6, sound.quantile(1), 1e-12);
        assertEquals(0.020026, sound.mean(), 1e-12);
    }

    @Test
    void halfOfAllServedFitsAreTwoThirdsWornAndAQuarterPastTheLimit() {
        SizePrior worn = SizePrior.worn(BORE);
        // the cut at three times the way takes 0.6 % of all away
        assertEquals(0.020026 + 34e-6 * 2 / 3, worn.quantile(0.5), 0.3e-6);
        assertEquals(0.020060, worn.quantile(0.75), 0.5e-6);
        assertEquals(0.020026 + 3 * 34e-6, worn.quantile(1), 1e-12);
        assertTrue(worn.quantile(1e-9) > 0.020026);
    }

    @Test
    void aShaftWearsThinner() {
        SizePrior worn = SizePrior.worn(SHAFT);
        assertTrue(worn.quantile(0.9) < worn.quantile(0.1));
        assertTrue(worn.quantile(0.1) < SHAFT.fresh());
        assertTrue(worn.mean() < SHAFT.fresh());
    }

    @Test
    void scoresLieAboutTheAreaThatIsAssumed() {
        SizePrior scores = SizePrior.assumed(SCORES);
        assertEquals(1.2e-6, scores.quantile(0.5), 1e-15);
        assertEquals(1.2e-6 * Math.exp(0.25 * 2.5), scores.quantile(1), 1e-15);
    }

    @Test
    void aGaugeIsNotGoodForMoreThanATenthOfANarrowFit() {
        WearSize seal = size("seal-gap", 4e-6, 1.5e-6, 8e-6);
        assertEquals(4e-6 + 0.65e-6, SizePrior.measured(seal).quantile(1), 1e-12);
        WearSize wide = size("bore", 0.050135, 0.050070, 0.050170);
        assertEquals(0.050135 + 5e-6, SizePrior.measured(wide).quantile(1), 1e-12);
    }

    /** Midpoints of a million equal shares are all sizes as often as they occur. */
    @Test
    void meanAndStandardDeviationAreThoseOfTheSizesDrawn() {
        for (SizePrior prior : ALL) {
            double mean = average(prior::quantile);
            double square = average(share -> Math.pow(prior.quantile(share) - mean, 2));
            assertEquals(mean, prior.mean(), 1e-4 * prior.standardDeviation(), prior.toString());
            assertEquals(Math.sqrt(square), prior.standardDeviation(), 2e-4 * prior.standardDeviation());
        }
    }

    private static double average(DoubleUnaryOperator of) {
        int count = 100_000;
        double sum = 0;
        for (int i = 0; i < count; i++) {
            sum += of.applyAsDouble((i + 0.5) / count);
        }
        return sum / count;
    }

    @Test
    void aSizeAndItsNormalAreTheSameThing() {
        for (SizePrior prior : ALL) {
            for (double z = -1.5; z <= 1.5; z += 0.25) {
                assertEquals(z, prior.z(prior.at(z)), 1e-7, prior.toString());
            }
        }
    }

    @Test
    void noGaugeReadsWornLessThanNothing() {
        assertEquals(Double.NEGATIVE_INFINITY, SizePrior.worn(BORE).z(0.020025));
    }
}
