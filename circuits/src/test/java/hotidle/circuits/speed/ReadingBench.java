package hotidle.circuits.speed;

import hotidle.circuits.CircuitReader;
import hotidle.circuits.Library;
import hotidle.circuits.ReadCircuit;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Warmup;

/** Time to read shuttle-five with all of its builds: again and again, and for the first time in a program, classes and all. */
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class ReadingBench {

    private static ReadCircuit read() {
        return CircuitReader.read(Library.text("shuttle-five").orElseThrow(), "shuttle-five.yaml");
    }

    @Benchmark
    @BenchmarkMode(Mode.AverageTime)
    @Warmup(iterations = 5, time = 2)
    @Measurement(iterations = 5, time = 2)
    @Fork(3)
    public ReadCircuit warm() {
        return read();
    }

    @Benchmark
    @BenchmarkMode(Mode.SingleShotTime)
    @Warmup(iterations = 0)
    @Measurement(iterations = 1)
    @Fork(10)
    public ReadCircuit cold() {
        return read();
    }
}
