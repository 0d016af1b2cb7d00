package hotidle.result;

import java.util.concurrent.atomic.LongAdder;

/**
 * How much was solved since the program started, on all threads: what a study cost, not what it found.
 *
 * @param states times that a state was asked for and not known already, solved or not
 * @param steps  evaluations with factorisation that these took
 */
public record SolveCount(long states, long steps) {

    // one count for the whole program: handed through, it would stand in every signature between a command and a solve
    private static final LongAdder STATES = new LongAdder();
    private static final LongAdder STEPS = new LongAdder();

    /** The count up to now; steps of a state that is being solved on another thread may be missing. */
    public static SolveCount now() {
        return new SolveCount(STATES.sum(), STEPS.sum());
    }

    /** Counts one state. */
    public static void add(int steps) {
        STATES.increment();
        STEPS.add(steps);
    }

    /** What came since an earlier count. */
    public SolveCount since(SolveCount before) {
        return new SolveCount(states - before.states, steps - before.steps);
    }
}
