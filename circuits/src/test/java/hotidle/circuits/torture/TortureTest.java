package hotidle.circuits.torture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.torture.Tally;
import hotidle.torture.Verdict;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two thousand circuits on the rack; {@code solver/torture} takes a million. */
class TortureTest {

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
        assertTrue(tally.unsolved() <= 1, tally.unsolved() + " unsolved");
        for (Verdict.Mark mark : Verdict.Mark.values()) {
            assertTrue(tally.share(mark) > 0.02, "a tame mix: only " + tally.share(mark) + " " + mark);
        }
    }
}
