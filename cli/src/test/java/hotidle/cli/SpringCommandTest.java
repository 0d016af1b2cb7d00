package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** spring as a user meets it. */
class SpringCommandTest {

    @Test
    void theAnswerFitsAScreen() {
        for (String circuit : new String[] {"shuttle-five", "crescent-four", "vane-six"}) {
            Run run = Run.of("spring", circuit, "--build", "worn", "--set", "240psi");
            assertEquals(HotIdle.DONE, run.code(), run.err());
            assertTrue(run.out().lines().count() <= 24, run.out());
            assertTrue(run.out().lines().allMatch(line -> line.length() <= 100), run.out());
        }
    }

    @Test
    void shimsThatPressTheCoilsTogetherBeforeTheStopAreTold(@TempDir Path folder) throws Exception {
        String file = Run.changed(
                folder,
                "vane-six",
                "    stops: [0 mm, 4 mm]",
                "    stops: [0 mm, 4 mm]\n    installed-height: 40 mm\n    solid-height: 34 mm");
        Run run = Run.of("spring", file, "--set", "200psi", "--units", "metric");
        assertEquals(HotIdle.DONE, run.code(), run.err());
        assertTrue(run.out().contains("left at the stop"), run.out());
        Run more = Run.of("spring", file, "--set", "220psi", "--units", "metric");
        assertTrue(more.out().contains("SOLID"), more.out());
        Run most = Run.of("spring", file, "--set", "300psi", "--units", "metric");
        assertTrue(most.out().contains("no: coils touch first"), most.out());
    }

    @Test
    void aSpringCannotPullTheLineBelowWhatTheSignalHolds() {
        Run run = Run.of("spring", "vane-six", "--set", "100psi");
        assertEquals(HotIdle.DONE, run.code(), run.err());
        assertTrue(run.out().contains("no: signals alone hold more"), run.out());
        assertTrue(run.out().contains("boost diameter"), run.out());
    }

    /** Whoever wants less at idle asks for it by the set pressure: the spring takes as much off both. */
    @Test
    void aPressureBelowWhatSignalsHoldSaysWhichSetPressureLowersHotIdle() {
        String said = Run.of("spring", "vane-six", "--set", "60psi").out().replaceAll("\\s+", " ");
        assertTrue(said.contains("that the gauge reads at hot-idle now, give a --set between "), said);
        String lower = Run.of("spring", "vane-six", "--set", "180psi").out();
        assertTrue(lower.contains("take out "), lower);
        assertTrue(lower.contains("with less pressure clutches and lockup hold less"), lower);
    }

    @Test
    void theAnswerAfterJobsFitsAScreenWithWhatStandsAboveIt() {
        for (String set : new String[] {"120psi", "300psi"}) {
            Run run = Run.of(
                    "spring",
                    "crescent-four",
                    "--build",
                    "worn",
                    "--job",
                    "pump",
                    "--job",
                    "regulator bore",
                    "--set",
                    set);
            assertEquals(HotIdle.DONE, run.code(), run.err());
            assertTrue(run.out().lines().count() + run.err().lines().count() <= 24, run.err() + run.out());
        }
    }

    @Test
    void aSetPressureAboveWhichTheInputShaftGivesFirstBuysNoTorque() {
        Run high = Run.of("spring", "shuttle-five", "--build", "fresh", "--set", "240psi");
        assertTrue(
                high.out().contains("fresh: above 207 psi set pressure input-shaft gives first; more buys no torque."),
                high.out());
        Run low = Run.of("spring", "shuttle-five", "--build", "fresh", "--set", "180psi");
        assertTrue(!low.out().contains("gives first"), low.out());
    }

    @Test
    void aPumpThatCannotHoldThePressureIsSaidBeforeAnySpring() {
        Run run = Run.of("spring", "shuttle-five", "--build", "worn", "--set", "240psi");
        assertTrue(
                run.out().startsWith("worn: NO SPRING DOES IT. The pump cannot hold 240 psi at hot-idle"), run.out());
    }

    /** The verdict is that of margins on the same spring. */
    @Test
    void whatTheUnitComesToWithThatSpringIsSaidFirst() {
        for (String[] asked : new String[][] {{"shuttle-five", "240psi"}, {"crescent-four", "160psi"}}) {
            String spring = words(Run.of("spring", asked[0], "--build", "fresh", "--set", asked[1]));
            String margins =
                    words(Run.of("margins", asked[0], "--build", "fresh", "--set", asked[1], "--set-by", "spring"));
            String verdict = spring.substring(0, spring.indexOf(" fresh: set pressure"));
            assertTrue(verdict.startsWith("fresh with that preload: "), spring);
            assertTrue(margins.contains(verdict.substring(verdict.indexOf(": "))), verdict + "\n" + margins);
        }
        assertTrue(words(Run.of("spring", "shuttle-five", "--build", "fresh", "--set", "240psi"))
                .startsWith("fresh with that preload: FAILS. First limit: hub unit load"));
    }

    /** Compare scales the command with the spring, which a spring alone does not do. */
    @Test
    void whatHotIdleIsCommandedThenIsSaidWhereCompareAsksSomethingElse() {
        String said = words(Run.of("spring", "vane-six", "--set", "300psi"));
        assertTrue(said.contains("A spring moves the command everywhere: hot-idle from 79 psi to 189 psi."), said);
        assertTrue(said.contains("give them --set-by spring"), said);
        String level = words(Run.of("spring", "shuttle-five", "--set", "200psi", "--full"));
        assertTrue(level.contains("hot-idle from 150 psi to 200 psi."), level);
        assertTrue(!level.contains("--set-by spring for this"), level);
    }

    /** A throttle valve asks for more at more throttle than that driving condition has. */
    @Test
    void reverseOfAThrottleValveUnitIsToldWithItsDrivingCondition() {
        String said = Run.of("spring", "crescent-four", "--set", "160psi").out();
        assertTrue(said.contains("reverse at backing-up, commanded"), said);
        assertTrue(!said.contains("reverse at most"), said);
        assertTrue(Run.of("spring", "vane-six", "--set", "200psi").out().contains("reverse at most, commanded"));
    }

    @Test
    void whereThePressureIsThereAlreadyNoShimIsTakenOut() {
        String said = Run.of("spring", "shuttle-five", "--build", "restored-part-throttle", "--set", "240psi")
                .out();
        assertTrue(!said.contains("take out"), said);
        assertTrue(said.contains("raised pressure loads"), said);
    }

    private static String words(Run run) {
        assertEquals(HotIdle.DONE, run.code(), run.err());
        return run.out().replaceAll("\\s+", " ");
    }
}
