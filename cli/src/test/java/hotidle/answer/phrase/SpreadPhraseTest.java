package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class SpreadPhraseTest {

    @Test
    void aShareHasItsIntervalAndMoreDigitsNearNoneAndAll() {
        assertEquals("71 % (69 to 73)", SpreadPhrase.share(0.71, 0.69, 0.73));
        assertEquals("0 % (0 to 0.2)", SpreadPhrase.share(0, -1e-18, 0.0019));
        assertEquals("100 % (99.8 to 100)", SpreadPhrase.share(1, 0.9981, 1 + 1e-16));
        assertEquals("-", SpreadPhrase.share(Double.NaN, 0, 0));
    }

    @Test
    void headroomOfOneUnitHasNoDeviation() {
        assertEquals("+4 % ± 9", SpreadPhrase.headroom(0.04, 0.09));
        assertEquals("+4 %", SpreadPhrase.headroom(0.04, Double.NaN));
        assertEquals("-", SpreadPhrase.headroom(Double.NaN, Double.NaN));
    }

    @Test
    void anEstimateOfAShareBelowNothingIsNothing() {
        assertEquals("0 % ± 3", SpreadPhrase.variance(-0.02, 0.03));
        assertEquals("31 % ± 4", SpreadPhrase.variance(0.31, 0.04));
        assertEquals("-", SpreadPhrase.variance(Double.NaN, Double.NaN));
    }

    @Test
    void theBestFitIsNamedWithThoseThatMayBeAsGood() {
        assertEquals(
                "Most worth measuring before the build: regulator.bore, which settles 31 % ± 4 of the doubt whether limits hold.",
                SpreadPhrase.best("regulator.bore", "31 % ± 4", List.of()));
        String many = SpreadPhrase.best("a.bore", "31 % ± 4", List.of("b", "c", "d", "e", "f"));
        assertTrue(many.contains("b, c, d and 2 more cannot be told from it"), many);
    }

    @Test
    void whatIsDrawnIsCounted() {
        assertEquals(
                "sheet at hot-idle: 1 fit not measured, taken as worn, 2 areas of scores assumed; 500 units drawn, seed 7.",
                SpreadPhrase.asked(
                        "sheet",
                        List.of("hot-idle"),
                        List.of(SpreadPhrase.basis(1, "worn"), SpreadPhrase.basis(2, "assumed")),
                        500,
                        7,
                        ""));
        assertTrue(SpreadPhrase.asked("a", List.of("b"), List.of(), 1, 1, SpreadPhrase.part(2, 3))
                .endsWith("no fit drawn; 1 unit drawn, seed 1, part 2 of 3 alone."));
        assertEquals("3 fits taken as sound", SpreadPhrase.basis(3, "sound"));
    }

    @Test
    void limitsThatHoldInEveryUnitAreNotListed() {
        assertTrue(SpreadPhrase.sure(1, "cooler (cooler) at hot-idle", "+9 % ± 1")
                .startsWith("1 more limit holds in every"));
        assertTrue(
                SpreadPhrase.sure(4, "cooler (cooler) at hot-idle", "+9 % ± 1").startsWith("4 more limits hold in"));
    }

    @Test
    void solvesAUnitAreTold() {
        assertEquals(
                "83 states solved, 8.3 for each of 10 units (those of the pairs among them).",
                SpreadPhrase.cost(83, 10));
        assertTrue(SpreadPhrase.cost(0, 0).startsWith("0 states solved, 0 for"));
        assertEquals(
                "1763 of the 2000 drawn cannot be built, as with a valve wider than its bore: the shares are of the other 237.",
                SpreadPhrase.impossible(1763, 2000));
        assertTrue(SpreadPhrase.unsolved(2).contains("2 units"));
    }
}
