package hotidle.answer.torque;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.answer.torque.TorqueAnswer.BuildTorque;
import hotidle.assess.Margin;
import hotidle.study.Judgement;
import hotidle.study.StageJobs;
import hotidle.study.Wear;
import hotidle.study.Window;
import hotidle.transmission.Job;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The page from which a shop quotes: a stage as it is and one at more pressure with a stronger shaft. */
class StagesAnswerTest {

    private static final List<Job> PUMP = List.of(new Job("pump", "", OptionalDouble.of(6), OptionalDouble.empty()));

    private static Stage stage(BuildTorque held, double set, StageJobs jobs) {
        Window window = new Window(
                List.of(),
                List.of(),
                List.of(new Window.PressureRange(
                        9e5,
                        Optional.empty(),
                        18.5e5,
                        Optional.of(new Judgement.Key("stall", Margin.Kind.RELIEF, "relief")))));
        Wear wear = new Wear(
                3,
                List.of(),
                List.of(),
                Optional.of(new Wear.Together(Optional.of(0.6), List.of(), List.of(), 8)),
                List.of(),
                List.of(),
                List.of());
        return new Stage(held, set, window, wear, Optional.of(jobs));
    }

    private static StagesAnswer answer(boolean asked) {
        return new StagesAnswer(
                UnitSystem.METRIC,
                "rig",
                "worn",
                List.of(
                        stage(
                                MadeTorque.build("sound", 600, asked ? MadeTorque.from12(700) : Optional.empty()),
                                10e5,
                                new StageJobs(PUMP, List.of(), List.of())),
                        stage(
                                MadeTorque.build("strong", 800, asked ? MadeTorque.from12(700) : Optional.empty()),
                                16e5,
                                new StageJobs(
                                        PUMP,
                                        List.of(),
                                        List.of("input-shaft"),
                                        Optional.of(new StageJobs.OtherSet(10e5, 16e5, true, false, true))))),
                List.of());
    }

    private static String row(String screen, String label) {
        return screen.lines()
                .filter(line -> line.startsWith(label + " "))
                .findFirst()
                .orElseThrow(() -> new AssertionError(label + " in " + screen));
    }

    @Test
    void whatTakesAStageToMorePressureStandsBesideItsJobs() {
        String screen = answer(false).screen();
        assertTrue(row(screen, "beyond the jobs").matches("beyond the jobs +- +spring, command, input-shaft"), screen);
        assertTrue(
                screen.replaceAll("\\s+", " ")
                        .contains(
                                "Each from worn: pump. strong, beyond the jobs: set from 10.00 to 16.00 bar by spring and command,"
                                        + " another input-shaft, bought or made."),
                screen);
        assertTrue(screen.contains("neither their hours nor their price"), screen);
    }

    @Test
    void lineAndSetPressureStandApartAndAreExplained() {
        String screen = answer(false).screen();
        assertTrue(row(screen, "line pressure there").contains("15.00 bar, commanded 14.00"), screen);
        assertTrue(row(screen, "set pressure, forward").matches(".*10.00 bar +16.00 bar"), screen);
        assertTrue(screen.contains("in reverse raised by the regulator's areas"), screen);
        assertTrue(screen.replaceAll("\\s+", " ").contains("with their factor of 1.20 in hand"), screen);
    }

    @Test
    void theNextToGiveIsOfAnyRange() {
        assertTrue(row(answer(false).screen(), "then").contains("low-clutch in first x1.01"));
    }

    @Test
    void aTorqueThatIsAskedForIsARowAndASentenceAStage() {
        String screen = answer(true).screen();
        assertTrue(row(screen, "holds 700 N.m").matches(".*NO, from 12.00 bar +yes"), screen);
        assertTrue(screen.contains("sound does NOT hold 700 N.m"), screen);
        assertTrue(screen.contains("strong holds 700 N.m in every range"), screen);
        assertTrue(screen.lines().count() <= 24, screen);
        assertTrue(answer(false).screen().lines().noneMatch(line -> line.startsWith("holds 700")));
    }

    @Test
    void jsonHasWhatIsBeyondTheJobs() {
        StagesRecord record = (StagesRecord) answer(true).json();
        StagesRecord.OtherSetRecord set = record.stages().get(1).otherSet().orElseThrow();
        assertEquals(16e5, set.afterPa());
        assertTrue(set.spring() && set.command() && !set.areas());
        assertTrue(record.stages().get(0).otherSet().isEmpty());
        assertTrue(record.stages().get(1).asked().orElseThrow().holds().orElseThrow());
    }

    @Test
    void theWholeTextHasEveryRangeToo() {
        String full = answer(false).full();
        assertTrue(
                full.contains(
                        "sound holds 600 N.m of engine torque in every range (driving conditions ask up to 540);"),
                full);
        assertTrue(
                full.replaceAll("\\s+", " ")
                        .contains("(14.00 commanded, set to 10.00), then low-clutch in first at x1.01"),
                full);
    }
}
