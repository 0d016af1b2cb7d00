package hotidle.cli.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.Library;
import hotidle.plots.scheme.Drawing;
import hotidle.plots.scheme.Scheme;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** The training rig drawn for a page. */
class LayoutsTest {

    private static final Scheme RIG = LiveDrawing.joined(
            Quantity.UnitSystem.SHOP,
            CircuitReader.read(Library.text("training-rig").orElseThrow(), "rig.yaml")
                    .circuit()
                    .orElseThrow());

    private final Layouts layouts = new Layouts();

    private Layouts.Progress progress(String own) {
        return layouts.of("first", () -> RIG, own);
    }

    @Test
    void itIsLaidOutOnceWhoeverAsksAndHowOften() {
        Layouts.Progress progress = progress("a-");
        while (progress.svg().isEmpty()) {
            assertTrue(progress.tried() <= Drawing.tries());
            progress = progress("b-");
        }
        assertSame(progress.svg().get(), progress("c-").svg().orElseThrow());
        assertEquals(layouts.now(RIG, "a-", () -> {}), progress.svg().get(), "the same drawing as at once");
    }

    @Test
    void oneForWhichNobodyWaitsEndsAtTheNextWayTried() {
        AtomicInteger tried = new AtomicInteger();
        assertThrows(
                Newest.GivenUpException.class,
                () -> layouts.now(RIG, "a-", () -> {
                    if (tried.incrementAndGet() > 2) {
                        throw new Newest.GivenUpException("a newer question has come");
                    }
                }));
        assertTrue(tried.get() < Drawing.tries(), tried + " ways");
    }
}
