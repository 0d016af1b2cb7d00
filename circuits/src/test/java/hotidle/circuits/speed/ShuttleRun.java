package hotidle.circuits.speed;

import com.sun.management.ThreadMXBean;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.Library;
import hotidle.duty.Unit;
import hotidle.network.Conditions;
import hotidle.newton.Series;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * Times a sweep of shuttle-five in a series: states a second, steps and bytes a state, and what a second thread gives. The states are
 * cut into blocks of {@code BLOCK}, each started cold, so that the answers are the same bits on any number of threads.
 */
final class ShuttleRun {

    private static final int STATES = 20_000;
    private static final int BLOCK = 500;

    private final Unit unit;
    private final List<Conditions> conditions = new ArrayList<>();
    private final double[] line = new double[STATES];
    private final int[] steps = new int[STATES];
    private final long[] bytes = new long[STATES / BLOCK];

    ShuttleRun(String build) {
        unit = CircuitReader.read(Library.text("shuttle-five").orElseThrow(), "shuttle-five.yaml")
                .circuit()
                .orElseThrow()
                .unit(build);
        Conditions first = unit.conditions(unit.duties().get(0));
        for (int i = 0; i < STATES; i++) {
            conditions.add(first.atSpeed((500 + 3000.0 * (i % BLOCK) / BLOCK) / 60));
        }
    }

    private double pass(int threads) throws InterruptedException {
        long begin = System.nanoTime();
        List<Thread> all = IntStream.range(0, threads)
                .mapToObj(t -> new Thread(() -> work(t, threads)))
                .toList();
        all.forEach(Thread::start);
        for (Thread thread : all) {
            thread.join();
        }
        return (System.nanoTime() - begin) / 1e9;
    }

    private void work(int first, int stride) {
        Series series = new Series(unit.network());
        ThreadMXBean memory = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        int number = series.number("line");
        for (int block = first; block < STATES / BLOCK; block += stride) {
            series.restart();
            long before = memory.getCurrentThreadAllocatedBytes();
            for (int i = block * BLOCK; i < (block + 1) * BLOCK; i++) {
                if (!series.solve(conditions.get(i))) {
                    throw new IllegalStateException("state " + i + " is not solved");
                }
                line[i] = series.value(number);
                steps[i] = series.steps();
            }
            bytes[block] = memory.getCurrentThreadAllocatedBytes() - before;
        }
    }

    public static void main(String[] arguments) throws InterruptedException {
        ShuttleRun run = new ShuttleRun(arguments.length > 0 ? arguments[0] : "worn");
        run.pass(1);
        run.pass(1);
        double one = run.pass(1);
        double[] alone = run.line.clone();
        double two = run.pass(2);
        boolean same = java.util.Arrays.equals(alone, run.line);
        System.out.printf(
                Locale.ROOT,
                "{\"states\": %d, \"us_a_state\": %.2f, \"steps_a_state\": %.3f, \"bytes_a_state\": %.0f,"
                        + " \"two_threads_gain\": %.2f, \"same_bits\": %s}%n",
                STATES,
                1e6 * one / STATES,
                IntStream.of(run.steps).average().orElseThrow(),
                (double) java.util.stream.LongStream.of(run.bytes).sum() / STATES,
                one / two,
                same);
    }
}
