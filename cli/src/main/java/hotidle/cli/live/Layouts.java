package hotidle.cli.live;

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
import java.util.function.Function;

/**
 * Drawings that are laid out in the background, each once, on threads of their own: what else a page asks for does not wait for them.
 * Who wants one asks again and again while it is being laid out; once nobody has asked for a while, it is given up. A drawing is a
 * function of what is to be run between the ways in which it is laid out, which throws once nobody waits.
 */
final class Layouts implements AutoCloseable {

    /** A question waits so long for a drawing before it is told that it is not there yet (chosen) [ms]. */
    private static final long WAIT = 500;

    /** Nobody wants a drawing that was not asked for so long (chosen) [ns]. */
    private static final long FORGOTTEN = 5_000_000_000L;

    /** One processor is left to what is asked for besides. */
    private final ForkJoinPool threads =
            new ForkJoinPool(Math.max(1, Runtime.getRuntime().availableProcessors() - 1));

    private final Map<String, OneLayout> begun = new ConcurrentHashMap<>();
    private final long forgotten;
    private volatile boolean closed;

    Layouts() {
        this(FORGOTTEN);
    }

    /** With a patience [ns] of one's own. */
    Layouts(long forgotten) {
        this.forgotten = forgotten;
    }

    /** A drawing that is there or is being laid out. */
    private final class OneLayout {
        private final AtomicInteger tried = new AtomicInteger();
        private volatile long wanted = System.nanoTime();
        private ForkJoinTask<String> work;

        void step() {
            if (closed || System.nanoTime() - wanted > forgotten) {
                throw new CancellationException("nobody waits for the drawing");
            }
            tried.incrementAndGet();
        }

        /** Begun where it is not. */
        synchronized ForkJoinTask<String> work(Function<Runnable, String> drawing) {
            if (work == null) {
                work = threads.submit(() -> drawing.apply(this::step));
            }
            return work;
        }
    }

    /**
     * How far a drawing is.
     *
     * @param svg   the drawing; empty while it is being laid out
     * @param tried in how many ways it was laid out so far
     */
    record LayoutProgress(Optional<String> svg, int tried) {}

    /** The drawing of a name, which is begun where it is not there. */
    LayoutProgress of(String name, Function<Runnable, String> drawing) {
        OneLayout layout = begun.computeIfAbsent(name, unused -> new OneLayout());
        layout.wanted = System.nanoTime();
        try {
            return new LayoutProgress(
                    Optional.of(layout.work(drawing).get(WAIT, TimeUnit.MILLISECONDS)), layout.tried.get());
        } catch (TimeoutException working) {
            return new LayoutProgress(Optional.empty(), layout.tried.get());
        } catch (CancellationException | ExecutionException ended) {
            begun.remove(name, layout);
            if (caused(ended, CancellationException.class).isPresent()) {
                return new LayoutProgress(Optional.empty(), 0);
            }
            throw new CompletionException(ended.getCause());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return new LayoutProgress(Optional.empty(), layout.tried.get());
        }
    }

    /** Gives up all that is being laid out. */
    @Override
    public void close() {
        closed = true;
        threads.shutdownNow();
    }

    /** A drawing for one who waits for it; {@code step} throws once he does not. */
    String now(Function<Runnable, String> drawing, Runnable step) {
        try {
            return threads.submit(() -> drawing.apply(step)).get();
        } catch (ExecutionException failed) {
            caused(failed, Newest.GivenUpException.class).ifPresent(Layouts::rethrow);
            caused(failed, Newest.TooLongException.class).ifPresent(Layouts::rethrow);
            throw new CompletionException(failed.getCause());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new CancellationException("the program ends");
        }
    }

    private static void rethrow(RuntimeException told) {
        throw told;
    }

    private static <T extends Throwable> Optional<T> caused(Throwable failed, Class<T> by) {
        for (Throwable one = failed; one != null; one = one.getCause()) {
            if (by.isInstance(one)) {
                return Optional.of(by.cast(one));
            }
        }
        return Optional.empty();
    }
}
