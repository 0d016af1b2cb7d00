package hotidle.cli.live;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class NewestTest {

    private final Newest newest = new Newest();

    private Runnable begun(String page, String kind, long number) {
        return newest.begin(page, kind, number, LiveAnswers.outdoneBy(kind));
    }

    @Test
    void workAtAnOlderQuestionIsGivenUpOnceANewerOneOfItsKindHasCome() {
        Runnable older = begun("one", "state", 1);
        assertDoesNotThrow(older::run);
        Runnable newer = begun("one", "state", 2);
        assertThrows(Newest.GivenUpException.class, older::run);
        assertDoesNotThrow(newer::run);
        assertThrows(Newest.GivenUpException.class, () -> begun("one", "state", 1));
    }

    @Test
    void aVerdictOnAStateThatHasBeenLeftIsGivenUpAndTheStateIsNotForAVerdict() {
        Runnable state = begun("one", "state", 1);
        Runnable verdict = begun("one", "verdict", 2);
        assertDoesNotThrow(state::run);
        assertDoesNotThrow(verdict::run);
        begun("one", "state", 3);
        assertThrows(Newest.GivenUpException.class, verdict::run);
    }

    @Test
    void onePageDoesNotGiveUpForAnother() {
        Runnable one = begun("one", "state", 1);
        begun("other", "state", 2);
        assertDoesNotThrow(one::run);
    }

    @Test
    void whatTakesLongerThanAnybodyWaitsIsToldAndNotTakenForANewerQuestion() {
        AtomicLong now = new AtomicLong(Long.MAX_VALUE - 1);
        Runnable step = new Newest(now::get).begin("one", "causes", 1, "state");
        now.addAndGet(29_000_000_000L);
        assertDoesNotThrow(step::run);
        now.addAndGet(2_000_000_000L);
        assertThrows(Newest.TooLongException.class, step::run);
    }
}
