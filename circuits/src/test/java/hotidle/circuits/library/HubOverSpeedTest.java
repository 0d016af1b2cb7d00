package hotidle.circuits.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Roles;
import hotidle.network.Placed;
import hotidle.part.Bushing;
import hotidle.result.Solution;
import hotidle.study.SpeedSweep;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Load and film of the demonstration unit's hub over engine speed. */
class HubOverSpeedTest {

    private static final double PSI = 6894.757293168361;
    private static final double WEIGHT = 90;
    private static final Ready UNIT = Ready.of("shuttle-five");
    private static final List<Double> SPEEDS =
            IntStream.rangeClosed(8, 80).mapToObj(i -> 50.0 * i / 60).toList();

    private static SpeedSweep sweep(Transmission unit) {
        return SpeedSweep.run(unit, unit.duties().get(0), SPEEDS);
    }

    private static double side(Solution state) {
        double load = state.measure("hub-bushing", Bushing.LOAD).orElseThrow();
        return Math.sqrt(Math.max(load * load - WEIGHT * WEIGHT, 0));
    }

    /** Headroom of the film over the least one allowed. */
    private static double margin(Solution state) {
        return state.measure("hub-bushing", Bushing.EDGE_FILM).orElseThrow()
                        / state.measure("hub-bushing", Bushing.PERMISSIBLE_FILM).orElseThrow()
                - 1;
    }

    private static double area(Transmission unit) {
        Placed hub = Roles.of(unit).hub().orElseThrow();
        return ((Bushing) hub.part()).loads().get(0).area();
    }

    /** Joined, the two chambers differ by the drop of the check valve only: the side load is a hundredth of a chamber's own. */
    @Test
    void theHubCarriesNextToNothingButWeightUntilTheSecondaryIsUnloaded() {
        for (String build : List.of("fresh", "worn", "restored")) {
            Transmission unit = UNIT.circuit().unit(build);
            SpeedSweep sweep = sweep(unit);
            double unloading = sweep.unloading().orElseThrow();
            for (Solution state : sweep.states()) {
                if (state.conditions().speed() < unloading) {
                    double one = area(unit) * state.pressure("line");
                    assertTrue(side(state) < 0.02 * one, build + ": " + side(state) + " N of " + one + " N");
                }
            }
        }
    }

    @Test
    void onceUnloadedTheSideLoadFollowsTheSetPressure() {
        Transmission restored = UNIT.circuit().unit("restored");
        double rpm = 1000;
        List<Double> shares = new ArrayList<>();
        for (double set : new double[] {100, 150, 200, 240}) {
            Transmission unit = SetPressure.of(restored, set * PSI);
            Solution state = sweep(unit).states().stream()
                    .filter(one -> Math.abs(one.conditions().speed() * 60 - rpm) < 1e-6)
                    .findFirst()
                    .orElseThrow();
            double net = state.pressure("line") - state.pressure("secondary-out");
            assertEquals(area(unit) * net, side(state), 1e-6 * side(state), set + " psi");
            shares.add(side(state) / state.pressure("line"));
        }
        // what the second chamber still carries, being unloaded through the regulator, is all that keeps it from
        // proportion
        for (double share : shares) {
            assertEquals(shares.get(0), share, 0.1 * shares.get(0), shares.toString());
        }
    }

    @Test
    void theFilmMarginGrowsWithSpeedButForOneFallWhereTheSecondaryIsUnloaded() {
        for (String build : List.of("fresh", "worn", "restored", "restored-raised")) {
            SpeedSweep sweep = sweep(UNIT.circuit().unit(build));
            double from = sweep.unloading().orElseThrow();
            double to = sweep.bypassing().orElseThrow();
            Solution before = null;
            double highest = 0;
            for (Solution state : sweep.states()) {
                double speed = state.conditions().speed();
                if (before != null && (speed < from || before.conditions().speed() > 1.1 * to)) {
                    assertTrue(margin(state) > margin(before), build + " at " + speed * 60 + " rpm");
                }
                highest = speed < from ? Math.max(highest, margin(state) + 1) : highest;
                before = state;
            }
            double lowest = margin(sweep.thinnestFilm().orElseThrow()) + 1;
            assertTrue(highest > 2 * lowest, build + ": the film falls from " + highest + " to " + lowest);
        }
    }
}
