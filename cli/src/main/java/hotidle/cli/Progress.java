package hotidle.cli;

import java.io.PrintWriter;

/** How far long work has come: a bar that redraws itself, where the launcher found a terminal. */
final class Progress {

    private static final int WIDTH = 30;

    private final PrintWriter err;
    private final boolean shown;
    private final String what;
    private final int all;
    private int done;

    /**
     * Work that begins.
     *
     * @param what is done, in a word or two
     * @param all  steps that it takes
     */
    Progress(PrintWriter err, String what, int all) {
        this(err, what, all, Boolean.getBoolean("hotidle.terminal"));
    }

    Progress(PrintWriter err, String what, int all, boolean shown) {
        this.err = err;
        this.what = what;
        this.all = all;
        this.shown = shown;
    }

    /** One step is done. Steps may come from any thread. */
    synchronized void step() {
        done++;
        if (shown) {
            int bar = WIDTH * done / Math.max(all, 1);
            err.print("\r" + what + " [" + "#".repeat(bar) + ".".repeat(WIDTH - bar) + "] " + done + "/" + all);
            err.flush();
        }
    }

    /** All is done; the line is wiped. */
    synchronized void end() {
        if (shown) {
            err.print("\r" + " ".repeat(what.length() + WIDTH + 20) + "\r");
            err.flush();
        }
    }
}
