package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Margin;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Builds asked for together are judged one after the other at each driving condition: none reads otherwise than asked for alone. */
class BuildsJudgedInTurnTest {

    private static final List<Double> SPEEDS =
            IntStream.rangeClosed(0, 12).mapToObj(i -> (400 + 300 * i) / 60.0).toList();

    private static void sameAlone(String circuit, List<String> builds) {
        DescribedCircuit described = CircuitReader.read(Library.text(circuit).orElseThrow(), circuit)
                .circuit()
                .orElseThrow();
        List<Transmission> units = builds.stream().map(described::unit).toList();
        int compared = 0;
        for (JudgedBuild together : JudgedBuild.study(units, SPEEDS, () -> {})) {
            JudgedBuild alone = JudgedBuild.study(List.of(together.unit()), SPEEDS, () -> {})
                    .get(0);
            for (int i = 0; i < alone.duties().size(); i++) {
                List<Margin> one = alone.duties().get(i).margins();
                List<Margin> other = together.duties().get(i).margins();
                assertEquals(one.size(), other.size());
                for (int k = 0; k < one.size(); k++) {
                    String where = circuit + " " + together.unit().build() + " "
                            + alone.duties().get(i).duty().name() + " " + one.get(k);
                    assertEquals(one.get(k).verdict(), other.get(k).verdict(), where);
                    assertEquals(one.get(k).part(), other.get(k).part(), where);
                    assertEquals(
                            1 + one.get(k).headroom(),
                            1 + other.get(k).headroom(),
                            1e-4 * Math.abs(1 + one.get(k).headroom()),
                            where);
                    compared++;
                }
            }
        }
        assertTrue(compared > 100, compared + " limits");
    }

    @Test
    void theDoublePumpsBuilds() {
        sameAlone("shuttle-five", List.of("fresh", "worn", "worn-raised", "restored-raised"));
    }

    @Test
    void theVanePumpsBuilds() {
        sameAlone("vane-six", List.of("fresh", "worn", "restored"));
    }
}
