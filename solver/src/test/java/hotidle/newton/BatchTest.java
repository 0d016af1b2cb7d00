package hotidle.newton;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import hotidle.network.Conditions;
import hotidle.study.TenNodes;
import hotidle.transmission.Transmission;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A batch gives the same on any number of threads, to the last bit. */
class BatchTest {

    private static final int STATES = 3 * Batch.BLOCK + 17;

    private final Transmission unit = TenNodes.worn(2);
    private final List<Conditions> states = IntStream.range(0, STATES)
            .mapToObj(i -> unit.conditions(unit.duties().get(0)).atSpeed(8 + 0.06 * i))
            .toList();

    private long[] lines(int threads) {
        long[] bits = new long[STATES];
        Arrays.fill(bits, -1);
        Batch.solve(unit.network(), states, threads, (number, solved, series) -> {
            if (solved) {
                bits[number] = Double.doubleToRawLongBits(series.value(series.number("line")));
            }
        });
        return bits;
    }

    @Test
    void anyNumberOfThreadsGivesTheSameBits() {
        long[] one = lines(1);
        for (int threads : new int[] {2, 3, 5}) {
            assertArrayEquals(one, lines(threads), threads + " threads");
        }
        assertEquals(0, Arrays.stream(one).filter(bits -> bits == -1).count());
    }

    @Test
    void eachIsTheStateSolvedAlone() {
        long[] bits = lines(2);
        SteadySolver solver = new SteadySolver(unit.network());
        for (int i = 0; i < STATES; i += 61) {
            double line = solver.solve(states.get(i)).state().orElseThrow().pressure("line");
            assertEquals(line, Double.longBitsToDouble(bits[i]), 1e-8 * (1 + line));
        }
    }

    @Test
    void whatTheTakerThrowsIsTold() {
        IllegalStateException told = assertThrows(
                IllegalStateException.class,
                () -> Batch.solve(unit.network(), states, 2, (number, solved, series) -> {
                    throw new IllegalArgumentException("no room");
                }));
        assertEquals("no room", told.getCause().getMessage());
    }

    @Test
    void noStatesAreNoWork() {
        Batch.solve(unit.network(), List.of(), 2, (number, solved, series) -> {
            throw new AssertionError("nothing was asked");
        });
    }
}
