package hotidle.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ForkJoinPool;
import java.util.function.Supplier;

/**
 * Studies side by side, one on each processor, in the order given. Each runs on one thread alone: what a study does on several leaves
 * some of them idle at its end, and threads that wait for the last piece of one study spin while others are open (Java 17).
 */
final class SideBySide implements AutoCloseable {

    private final Progress progress;
    private final Queue<Runnable> open = new ConcurrentLinkedQueue<>();
    private final List<ForkJoinPool> lanes = new ArrayList<>();

    /** @param progress gets a step for each */
    SideBySide(Progress progress) {
        this.progress = progress;
    }

    /** A study that is to be done; what it found is waited for, and what it threw is thrown where it is asked for. */
    <T> Supplier<T> study(Supplier<T> study) {
        CompletableFuture<T> found = new CompletableFuture<>();
        open.add(() -> {
            try {
                T answer = study.get();
                progress.step();
                found.complete(answer);
            } catch (RuntimeException | Error thrown) {
                found.completeExceptionally(thrown);
            }
        });
        return () -> {
            try {
                return found.join();
            } catch (CompletionException thrown) {
                if (thrown.getCause() instanceof RuntimeException cause) {
                    throw cause;
                }
                throw thrown;
            }
        };
    }

    /** Begins with all of them. */
    void begin() {
        for (int i = 0; i < Runtime.getRuntime().availableProcessors(); i++) {
            ForkJoinPool lane = new ForkJoinPool(1);
            lanes.add(lane);
            lane.execute(this::run);
        }
    }

    private void run() {
        for (Runnable next = open.poll(); next != null; next = open.poll()) {
            next.run();
        }
    }

    /** Those that have not begun are given up. */
    @Override
    public void close() {
        open.clear();
        lanes.forEach(ForkJoinPool::shutdown);
    }
}
