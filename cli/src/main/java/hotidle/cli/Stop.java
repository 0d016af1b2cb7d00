package hotidle.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;

/** The user's wish to stop, Ctrl-C: long work ends at its next step, and the builds that are finished are answered. */
final class Stop {

    /** Longest wait for what was finished to be printed [s]: a step of the longest work, and then some (chosen). */
    private static final int PATIENCE = 5;

    /** That of the program. */
    static final Stop BY_USER = new Stop();

    private final CountDownLatch printed = new CountDownLatch(1);
    private volatile boolean asked;

    /** Work that is given up at the user's wish. */
    static final class StoppedException extends RuntimeException {
        private static final long serialVersionUID = 1;

        StoppedException() {
            super("stopped", null, false, false);
        }
    }

    /** Listens for Ctrl-C from now on. */
    void listen() {
        Runtime.getRuntime().addShutdownHook(new Thread(this::ask));
    }

    /** Asks to stop, and waits until what was finished is printed. */
    void ask() {
        asked = true;
        try {
            printed.await(PATIENCE, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** All is printed: the program may end. */
    void printed() {
        printed.countDown();
    }

    /** Whether the user wants no more. */
    boolean asked() {
        return asked;
    }

    /**
     * Studies builds one after the other; where the user stops, those that are finished are the answer.
     *
     * @param err says how many they are
     * @throws StoppedException where none is finished
     */
    static <B, T> List<T> each(List<B> builds, Function<B, T> study, PrintWriter err) {
        List<T> finished = new ArrayList<>();
        try {
            for (B build : builds) {
                finished.add(study.apply(build));
            }
        } catch (StoppedException stopped) {
            if (finished.isEmpty()) {
                throw stopped;
            }
            err.println("hotidle: stopped; " + finished.size() + " of " + builds.size() + " builds are finished");
        }
        return finished;
    }
}
