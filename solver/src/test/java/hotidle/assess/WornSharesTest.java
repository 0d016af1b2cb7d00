package hotidle.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.transmission.WearSize;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Sizes in mm: how far a size is from new does not depend on its unit. */
class WornSharesTest {

    private static WearSize size(double fresh, double limit, double value) {
        return new WearSize(
                "valve",
                "bore",
                WearSize.SizeKind.LENGTH,
                value,
                fresh,
                Double.isNaN(limit) ? OptionalDouble.empty() : OptionalDouble.of(limit),
                OptionalDouble.empty());
    }

    private static WornShares of(WearSize... sizes) {
        return WornShares.of(List.of(sizes));
    }

    /** A valve wears thinner, a bore wider: both half way. */
    @Test
    void aBoreWearsWiderAndAValveThinner() {
        WornShares shares = of(size(14, 14.1, 14.05), size(14, 13.9, 13.95));
        assertEquals(2, shares.worn());
        shares.shares().forEach(share -> assertEquals(0.5, share, 1e-9));
        assertEquals(0, shares.past());
    }

    @Test
    void whatIsTighterThanNewOrAsNewIsNotWorn() {
        WornShares shares = of(size(14, 14.1, 13.99), size(14, 14.1, 14));
        assertEquals(0, shares.worn());
        assertEquals(List.of(), shares.shares());
    }

    @Test
    void aFitWithoutAWrittenLimitIsWornButNobodyKnowsHowFar() {
        WornShares shares = of(size(14, Double.NaN, 14.02));
        assertEquals(1, shares.worn());
        assertEquals(List.of(), shares.shares());
    }

    @Test
    void theLeastWornComesFirstAndThosePastTheirLimitAreCounted() {
        WornShares shares = of(size(14, 14.1, 14.12), size(14, 14.1, 14.01), size(14, 14.1, 14.099));
        assertEquals(3, shares.worn());
        assertEquals(0.1, shares.shares().get(0), 1e-9);
        assertEquals(1.2, shares.shares().get(2), 1e-9);
        assertEquals(1, shares.past());
    }
}
