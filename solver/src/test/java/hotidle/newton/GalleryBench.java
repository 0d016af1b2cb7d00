package hotidle.newton;

import hotidle.network.Conditions;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Time a state of the gallery's sweep at five sizes. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
@State(Scope.Thread)
public class GalleryBench {

    private static final int STATES = 200;

    @Param({"3x4", "5x8", "10x16", "25x40", "50x80"})
    public String size;

    private Series series;
    private Conditions[] conditions;

    @Setup
    public void build() {
        int x = size.indexOf('x');
        Gallery gallery = new Gallery(Integer.parseInt(size.substring(0, x)), Integer.parseInt(size.substring(x + 1)));
        series = new Series(gallery.equations(), Newton.TOLERANCE);
        Conditions first = Gallery.at(0.2);
        conditions = IntStream.range(0, STATES)
                .mapToObj(k -> first.atSpeed(0.2 + 1.8 * k / (STATES - 1)))
                .toArray(Conditions[]::new);
    }

    @Benchmark
    @OperationsPerInvocation(STATES)
    public int sweep() {
        series.restart();
        int solved = 0;
        for (Conditions one : conditions) {
            solved += series.solve(one) ? 1 : 0;
        }
        if (solved < STATES) {
            throw new IllegalStateException(STATES - solved + " states are not solved");
        }
        return solved;
    }
}
