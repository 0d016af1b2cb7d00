package hotidle.circuits.torture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.torture.Tally;
import hotidle.torture.Verdict;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two thousand circuits on the rack; {@code solver/torture} takes a million. */
class TortureTest {

    /** How sick the mix has to be at the least; metal contact needs a hub bushing, which few of the circuits have. */
    private static final Map<Verdict.Mark, Double> FLOORS = Map.of(
            Verdict.Mark.STARVED, 0.1,
            Verdict.Mark.CAVITATING, 0.1,
            Verdict.Mark.ON_A_STOP, 0.5,
            Verdict.Mark.METAL_CONTACT, 0.01,
            Verdict.Mark.STUCK, 0.1);

    @TempDir
    Path folder;

    @Test
    void noneThrowsNoneLiesAndNextToNoneIsUnsolved() {
        TortureRun run = new TortureRun(2000, 7, folder);
        Tally tally = run.run();
        System.out.println(run.json());
        assertEquals(2000, tally.cases());
        assertEquals(0, tally.thrown());
        assertTrue(tally.worst() <= 1e-9, "worst imbalance " + tally.worst());
        assertTrue(tally.worstForce() <= 1e-9, "worst force left on a spool " + tally.worstForce());
        assertTrue(tally.unsolved() <= 1, tally.unsolved() + " unsolved");
        FLOORS.forEach((mark, floor) ->
                assertTrue(tally.share(mark) > floor, "a tame mix: only " + tally.share(mark) + " " + mark));
    }
}
