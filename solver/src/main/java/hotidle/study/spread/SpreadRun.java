package hotidle.study.spread;

import hotidle.assess.Margin;
import hotidle.study.DutyMargins;
import hotidle.study.Judgement;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Draws units and judges them, on several threads or in parts on several machines: the same bits however it is split. The draws are
 * cut into blocks, each a design of its own that is drawn from the seed and its number alone; each unit is solved from the states of
 * one and the same unit; sums are exact. Nothing but sums is kept.
 */
public final class SpreadRun {

    /** Units a block (ours). */
    static final int BLOCK = 250;

    /** Rows of the design a block (ours). */
    static final int ROWS = 10;

    private static final int UNITS = 1;
    private static final int PAIRS = 2;

    private final SpreadQuestion question;
    private final List<Judgement.Key> keys;
    private final double[] levels;
    private final long unitBlocks;
    private final long blocks;

    /** Takes what was drawn, in the order of its numbers, one at a time whatever the threads. */
    public interface UnitTaker {
        /**
         * Takes one unit.
         *
         * @param number of the unit, from 0
         */
        void take(long number, DrawnUnit unit);
    }

    /**
     * Which part of a run: every {@code of}-th block from the {@code number}-th on.
     *
     * @param number 1 to {@code of}
     * @param of     parts in all
     */
    public record RunPart(int number, int of) {
        /** All of it. */
        public static final RunPart WHOLE = new RunPart(1, 1);

        public RunPart {
            if (number < 1 || number > of) {
                throw new IllegalArgumentException("part " + number + " of " + of);
            }
        }
    }

    /** A run to be; solves the unit whose drawn sizes are at their median. */
    public SpreadRun(SpreadQuestion question) {
        this.question = question;
        Map<Judgement.Key, Margin> median = margins(question);
        keys = median.entrySet().stream()
                .filter(entry -> !(entry.getValue().headroom() == Double.POSITIVE_INFINITY))
                .map(Map.Entry::getKey)
                .toList();
        DrawnUnit typical = new DrawnUnit(new double[0], false, List.of(), median);
        levels = keys.stream()
                .mapToDouble(typical::headroom)
                .map(room -> Double.isFinite(room) ? room : 0)
                .toArray();
        unitBlocks = ((long) question.samples() + BLOCK - 1) / BLOCK;
        blocks = unitBlocks + (question.sizes().isEmpty() ? 0 : ((long) question.rows() + ROWS - 1) / ROWS);
    }

    /** Margins of the unit with all drawn sizes at their median, those of a duty without a state left out. */
    private static Map<Judgement.Key, Margin> margins(SpreadQuestion question) {
        Transmission typical = question.median();
        Map<Judgement.Key, Margin> found = new java.util.LinkedHashMap<>();
        for (String duty : question.duties()) {
            new DutyMargins(typical, duty).of(typical).ifPresent(found::putAll);
        }
        return found;
    }

    /** The margins that are asked, in the order in which they are shown. */
    public List<Judgement.Key> keys() {
        return keys;
    }

    /** Blocks of a part. */
    public int blocks(RunPart part) {
        return (int) ((blocks - part.number() + part.of()) / part.of());
    }

    /**
     * Runs a part.
     *
     * @param threads 1 or more
     * @param taker   told each unit drawn, the rows of the design not
     * @param step    called after each block, from any thread
     * @throws IllegalStateException if the thread is interrupted; what the taker throws is its cause
     */
    public SpreadTally run(RunPart part, int threads, UnitTaker taker, Runnable step) {
        ExecutorService workers = Executors.newFixedThreadPool(threads);
        AtomicLong next = new AtomicLong(part.number() - 1);
        Turn turn = new Turn(part.number() - 1, part.of());
        try {
            List<Future<SpreadTally>> all = new ArrayList<>();
            for (int i = 0; i < threads; i++) {
                all.add(workers.submit(() -> work(part, next, turn, taker, step)));
            }
            return sum(all);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted before all units were drawn", interrupted);
        } finally {
            workers.shutdownNow();
        }
    }

    private SpreadTally sum(List<Future<SpreadTally>> all) throws InterruptedException {
        SpreadTally sum = SpreadTally.none(keys, question.sizes().size());
        Throwable fault = null;
        for (Future<SpreadTally> one : all) {
            try {
                sum = sum.plus(one.get());
            } catch (ExecutionException broken) {
                // a thread that only waited for the one that broke is interrupted
                if (fault == null || fault instanceof InterruptedException) {
                    fault = broken.getCause();
                }
            }
        }
        if (fault != null) {
            throw new IllegalStateException("a thread could not go on", fault);
        }
        return sum;
    }

    private SpreadTally work(RunPart part, AtomicLong next, Turn turn, UnitTaker taker, Runnable step)
            throws InterruptedException {
        DrawnUnits units = new DrawnUnits(question);
        SpreadTally sum = SpreadTally.none(keys, question.sizes().size());
        for (long block = next.getAndAdd(part.of()); block < blocks; block = next.getAndAdd(part.of())) {
            try {
                List<DrawnUnit> drawn = List.of();
                if (block < unitBlocks) {
                    drawn = drawn(units, block);
                    for (DrawnUnit unit : drawn) {
                        sum = sum.plus(unit);
                    }
                } else {
                    sum = design(units, block - unitBlocks, sum);
                }
                turn.await(block);
                for (int i = 0; i < drawn.size(); i++) {
                    taker.take(block * BLOCK + i, drawn.get(i));
                }
                turn.done();
            } finally {
                turn.leave(block);
            }
            step.run();
        }
        return sum.asked(units.solves());
    }

    private List<DrawnUnit> drawn(DrawnUnits units, long block) {
        int rows = (int) Math.min(BLOCK, question.samples() - block * BLOCK);
        double[][] shares = LatinHypercube.block(
                question.seed(), UNITS, block, rows, question.sizes().size());
        List<DrawnUnit> drawn = new ArrayList<>();
        for (double[] row : shares) {
            drawn.add(units.at(row));
        }
        return drawn;
    }

    private SpreadTally design(DrawnUnits units, long block, SpreadTally before) {
        int rows = (int) Math.min(ROWS, question.rows() - block * ROWS);
        int sizes = question.sizes().size();
        double[][] shares = LatinHypercube.block(question.seed(), PAIRS, block, rows, 2 * sizes);
        SpreadTally sum = before;
        for (double[] row : shares) {
            double[] a = java.util.Arrays.copyOf(row, sizes);
            double[] b = java.util.Arrays.copyOfRange(row, sizes, 2 * sizes);
            DrawnUnit[] changed = new DrawnUnit[sizes];
            for (int i = 0; i < sizes; i++) {
                double[] other = a.clone();
                other[i] = b[i];
                changed[i] = units.at(other);
            }
            sum = sum.plus(units.at(a), units.at(b), changed, levels);
        }
        return sum;
    }

    /** Blocks are handed on in their order: a thread waits with a block that is ready until all before it are. */
    private static final class Turn {
        private final int step;
        private long next;
        private boolean broken;

        Turn(long first, int step) {
            next = first;
            this.step = step;
        }

        synchronized void await(long block) throws InterruptedException {
            while (next != block && !broken) {
                wait();
            }
            if (broken) {
                throw new InterruptedException("another thread could not go on");
            }
        }

        /** The block whose turn it was is handed on. */
        synchronized void done() {
            next += step;
            notifyAll();
        }

        /** A thread is done with a block; where it was not handed on, no other will be. */
        synchronized void leave(long block) {
            if (next <= block) {
                broken = true;
                notifyAll();
            }
        }
    }
}
