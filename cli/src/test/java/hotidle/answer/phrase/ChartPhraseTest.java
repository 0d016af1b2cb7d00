package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.answer.format.Quantity.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A chart's title says what it shows. */
class ChartPhraseTest {

    private static final double PSI = 6894.757293168;
    private static final ChartPhrase SHOP = new ChartPhrase(UnitSystem.SHOP);

    @Test
    void aWornUnitHoldsNothingUnderASpeed() {
        assertEquals("worn: nothing under 952 rpm holds 150 psi", SHOP.holdsFrom("worn", 150 * PSI, 952 / 60.0, false));
        assertEquals(
                "worn: 150 psi held at every speed only from 952 rpm",
                SHOP.holdsFrom("worn", 150 * PSI, 952 / 60.0, true));
    }

    @Test
    void aLineThatIsNeverHeldSaysUpToWhichSpeed() {
        assertEquals(
                "torn: no speed up to 4000 rpm holds 240 psi", SHOP.notHeld("torn", 240 * PSI, 4000 / 60.0, false));
        assertEquals(
                "torn: not every speed up to 4000 rpm holds 240 psi",
                SHOP.notHeld("torn", 240 * PSI, 4000 / 60.0, true));
    }

    @Test
    void whatHoldsIsNamedLastAndMuchIsCounted() {
        assertEquals("fresh: line held at 400 rpm and every speed above", SHOP.hold(List.of("fresh"), 400 / 60.0));
        assertEquals(
                "a; b; c; 2 more do not hold everywhere; fresh, new: line held at 400 rpm and every speed above",
                ChartPhrase.title(
                        List.of("a", "b", "c", "d", "e"), List.of(SHOP.hold(List.of("fresh", "new"), 400 / 60.0))));
        assertEquals("gone: not known", ChartPhrase.notKnown("gone"));
    }

    /** Nought as far as it is shown is no difference. */
    @Test
    void gaugesThatReadAlikeSaySo() {
        assertEquals(
                "lube: worn reads up to 27 psi less than restored, at 500 rpm",
                SHOP.tapsApart("lube", "worn", "restored", 27.4, 500));
        assertEquals(
                "throttle: all read alike at every speed", SHOP.tapsApart("throttle", "worn", "restored", 0.3, 400));
        assertEquals(
                "throttle: worn reads up to 1 psi less than restored, at 400 rpm",
                SHOP.tapsApart("throttle", "worn", "restored", 0.6, 400));
    }

    @Test
    void aFilmThatIsNotKnownToHoldIsNoFailure() {
        assertEquals(
                "Hub film: too thin in torn; not known whether it holds in worn, fresh",
                ChartPhrase.film(List.of("torn"), List.of("worn", "fresh"), List.of()));
        assertEquals("Hub film: holds in fresh", ChartPhrase.film(List.of(), List.of(), List.of("fresh")));
    }

    @Test
    void oilLostAndLoadAreToldWithTheirSpeeds() {
        assertEquals(
                "worn: slip and leaks give back 91 % of its oil at 650 rpm, 22 % at 4000 rpm",
                SHOP.oilLost("worn", 650 / 60.0, 0.914, 4000 / 60.0, 0.22));
        assertEquals("Hub load is greatest in worn: 100 lbf at 2000 rpm", SHOP.load("worn", 444.8221615, 2000 / 60.0));
    }
}
