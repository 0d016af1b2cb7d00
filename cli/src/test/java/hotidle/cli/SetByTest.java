package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Raising a unit by the spring of its regulator alone, from the command line. */
class SetByTest {

    private static Run sweep(String duty, String... more) {
        List<String> words = new java.util.ArrayList<>(List.of(
                "sweep",
                "vane-six",
                "--build",
                "fresh",
                "--duty",
                duty,
                "--speed",
                "2000..3000/1000rpm",
                "--format",
                "csv"));
        words.addAll(List.of(more));
        return Run.of(words.toArray(String[]::new));
    }

    /** The set pressure in the first row, psi. */
    private static double set(Run run) {
        List<String> lines = run.out().lines().toList();
        int column = List.of(lines.get(0).split(",", -1)).indexOf("set psi");
        return Double.parseDouble(lines.get(1).split(",", -1)[column]);
    }

    @Test
    void theSpringRaisesHotIdleByAsMuchAsStallAndTheCommandByItsShare() {
        double idle = set(sweep("hot-idle"));
        double stall = set(sweep("stall"));
        double more = set(sweep("stall", "--set", "210psi", "--set-by", "spring")) - stall;
        assertTrue(more > 15, more + " psi");
        assertEquals(idle + more, set(sweep("hot-idle", "--set", "210psi", "--set-by", "spring")), 1.1);
        assertTrue(set(sweep("hot-idle", "--set", "210psi")) < idle + more - 5);
    }

    @Test
    void windowAndMapTakeItToo() {
        String[] window = {
            "window", "vane-six", "--build", "worn", "--try", "160..420/130psi", "--speed", "600..3000/1200rpm"
        };
        String both = Run.of(window).out();
        String[] bySpring = java.util.Arrays.copyOf(window, window.length + 2);
        bySpring[window.length] = "--set-by";
        bySpring[window.length + 1] = "spring";
        Run alone = Run.of(bySpring);
        assertEquals(HotIdle.DONE, alone.code(), alone.err());
        assertNotEquals(both, alone.out());
        Run map = Run.of(
                "map",
                "vane-six",
                "--build",
                "fresh",
                "--try",
                "180..240/60psi",
                "--set-by",
                "spring",
                "--speed",
                "600..3000/1200rpm",
                "--vary",
                "plate.gap=0.005..0.02/0.015mm");
        assertEquals(HotIdle.DONE, map.code(), map.err());
    }

    @Test
    void lessThanThePilotHoldsAloneIsRefusedWithTheReason() {
        Run run = sweep("stall", "--set", "100psi", "--set-by", "spring");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("by its spring alone the line cannot be set below 130 psi"), run.err());
        Run wrong = sweep("stall", "--set", "210psi", "--set-by", "shim");
        assertEquals(2, wrong.code());
        assertTrue(wrong.err().contains("mend: write spring or command-and-spring"), wrong.err());
    }
}
