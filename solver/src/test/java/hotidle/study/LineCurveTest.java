package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** The worn ten nodes, idling at 650 rpm. */
class LineCurveTest {

    private static final Transmission UNIT = TenNodes.worn(4);
    private static final DutyPoint IDLE = UNIT.duties().get(0);
    private static final List<Double> SPEEDS =
            DoubleStream.of(500, 1000, 2000, 3000).map(rpm -> rpm / 60).boxed().toList();

    @Test
    void theLineIsToTheLastBitThatOfASweepOverTheSameSpeeds() {
        List<Double> withIdle = DoubleStream.of(500, 650, 1000, 2000, 3000)
                .map(rpm -> rpm / 60)
                .boxed()
                .toList();
        SpeedSweep sweep = SpeedSweep.run(UNIT, IDLE, withIdle);
        LineCurve curve = LineCurve.of(UNIT, IDLE, SPEEDS, () -> {});
        assertEquals(5, curve.points().size());
        for (int i = 0; i < 5; i++) {
            LineCurve.LineAtSpeed point = curve.points().get(i);
            double line = sweep.shown().get(i).state().orElseThrow().pressure("line");
            assertEquals(withIdle.get(i), point.speed());
            assertEquals(line, point.line().orElseThrow());
        }
    }

    @Test
    void itsOwnStateIsThatOfTheDutyAndStandsOnTheCurve() {
        LineCurve curve = LineCurve.of(UNIT, IDLE, SPEEDS, () -> {});
        assertEquals(IDLE.speed(), curve.own().conditions().speed());
        double own = curve.own().state().orElseThrow().pressure("line");
        assertEquals(own, curve.points().get(1).line().orElseThrow());
        double alone = AtDuty.solved(UNIT, IDLE).state().orElseThrow().pressure("line");
        assertEquals(alone, own, 1e-6 * alone);
    }

    @Test
    void whatIsCommandedStandsBesideIt() {
        LineCurve curve = LineCurve.of(UNIT, IDLE, SPEEDS, () -> {});
        double set = UNIT.setPressure(UNIT.conditions(IDLE)).orElseThrow();
        assertTrue(curve.points().get(0).line().orElseThrow() < set);
        assertEquals(set, curve.points().get(4).line().orElseThrow(), 0.15 * set); // a regulator rises with speed
        curve.points().forEach(point -> assertEquals(set, point.set().orElseThrow(), 1e-9 * set));
    }

    @Test
    void workForWhichNobodyWaitsEndsAtTheNextState() {
        int[] states = {0};
        assertThrows(
                IllegalStateException.class,
                () -> LineCurve.of(UNIT, IDLE, SPEEDS, () -> {
                    states[0]++;
                    if (states[0] == 2) {
                        throw new IllegalStateException("nobody waits");
                    }
                }));
        assertEquals(2, states[0]);
    }
}
