package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class BandPhraseTest {

    @Test
    void theBandOfASheetHalfFilledIn() {
        String reads = BandPhrase.reads(BandPhrase.between("131", "154", "psi"));
        String holds = BandPhrase.holds(BandPhrase.between("880", "1240", "rpm"));
        assertEquals(
                "bus-12: 36 sizes are not measured and count as new above. Were the 24 that wear as worn as in service, such units would"
                        + " read 131 to 154 psi and hold from 880 to 1240 rpm (nine in ten; an estimate, rather too narrow:"
                        + " 'hotidle spread' draws them).",
                BandPhrase.said("bus-12", 36, 24, List.of(reads, holds)));
        assertTrue(BandPhrase.said("bus-12", 1, 1, List.of(holds))
                .startsWith(
                        "bus-12: 1 size is not measured and counts as new above. Were the 1 that wears as worn as in"
                                + " service, such units would hold from 880 to 1240 rpm"));
        assertTrue(
                BandPhrase.said("bus-12", 2, 2, List.of())
                        .endsWith(
                                "what such units would do cannot be foretold from this one; 'hotidle spread' draws and solves them."));
        assertEquals("about 86 psi", BandPhrase.between("86", "86", "psi"));
    }
}
