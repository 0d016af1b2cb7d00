package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class BandPhraseTest {

    @Test
    void theBandOfASheetHalfFilledIn() {
        assertEquals(
                "bus-12 with 24 sizes not measured, those of fits taken as worn: such units read 131 to 154 psi"
                        + " and hold from 880 to 1240 rpm (nine in ten to first order, rather too narrow: 'hotidle spread' draws them).",
                BandPhrase.said(
                        "bus-12", 24, BandPhrase.between("131", "154", "psi"), BandPhrase.holds("880 to 1240 rpm")));
        assertEquals(
                "bus-12 with 1 size not measured, those of fits taken as worn: such units read 131 to 154 psi"
                        + " (nine in ten to first order, rather too narrow: 'hotidle spread' draws them).",
                BandPhrase.said("bus-12", 1, "131 to 154 psi", BandPhrase.NO_SPEED));
        assertEquals("about 86 psi", BandPhrase.between("86", "86", "psi"));
    }
}
