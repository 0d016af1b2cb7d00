package hotidle.circuits.speed;

import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.network.Conditions;
import hotidle.network.Network;
import hotidle.newton.Batch;
import hotidle.newton.Series;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Time a state of shuttle-five: swept over speed in a series, in batches on one thread and on two, and sampled at random. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
@SuppressWarnings("deprecation") // that is how counters are told
public class ShuttleBench {

    private static final int SWEEP = 500;
    private static final int BATCH = 20_000;
    private static final int SAMPLES = 100_000;
    private static final int DRAWN = 1000;

    private static DescribedCircuit circuit() {
        return CircuitReader.read(Library.text("shuttle-five").orElseThrow(), "shuttle-five.yaml")
                .circuit()
                .orElseThrow();
    }

    /** A worn unit at hot idle, and speeds from 500 to 3500 rpm, up and up again. */
    @State(Scope.Thread)
    public static class Swept {
        private Network network;
        private List<Conditions> conditions;
        private Series series;

        @Setup
        public void read() {
            Transmission unit = circuit().unit("worn");
            Conditions first = unit.conditions(unit.duties().get(0));
            network = unit.network();
            conditions = IntStream.range(0, BATCH)
                    .mapToObj(i -> first.atSpeed((500 + 3000.0 * (i % SWEEP) / SWEEP) / 60))
                    .toList();
            series = new Series(network);
        }
    }

    /** Units with every fit somewhere between new and its wear limit, or what was measured where it has none, each with a speed and a temperature. */
    @State(Scope.Thread)
    public static class Sampled {
        private final List<Network> networks = new ArrayList<>();
        private final List<Conditions> conditions = new ArrayList<>();
        private Series series;

        @Setup
        public void draw() {
            Adjustable measured = circuit().adjustable("worn");
            Random random = new Random(1);
            for (int i = 0; i < DRAWN; i++) {
                Map<String, Double> sizes = new HashMap<>();
                for (WearSize dimension : measured.dimensions()) {
                    double worn = dimension.limit().orElse(dimension.value()) - dimension.fresh();
                    sizes.put(dimension.name(), dimension.fresh() + random.nextDouble() * worn);
                }
                Transmission unit = measured.with(sizes).orElseThrow();
                networks.add(unit.network());
                Conditions hot = unit.conditions(unit.duties().get(0));
                Map<String, Double> temperatures = new HashMap<>(hot.temperatures());
                double warmer = 30 * (random.nextDouble() - 0.5);
                temperatures.replaceAll((region, temperature) -> temperature + warmer);
                conditions.add(new Conditions(
                        (500 + 3000 * random.nextDouble()) / 60,
                        hot.range(),
                        hot.lockup(),
                        hot.oil(),
                        hot.ambient(),
                        temperatures,
                        hot.commands()));
            }
            series = new Series(networks.get(0));
        }
    }

    /** What else is counted: states, evaluations with factorisation, states left unsolved. */
    @AuxCounters(AuxCounters.Type.EVENTS)
    @State(Scope.Thread)
    public static class Counted {
        public long states;
        public long steps;
        public long unsolved;

        private void add(boolean solved, int taken) {
            states++;
            steps += taken;
            unsolved += solved ? 0 : 1;
        }
    }

    @Benchmark
    @OperationsPerInvocation(SWEEP)
    public double sweep(Swept given, Counted counted) {
        double sum = 0;
        Series series = given.series;
        int line = series.number("line");
        for (int i = 0; i < SWEEP; i++) {
            counted.add(series.solve(given.conditions.get(i)), series.steps());
            sum += series.value(line);
        }
        return sum;
    }

    @Benchmark
    @OperationsPerInvocation(BATCH)
    public int batchOnOneThread(Swept given) {
        return batch(given, 1);
    }

    @Benchmark
    @OperationsPerInvocation(BATCH)
    public int batchOnTwoThreads(Swept given) {
        return batch(given, 2);
    }

    private static int batch(Swept given, int threads) {
        AtomicInteger solved = new AtomicInteger();
        Batch.solve(given.network, given.conditions, threads, (number, found, series) -> {
            if (found) {
                solved.incrementAndGet();
            }
        });
        return solved.get();
    }

    @Benchmark
    @OperationsPerInvocation(SAMPLES)
    @Warmup(iterations = 1)
    @Measurement(iterations = 3)
    public double sampled(Sampled given, Counted counted) {
        double sum = 0;
        Series series = given.series;
        for (int i = 0; i < SAMPLES; i++) {
            series.use(given.networks.get(i % DRAWN));
            boolean found = series.solve(given.conditions.get(i % DRAWN));
            counted.add(found, series.steps());
            sum += found ? series.value(series.number("line")) : 0;
        }
        return sum;
    }
}
