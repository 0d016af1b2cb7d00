package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.ReadyCircuits;
import hotidle.circuits.DescribedCircuit;
import hotidle.transmission.Adjustable;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What map says where no size is given. */
class VaryExampleTest {

    private static final Pattern VARY = Pattern.compile("--vary (\\S+),");

    @Test
    void theExampleIsASizeOfThatCircuitFromNewToItsLimitAndCanBeMapped() {
        for (String circuit : new String[] {"shuttle-five", "crescent-four", "vane-six"}) {
            Run run = Run.of("map", circuit, "--build", "worn");
            assertEquals(HotIdle.WRONG_INPUT, run.code(), run.out());
            String said = run.err().replaceAll("\\s+", " ");
            assertTrue(said.contains("write hotidle map " + circuit + " --build worn --vary "), said);
            Matcher written = VARY.matcher(said);
            assertTrue(written.find(), said);
            DescribedCircuit described = ReadyCircuits.read(circuit);
            Adjustable build = described.adjustable("worn");
            VariedSize size = VariedSize.of(written.group(1));
            List<Double> values = size.values(build, size.axis(build));
            double low = build.dimension(size.name()).orElseThrow().fresh();
            double high = build.dimension(size.name()).orElseThrow().limit().orElseThrow();
            assertEquals(Math.min(low, high), values.get(0), 1e-6);
            assertEquals(Math.max(low, high), values.get(values.size() - 1), 1e-6);
        }
    }

    @Test
    void aCircuitWithoutACommandIsToldSoFirst() {
        Run run = Run.of("map", "training-rig");
        assertEquals(HotIdle.WRONG_INPUT, run.code(), run.out());
        assertTrue(run.err().contains("is not commanded"), run.err());
    }
}
