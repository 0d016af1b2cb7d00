package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class BandPhraseTest {

    @Test
    void theBandOfASheetHalfFilledIn() {
        String reads = BandPhrase.reads(BandPhrase.between("131", "154", "psi"));
        String holds = BandPhrase.holds(BandPhrase.between("880", "1240", "rpm"));
        assertEquals(
                "bus-12 with 24 sizes not measured, those of fits taken as worn: such units read 131 to 154 psi"
                        + " and hold from 880 to 1240 rpm (nine in ten to first order, rather too narrow: 'hotidle spread' draws them).",
                BandPhrase.said("bus-12", 24, List.of(reads, holds)));
        assertEquals(
                "bus-12 with 1 size not measured, those of fits taken as worn: such units hold from 880 to 1240 rpm"
                        + " (nine in ten to first order, rather too narrow: 'hotidle spread' draws them).",
                BandPhrase.said("bus-12", 1, List.of(holds)));
        assertEquals(
                "bus-12 with 2 sizes not measured, those of fits taken as worn: how far such units lie from it is not known"
                        + " to first order; 'hotidle spread' draws them.",
                BandPhrase.said("bus-12", 2, List.of()));
        assertEquals("about 86 psi", BandPhrase.between("86", "86", "psi"));
    }
}
