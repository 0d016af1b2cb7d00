package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.assess.Margin;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Limits of which it is not known whether they hold. */
class NotKnownPhraseTest {

    private static NotKnownPhrase.OpenLimit key(Margin.Kind kind, String duty) {
        return new NotKnownPhrase.OpenLimit(kind, "hub-bushing", duty);
    }

    @Test
    void eachLimitIsNamedOnceWithItsDutyPoints() {
        assertEquals("", NotKnownPhrase.of(List.of(), ""));
        assertEquals(
                "Not known, and left out: hub film (hub-bushing) at hot-idle, stall; hub film oil (hub-bushing) at cold-start. "
                        + NotKnownPhrase.WHY,
                NotKnownPhrase.of(
                        List.of(
                                key(Margin.Kind.FILM, "hot-idle"),
                                key(Margin.Kind.FILM_OIL, "cold-start"),
                                key(Margin.Kind.FILM, "stall")),
                        ""));
    }

    @Test
    void whatIsNotKnownAtSomePressureOfARangeIsNotSaidOfTheOneThatIsSet() {
        List<NotKnownPhrase.OpenLimit> open = List.of(key(Margin.Kind.FILM_OIL, "cold-start"));
        assertEquals(
                "NOT KNOWN somewhere in that range, and left out: hub film oil (hub-bushing) at cold-start.",
                NotKnownPhrase.brief(open, NotKnownPhrase.SOMEWHERE));
        assertEquals(
                "Not known somewhere in that range, and left out: hub film oil (hub-bushing) at cold-start. "
                        + NotKnownPhrase.WHY,
                NotKnownPhrase.of(open, NotKnownPhrase.SOMEWHERE));
        assertEquals("", NotKnownPhrase.brief(List.of(), NotKnownPhrase.SOMEWHERE));
    }

    @Test
    void besideATableOneLineCountsThemAndSaysWhyTheyAreNotKnown() {
        assertEquals("", NotKnownPhrase.beside(List.of(), true));
        assertEquals(
                "Not known, and no failure: hub film (hub-bushing) at 2 driving conditions; hub film oil (hub-bushing) at"
                        + " cold-start. " + NotKnownPhrase.WHY,
                NotKnownPhrase.beside(
                        List.of(
                                key(Margin.Kind.FILM, "hot-idle"),
                                key(Margin.Kind.FILM_OIL, "cold-start"),
                                key(Margin.Kind.FILM, "stall")),
                        true));
    }
}
