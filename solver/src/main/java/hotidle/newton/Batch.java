package hotidle.newton;

import hotidle.network.Conditions;
import hotidle.network.Network;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Many states of one network on several threads, with the same bits on any number of them: the states are cut into blocks of equal
 * length, each block is solved from cold by a {@link Series}, and no block knows of another.
 */
public final class Batch {

    /** States a block: long enough that its cold start is little, short enough that threads end together (ours). */
    public static final int BLOCK = 250;

    private Batch() {}

    /** Takes what it wants of a state. Called on many threads, in order inside a block only. */
    public interface Taker {

        /**
         * Takes one state.
         *
         * @param number of the state
         * @param solved whether the series holds it; if not, nothing may be read
         * @param series where it is read, good until this returns
         */
        void take(int number, boolean solved, Series series);
    }

    /**
     * Solves all states; neighbours should be near each other.
     *
     * @param threads 1 or more
     * @throws IllegalStateException if the thread is interrupted; what the taker throws is its cause
     */
    public static void solve(Network network, List<Conditions> states, int threads, Taker taker) {
        AtomicInteger next = new AtomicInteger();
        ExecutorService workers = Executors.newFixedThreadPool(threads);
        try {
            List<Future<?>> all = new ArrayList<>();
            for (int i = 0; i < threads; i++) {
                all.add(workers.submit(() -> work(network, states, next, taker)));
            }
            for (Future<?> one : all) {
                one.get();
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted before all states were solved", interrupted);
        } catch (ExecutionException fault) {
            throw new IllegalStateException("a thread could not go on", fault.getCause());
        } finally {
            workers.shutdownNow();
        }
    }

    private static void work(Network network, List<Conditions> states, AtomicInteger next, Taker taker) {
        Series series = new Series(network);
        // the order of elimination is found at the first state of a series: the same one on each thread, so that bits
        // are the same
        if (!states.isEmpty()) {
            series.solve(states.get(0));
        }
        for (int start = next.getAndAdd(BLOCK); start < states.size(); start = next.getAndAdd(BLOCK)) {
            series.restart();
            int end = Math.min(start + BLOCK, states.size());
            for (int i = start; i < end; i++) {
                taker.take(i, series.solve(states.get(i)), series);
            }
        }
    }
}
