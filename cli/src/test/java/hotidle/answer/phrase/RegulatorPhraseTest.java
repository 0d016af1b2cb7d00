package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.assess.Figures;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** What a regulator does, and a second chamber, in words. */
class RegulatorPhraseTest {

    @Test
    void aRegulatorThatIsShutSitsOnItsSeat() {
        assertEquals("on its seat", RegulatorPhrase.of(Figures.Regulator.ON_ITS_SEAT, false));
        assertEquals("off its seat but low", RegulatorPhrase.of(Figures.Regulator.OFF_ITS_SEAT_BUT_LOW, false));
    }

    @Test
    void aStarvedInletIsSaidBesideIt() {
        assertEquals("relief open, inlet starved", RegulatorPhrase.of(Figures.Regulator.RELIEF_OPEN, true));
    }

    @Test
    void eachDoingHasWordsOfItsOwn() {
        Figures.Regulator[] all = Figures.Regulator.values();
        assertEquals(
                all.length,
                Arrays.stream(all)
                        .map(one -> RegulatorPhrase.of(one, false))
                        .distinct()
                        .count());
        Figures.Secondary[] chambers = Figures.Secondary.values();
        assertEquals(
                chambers.length,
                Arrays.stream(chambers).map(SecondaryPhrase::of).distinct().count());
    }
}
