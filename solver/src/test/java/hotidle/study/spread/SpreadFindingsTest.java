package hotidle.study.spread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Margin;
import hotidle.study.Fits;
import hotidle.study.Judgement;
import hotidle.transmission.WearSize;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Findings of tallies made by hand: rows of the design in which it is known which size decides. */
class SpreadFindingsTest {

    private static final List<WearSize> SIZES = Fits.worn(1).dimensions();
    private static final SizePrior BORE = SizePrior.worn(SIZES.get(0));
    private static final SizePrior DEPTH = SizePrior.worn(SIZES.get(1));

    private static Judgement.Key key(String part) {
        return new Judgement.Key("hot-idle", Margin.Kind.LUBRICATION, part);
    }

    /**
     * Sums of an answer that is a sum of both sizes' levels (0 or 1) times their weights, over every pair of points, each many times.
     */
    private static SobolSums sums(double first, double second, int times) {
        SobolSums sums = SobolSums.none(2);
        for (int i = 0; i < 16 * times; i++) {
            double a = first * (i & 1) + second * (i >> 1 & 1);
            double b = first * (i >> 2 & 1) + second * (i >> 3 & 1);
            double one = first * (i >> 2 & 1) + second * (i >> 1 & 1);
            double two = first * (i & 1) + second * (i >> 3 & 1);
            sums = sums.plus(a, b, new double[] {one, two}, (first + second) / 2);
        }
        return sums;
    }

    private static MarginTally margin(String part, long holds, long fails, double headroom, SobolSums sums) {
        return new MarginTally(key(part), holds, fails, 100 - holds - fails, ExactSum.NONE.plus(headroom), sums, sums);
    }

    private static SpreadFindings findings(List<SizePrior> sizes, MarginTally... margins) {
        return SpreadFindings.of(sizes, new SpreadTally(100, 0, 0, 0, 0, 0, 0, List.of(margins)));
    }

    private static List<String> parts(List<MarginTally> margins) {
        return margins.stream().map(margin -> margin.key().part()).toList();
    }

    @Test
    void whatFailsMostComesFirstAndOfWhatAlwaysHoldsWhatHasLeastRoom() {
        SobolSums none = SobolSums.none(2);
        SpreadFindings found = findings(
                List.of(BORE, DEPTH),
                margin("roomy", 100, 0, 0.8, none),
                margin("rare", 98, 2, 0.3, none),
                margin("not-known", 97, 2, 0.3, none),
                margin("often", 40, 60, -0.1, none),
                margin("close", 100, 0, 0.1, none));
        assertEquals(List.of("often", "not-known", "rare"), parts(found.doubtful()));
        assertEquals(List.of("close", "roomy"), parts(found.sure()));
        assertTrue(
                found.worth().isEmpty()
                        && found.best().isEmpty()
                        && found.asGood().isEmpty(),
                "nothing was varied");
    }

    /** The variance of a share of one half is ¼, all of it the depth's. */
    @Test
    void theSizeThatAloneDecidesIsWorthMeasuringAndTheOtherIsNot() {
        SpreadFindings found = findings(List.of(BORE, DEPTH), margin("lube", 50, 50, 0, sums(0, 1, 50)));
        SpreadFindings.Worth best = found.best().orElseThrow();
        assertEquals(DEPTH, best.size());
        assertEquals(1, best.settles(), 1e-3);
        assertEquals(BORE, found.worth().get(1).size());
        assertEquals(0, found.worth().get(1).settles(), 1e-12);
        assertEquals(List.of(), found.asGood());
    }

    @Test
    void ofTwoSizesThatDecideAlikeEachSettlesHalfAndNeitherStandsOut() {
        SpreadFindings found = findings(List.of(BORE, DEPTH), margin("lube", 50, 50, 0, sums(1, 1, 50)));
        assertEquals(0.5, found.best().orElseThrow().settles(), 1e-3);
        assertEquals(
                List.of(DEPTH),
                found.asGood().stream().map(SpreadFindings.Worth::size).toList());
    }

    @Test
    void aWorthWithinItsSamplingErrorIsNotTold() {
        SobolSums few = SobolSums.none(2).plus(0, 1, new double[] {1, 0}, 0.5).plus(1, 1, new double[] {1, 1}, 0.5);
        SpreadFindings found = findings(List.of(BORE, DEPTH), margin("lube", 50, 50, 0, few));
        assertTrue(found.worth().get(0).settles() > 0);
        assertTrue(found.best().isEmpty());
        assertTrue(found.asGood().isEmpty());
    }

    @Test
    void scoresThatNoGaugeReadsAreLeftOutOfWhatIsWorthMeasuringButNotOfWhatDrives() {
        SizePrior nick = SizePrior.assumed(SIZES.get(4));
        MarginTally lube = margin("lube", 50, 50, 0, sums(2, 1, 20));
        SpreadFindings found = findings(List.of(nick, DEPTH), lube);
        assertEquals(
                List.of(DEPTH),
                found.worth().stream().map(SpreadFindings.Worth::size).toList());
        List<SpreadFindings.Driver> drivers = found.drivers(lube);
        assertEquals(
                List.of(nick, DEPTH),
                drivers.stream().map(SpreadFindings.Driver::size).toList());
        // variances of 4 and 1 quarters, without interaction
        assertEquals(0.8, drivers.get(0).total().value(), 1e-2);
        assertEquals(0.2, drivers.get(1).total().value(), 1e-2);
        assertEquals(drivers.get(1).first().value(), drivers.get(1).total().value(), 1e-9);
    }

    @Test
    void driversComeInTheOrderOfWhatIsLeftWhenAllOthersAreKnown() {
        MarginTally lube = margin("lube", 50, 50, 0, sums(1, 3, 5));
        assertEquals(
                List.of(DEPTH, BORE),
                findings(List.of(BORE, DEPTH), lube).drivers(lube).stream()
                        .map(SpreadFindings.Driver::size)
                        .toList());
        MarginTally still = margin("lube", 100, 0, 0.5, sums(0, 0, 5));
        assertEquals(List.of(), findings(List.of(BORE, DEPTH), still).drivers(still));
    }
}
