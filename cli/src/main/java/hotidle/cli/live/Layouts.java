package hotidle.cli.live;

import hotidle.plots.scheme.Drawing;
import hotidle.plots.scheme.Scheme;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;

/**
 * Drawings that are laid out in the background, each once, on threads of their own: what else a page asks for does not wait for them.
 * Who wants one asks again and again while it is being laid out; once nobody has asked for a while, it is given up.
 */
final class Layouts {

    /** A question waits so long for a drawing before it is told that it is not there yet (chosen) [ms]. */
    private static final long WAIT = 500;

    /** Nobody wants a drawing that was not asked for so long (chosen) [ns]. */
    private static final long FORGOTTEN = 5_000_000_000L;

    /** One processor is left to what is asked for besides. */
    private final ForkJoinPool threads =
            new ForkJoinPool(Math.max(1, Runtime.getRuntime().availableProcessors() - 1));

    private final Map<String, Layout> begun = new ConcurrentHashMap<>();

    /** A drawing that is there or is being laid out. */
    private static final class Layout {
        private final AtomicInteger tried = new AtomicInteger();
        private volatile long wanted = System.nanoTime();
        private ForkJoinTask<String> work;

        void step() {
            if (System.nanoTime() - wanted > FORGOTTEN) {
                throw new CancellationException("nobody waits for the drawing");
            }
            tried.incrementAndGet();
        }
    }

    /**
     * How far a drawing is.
     *
     * @param svg   the drawing; empty while it is being laid out
     * @param tried in how many ways it was laid out so far
     */
    record Progress(Optional<String> svg, int tried) {}

    /** The drawing of a name, which is begun where it is not there. */
    Progress of(String name, Supplier<Scheme> scheme, String own) {
        Layout layout = begun.computeIfAbsent(name, unused -> new Layout());
        layout.wanted = System.nanoTime();
        synchronized (layout) {
            if (layout.work == null) {
                Scheme drawn = scheme.get();
                layout.work = threads.submit(
                        () -> new String(new Drawing(drawn, layout::step).svg(own), StandardCharsets.UTF_8));
            }
        }
        try {
            return new Progress(Optional.of(layout.work.get(WAIT, TimeUnit.MILLISECONDS)), Drawing.tries());
        } catch (TimeoutException working) {
            return new Progress(Optional.empty(), layout.tried.get());
        } catch (CancellationException | ExecutionException ended) {
            begun.remove(name, layout);
            if (forgotten(ended)) {
                return new Progress(Optional.empty(), 0);
            }
            throw new CompletionException(ended.getCause());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return new Progress(Optional.empty(), layout.tried.get());
        }
    }

    private static boolean forgotten(Throwable ended) {
        for (Throwable one = ended; one != null; one = one.getCause()) {
            if (one instanceof CancellationException) {
                return true;
            }
        }
        return false;
    }

    /** A drawing that is laid out for one who waits for it; {@code step} throws once he does not. */
    String now(Scheme scheme, String own, Runnable step) {
        try {
            return threads.submit(() -> new String(new Drawing(scheme, step).svg(own), StandardCharsets.UTF_8))
                    .get();
        } catch (ExecutionException failed) {
            for (Throwable one = failed; one != null; one = one.getCause()) {
                if (one instanceof Newest.GivenUpException || one instanceof Newest.TooLongException) {
                    throw (RuntimeException) one;
                }
            }
            throw new CompletionException(failed.getCause());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new CancellationException("the program ends");
        }
    }
}
