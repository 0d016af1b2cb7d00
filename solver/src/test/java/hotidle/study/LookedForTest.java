package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.result.Solution;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** The worn ten nodes, whose line is regulated only above hot idle, swept past the speeds that a reader looks for. */
class LookedForTest {

    private static final Transmission UNIT = TenNodes.worn(4);
    private static final DutyPoint IDLE = UNIT.duties().get(0);

    private static SpeedSweep sweep(double... rpm) {
        return SpeedSweep.run(
                UNIT, IDLE, DoubleStream.of(rpm).map(one -> one / 60).boxed().toList());
    }

    private static List<Double> speeds(SpeedSweep sweep) {
        return sweep.lookedFor().stream()
                .map(shown -> shown.outcome().conditions().speed())
                .toList();
    }

    @Test
    void idleAndTheOnsetOfRegulationAreLookedForInTheOrderOfSpeed() {
        SpeedSweep sweep = sweep(500, 1000, 2000, 3000);
        double onset = sweep.onset().orElseThrow();
        assertEquals(List.of(650 / 60.0, onset), speeds(sweep));
        assertTrue(onset > 650 / 60.0);
    }

    @Test
    void atIdleTheLineIsThatOfIdleSolvedAloneAndAtTheOnsetItIsTheSetPressure() {
        SpeedSweep sweep = sweep(500, 1000, 2000, 3000);
        double alone = AtDuty.solved(UNIT, IDLE).state().orElseThrow().pressure("line");
        assertEquals(alone, line(sweep, 0), 1e-6 * alone);
        double set = UNIT.setPressure(UNIT.conditions(IDLE)).orElseThrow();
        assertEquals(set, line(sweep, 1), 0.02 * set);
        assertTrue(line(sweep, 1) >= set * (1 - 1e-9));
        assertTrue(line(sweep, 0) < line(sweep, 1));
    }

    private static double line(SpeedSweep sweep, int number) {
        Solution state = sweep.lookedFor().get(number).outcome().state().orElseThrow();
        return state.pressure("line");
    }

    @Test
    void aSpeedThatTheSeriesShowsWithinARevolutionAMinuteIsNotShownAgain() {
        assertEquals(1, speeds(sweep(500, 650.9, 1000, 2000, 3000)).size());
        assertEquals(2, speeds(sweep(500, 651.1, 1000, 2000, 3000)).size());
    }

    @Test
    void nothingIsLookedForBeyondTheSeries() {
        SpeedSweep fast = sweep(2800, 2900, 3000);
        assertEquals(List.of(), speeds(fast));
        SpeedSweep slow = sweep(500, 600);
        assertEquals(List.of(), speeds(slow), "it ends below idle");
    }
}
