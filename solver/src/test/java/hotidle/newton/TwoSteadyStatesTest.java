package hotidle.newton;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.network.Conditions;
import hotidle.part.OwnState;
import hotidle.result.Outcome;
import hotidle.result.Solution;
import hotidle.result.Stability;
import hotidle.study.SpeedSweep;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** A valve that latches has two steady states over a range of speeds, and a third that it never stays in. */
class TwoSteadyStatesTest {

    private static final List<Double> SPEEDS = DoubleStream.iterate(0.5, speed -> speed < 6, speed -> speed + 0.0625)
            .boxed()
            .toList();

    private final Transmission unit = Latch.unit();
    private final DutyPoint duty = unit.duties().get(0);

    private SpeedSweep sweep(SpeedSweep.From from) {
        return SpeedSweep.run(unit, duty, SPEEDS, from);
    }

    private static double position(Outcome outcome) {
        return outcome.state().orElseThrow().own("latch", OwnState.POSITION);
    }

    @Test
    void risingAndFallingSweepsFindBothAndNameThem() {
        SpeedSweep sweep = sweep(SpeedSweep.From.RISING);
        assertTrue(sweep.differences().size() >= 5, sweep.differences().size() + " speeds with two states");
        for (SpeedSweep.Hysteresis difference : sweep.differences()) {
            assertEquals("latch", difference.part());
            assertTrue(difference.rising() < 1e-3, "shut while the speed rises, " + difference.rising());
            assertTrue(difference.falling() > 1.5e-3, "open while it falls, " + difference.falling());
        }
    }

    @Test
    void whatIsShownIsWhatWasAskedFor() {
        SpeedSweep rising = sweep(SpeedSweep.From.RISING);
        SpeedSweep falling = sweep(SpeedSweep.From.FALLING);
        SpeedSweep cold = sweep(SpeedSweep.From.COLD);
        double speed = rising.differences().get(0).speed();
        int at = SPEEDS.indexOf(speed);
        assertTrue(position(rising.shown().get(at)) < 1e-3);
        assertTrue(position(falling.shown().get(at)) > 1.5e-3);
        assertTrue(position(cold.shown().get(at)) < 1e-3, "a cold circuit starts with the valve on its stop");
    }

    @Test
    void bothAreStable() {
        SpeedSweep sweep = sweep(SpeedSweep.From.RISING);
        SteadySolver solver = new SteadySolver(unit.network());
        int at = SPEEDS.indexOf(sweep.differences().get(0).speed());
        assertEquals(
                Stability.STABLE,
                solver.stability(sweep.rising().get(at).state().orElseThrow()));
        assertEquals(
                Stability.STABLE,
                solver.stability(sweep.falling().get(at).state().orElseThrow()));
    }

    /** Between them lies a balance of forces on the edge, which Newton finds from beside it. */
    @Test
    void theStateBetweenThemIsUnstableAndIsLeft() {
        SpeedSweep sweep = sweep(SpeedSweep.From.RISING);
        int at = SPEEDS.indexOf(
                sweep.differences().get(sweep.differences().size() / 2).speed());
        Solution shut = sweep.rising().get(at).state().orElseThrow();
        Solution between =
                between(shut.conditions(), shut, sweep.falling().get(at).state().orElseThrow());
        assertEquals(Stability.UNSTABLE, new SteadySolver(unit.network()).stability(between));

        Solution left = new SteadySolver(unit.network())
                .solve(shut.conditions(), Optional.of(between))
                .state()
                .orElseThrow();
        assertTrue(left.method().contains("away from an unstable state"), left.method());
        assertEquals(Stability.STABLE, new SteadySolver(unit.network()).stability(left));
    }

    private Solution between(Conditions conditions, Solution one, Solution other) {
        for (double share = 0.02; share < 1; share += 0.02) {
            Equations equations = new Equations(unit.network(), Laws.OWN);
            equations.set(conditions);
            Newton newton = new Newton(equations);
            double[] unknowns = new double[equations.size()];
            for (String node : one.pressures().keySet()) {
                set(equations, unknowns, node, mix(one.pressure(node), other.pressure(node), share));
            }
            for (String part : one.states().keySet()) {
                for (OwnState state : one.states().get(part).keySet()) {
                    set(
                            equations,
                            unknowns,
                            part + "." + state.name(),
                            mix(one.own(part, state), other.own(part, state), share));
                }
            }
            if (newton.solve(unknowns, Newton.POLISHED) && newton.negativeDeterminant()) {
                return new SteadySolver(equations).state(unknowns);
            }
        }
        throw new AssertionError("no unstable state was met");
    }

    private static double mix(double one, double other, double share) {
        return one + share * (other - one);
    }

    private static void set(Equations equations, double[] unknowns, String name, double value) {
        if (equations.unknown(name) != null) {
            unknowns[equations.unknown(name)] = value;
        }
    }
}
