package hotidle.study.gauge;

import java.util.List;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Function;

/**
 * Pieces of work of very unequal length on all cores. A parallel stream cuts a list into a few runs for each core, and the one with the
 * stuck valves in it ends long after the others; here each piece is taken alone. No piece may know of another, so that the results have
 * the same bits on any number of threads.
 */
final class OneByOne {

    private OneByOne() {}

    /** What comes of each, in their order; in the pool of who asks, or in the common one. What a piece throws ends the work. */
    static <T, R> List<R> of(List<T> pieces, Function<T, R> work) {
        List<ForkJoinTask<R>> tasks = pieces.stream()
                .map(piece -> ForkJoinTask.adapt(() -> work.apply(piece)))
                .toList();
        ForkJoinTask.invokeAll(tasks);
        return tasks.stream().map(ForkJoinTask::getRawResult).toList();
    }
}
