package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.assess.MarginNote;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is said beside a margin. */
class MarginNotePhraseTest {

    @Test
    void aPumpThatItsInletStarvesIsToldWithTheShareThatItFills() {
        assertEquals(
                "that is all that comes through the pump's inlet with nothing sent back to it, enough to fill the pump to 87 %",
                MarginNotePhrase.of(List.of(MarginNote.of(MarginNote.Remark.INLET_LIMITS_SUPPLY, 0.8651))));
    }

    @Test
    void severalNotesMakeOneClauseAndNoneMakesNone() {
        assertEquals(
                "limit lifts below the set pressure and lets the rest go; metal contact: the film is not known",
                MarginNotePhrase.of(List.of(
                        MarginNote.of(MarginNote.Remark.RELIEF_LIFTS_BELOW_SET, "limit"),
                        MarginNote.of(MarginNote.Remark.METAL_CONTACT))));
        assertEquals("", MarginNotePhrase.of(List.of()));
    }

    @Test
    void aFilmWithoutOilIsSaidToBeSuch() {
        assertEquals(
                "the film is told as if it were full, and next to nothing of the oil that takes is fed to it: what it is then is not"
                        + " known",
                MarginNotePhrase.of(List.of(MarginNote.of(MarginNote.Remark.FILM_SHORT_OF_OIL, 0.003))));
        assertEquals(
                "the film is told as if it were full, and 40 % of the oil that takes is fed to it: what it is then is not known",
                MarginNotePhrase.of(List.of(MarginNote.of(MarginNote.Remark.FILM_SHORT_OF_OIL, 0.4))));
    }
}
