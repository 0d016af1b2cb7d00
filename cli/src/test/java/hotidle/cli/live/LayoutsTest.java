package hotidle.cli.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.CompletionException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class LayoutsTest {

    private final Layouts layouts = new Layouts();
    private final AtomicInteger begun = new AtomicInteger();

    /** Laid out in forty ways. */
    private String drawn(Runnable step) {
        begun.incrementAndGet();
        for (int i = 0; i < 40; i++) {
            step.run();
        }
        return "<svg>";
    }

    @Test
    void aDrawingIsLaidOutOnceHoweverOftenItIsAskedFor() {
        Layouts.LayoutProgress progress = layouts.of("first", this::drawn);
        while (progress.svg().isEmpty()) {
            progress = layouts.of("first", this::drawn);
        }
        assertEquals("<svg>", progress.svg().get());
        assertEquals(progress, layouts.of("first", this::drawn));
        assertEquals(40, progress.tried());
        assertEquals(1, begun.get());
    }

    @Test
    void whoAsksWhileItIsLaidOutIsToldHowFarItIs() {
        CountDownLatch go = new CountDownLatch(1);
        Layouts.LayoutProgress progress = layouts.of("first", step -> {
            step.run();
            await(go);
            return drawn(step);
        });
        assertEquals(1, progress.tried());
        assertFalse(progress.svg().isPresent());
        go.countDown();
    }

    private static void await(CountDownLatch latch) {
        try {
            assertTrue(latch.await(10, TimeUnit.SECONDS));
        } catch (InterruptedException stopped) {
            throw new AssertionError(stopped);
        }
    }

    @Test
    void oneThatNobodyAsksForAnyMoreIsGivenUpAndBegunAnewWhenSomebodyDoes() {
        Layouts impatient = new Layouts(1_000_000);
        CountDownLatch ended = new CountDownLatch(1);
        Layouts.LayoutProgress progress = impatient.of("first", step -> {
            try {
                for (int i = 0; i < 1000; i++) {
                    TimeUnit.MILLISECONDS.sleep(5);
                    step.run();
                }
                return "never";
            } catch (InterruptedException stopped) {
                throw new AssertionError(stopped);
            } finally {
                ended.countDown();
            }
        });
        await(ended);
        assertTrue(progress.svg().isEmpty());
        while (progress.svg().isEmpty()) {
            progress = impatient.of("first", step -> drawn(() -> {}));
        }
        assertEquals("<svg>", progress.svg().get());
    }

    @Test
    void oneForWhichNobodyWaitsEndsAtTheNextWayTriedAndAFaultIsTold() {
        AtomicInteger tried = new AtomicInteger();
        Runnable third = () -> {
            if (tried.incrementAndGet() > 2) {
                throw new Newest.GivenUpException("a newer question has come");
            }
        };
        assertThrows(Newest.GivenUpException.class, () -> layouts.now(this::drawn, third));
        assertEquals(3, tried.get());
        assertThrows(
                CompletionException.class,
                () -> layouts.of("broken", step -> {
                    throw new IllegalStateException("no layout");
                }));
    }
}
