package hotidle.circuits.speed;

import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.network.Conditions;
import hotidle.newton.Series;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Time to change sizes of shuttle-five: the unit made anew, and its state on top. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 4, time = 1)
@Fork(3)
@State(Scope.Thread)
public class RemadeBench {

    private Adjustable worn;
    private Adjustable pressed;
    private List<WearSize> sizes;
    private final Map<String, Double> all = new HashMap<>();
    private Series series;
    private Conditions idle;
    private Transmission[] ready;
    private int turn;

    @Setup
    public void read() {
        DescribedCircuit circuit = CircuitReader.read(
                        Library.text("shuttle-five").orElseThrow(), "shuttle-five.yaml")
                .circuit()
                .orElseThrow();
        worn = circuit.adjustable("worn");
        pressed = circuit.adjustable("worn-raised");
        sizes = worn.dimensions();
        sizes.forEach(size -> all.put(size.name(), size.value()));
        idle = worn.unit().conditions(worn.unit().duties().get(0));
        series = new Series(worn.unit().network());
        ready = sizes.stream().map(size -> changed(worn, size)).toArray(Transmission[]::new);
    }

    private static Transmission changed(Adjustable unit, WearSize size) {
        return unit.remake().with(Map.of(size.name(), size.value() * (1 + 1e-6)));
    }

    private int next() {
        turn = (turn + 1) % sizes.size();
        return turn;
    }

    private double solved(Transmission unit) {
        series.use(unit.network());
        series.solve(idle);
        return series.value(0);
    }

    /** One size after the other, each changed alone. */
    @Benchmark
    public Transmission one() {
        return changed(worn, sizes.get(next()));
    }

    /** The same where the build asks for a set pressure, which the spring must keep. */
    @Benchmark
    public Transmission onePressed() {
        return changed(pressed, sizes.get(next()));
    }

    /** All sizes at once. */
    @Benchmark
    public Transmission every() {
        return worn.remake().with(all);
    }

    /** One changed size and the state that it makes. */
    @Benchmark
    public double oneAndItsState() {
        return solved(changed(worn, sizes.get(next())));
    }

    /** The state alone, of units that were made before. */
    @Benchmark
    public double stateAlone() {
        return solved(ready[next()]);
    }
}
