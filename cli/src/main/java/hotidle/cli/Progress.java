package hotidle.cli;

import java.io.PrintWriter;
import java.util.function.LongSupplier;

/**
 * How far long work has come: a bar that redraws itself with the time that is left, where the launcher found a terminal. Work that
 * ends within two seconds shows none.
 */
final class Progress {

    private static final int WIDTH = 30;

    /** Work that takes no longer needs no bar [ns]. */
    private static final long SHORT = 2_000_000_000L;

    private static final double SECOND = 1e9;

    private final PrintWriter err;
    private final boolean shown;
    private final String what;
    private final int all;
    private final LongSupplier clock;
    private final Stop stop;
    private final long start;
    private int done;
    private int drawn;

    /**
     * Work that begins.
     *
     * @param what is done, in a word or two
     * @param all  steps that it takes
     */
    Progress(PrintWriter err, String what, int all) {
        this(err, what, all, Boolean.getBoolean("hotidle.terminal"), System::nanoTime, Stop.BY_USER);
    }

    /** The same by a clock [ns] and an end of one's own. */
    Progress(PrintWriter err, String what, int all, boolean shown, LongSupplier clock, Stop stop) {
        this.err = err;
        this.what = what;
        this.all = Math.max(all, 1);
        this.shown = shown;
        this.clock = clock;
        this.stop = stop;
        start = clock.getAsLong();
    }

    /**
     * One step is done. Steps may come from any thread.
     *
     * @throws Stop.StoppedException where the user wants no more
     */
    synchronized void step() {
        if (stop.asked()) {
            end();
            throw new Stop.StoppedException();
        }
        done++;
        long taken = clock.getAsLong() - start;
        double whole = (double) taken * Math.max(all, done) / done;
        if (shown && (drawn > 0 || whole > SHORT)) {
            draw(whole - taken);
        }
    }

    /** As if the steps to come took as long as those done. */
    private void draw(double left) {
        int bar = WIDTH * Math.min(done, all) / all;
        String line = what + " [" + "#".repeat(bar) + ".".repeat(WIDTH - bar) + "] " + done + "/" + all + ", "
                + left(Math.round(left / SECOND)) + " left";
        err.print("\r" + line + " ".repeat(Math.max(drawn - line.length(), 0)));
        err.flush();
        drawn = line.length();
    }

    private static String left(long seconds) {
        return seconds < 100 ? seconds + " s" : Math.round(seconds / 60.0) + " min";
    }

    /** All is done; the line is wiped. */
    synchronized void end() {
        if (drawn > 0) {
            err.print("\r" + " ".repeat(drawn) + "\r");
            err.flush();
            drawn = 0;
        }
    }
}
