package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.network.Conditions;
import hotidle.network.Group;
import hotidle.network.Network;
import hotidle.network.Node;
import hotidle.network.Placed;
import hotidle.network.Signal;
import hotidle.oil.Oil;
import hotidle.part.Bushing;
import hotidle.part.Fit;
import hotidle.part.Setting;
import hotidle.result.Solution;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * The hub under two chambers opposite each other.
 *
 * <pre>
 * primary → ( hub ) ← secondary,  weight ↓ ;  behind 0 ── film ── drain 0, suction 0
 * </pre>
 */
class SideLoadTest {

    private static final double AREA = 0.78 * 0.0134 * 0.084;
    private static final double WEIGHT = 90;

    private static final Conditions CONDITIONS = new Conditions(
            20,
            "any",
            Setting.Lockup.OFF,
            new Oil("bench", Oil.Walther.constant(8e-6), 850, 0, 0, 0, 0),
            101_325,
            Map.of("film", 383.15),
            Map.of());

    private static Solution hub(double primary, double secondary) {
        Bushing bushing = new Bushing(
                Fit.same(0.050070, 0.050),
                0.017,
                List.of(new Bushing.SideLoad(AREA, 0), new Bushing.SideLoad(AREA, Math.PI)),
                WEIGHT,
                -Math.PI / 2,
                1.6e-6,
                1.5e6,
                0,
                false);
        Placed hub = new Placed(
                "hub",
                bushing,
                "film",
                Group.HUB,
                List.of("behind", "drain"),
                List.of(
                        Signal.pressure("one"),
                        Signal.pressure("suction"),
                        Signal.pressure("other"),
                        Signal.pressure("suction")));
        List<Node> nodes = List.of(
                Node.held("behind", 0),
                Node.held("drain", 0),
                Node.held("suction", 0),
                Node.held("one", primary),
                Node.held("other", secondary));
        return SinglePart.run(new Network(nodes, List.of(hub)), CONDITIONS, "hub", Map.of())
                .state()
                .orElseThrow();
    }

    private static double load(double primary, double secondary) {
        return hub(primary, secondary).measure("hub", Bushing.LOAD).orElseThrow();
    }

    @Test
    void whileBothChambersCarryTheSamePressureTheHubCarriesItsWeightOnly() {
        for (double pressure : new double[] {0, 5e5, 10.3e5, 18.6e5}) {
            assertEquals(WEIGHT, load(pressure, pressure), 1e-9 * WEIGHT);
        }
    }

    @Test
    void onceTheSecondaryIsUnloadedTheSideLoadGrowsInProportionToLinePressure() {
        for (double pressure : new double[] {2e5, 5e5, 10.3e5, 18.6e5}) {
            double load = load(pressure, 0);
            double side = Math.sqrt(load * load - WEIGHT * WEIGHT);
            assertEquals(AREA * pressure, side, 1e-9 * side);
        }
    }

    @Test
    void unloadingTheSecondaryThinsTheFilm() {
        double before = hub(10.3e5, 10.3e5).measure("hub", Bushing.LEAST_FILM).orElseThrow();
        double after = hub(10.3e5, 0).measure("hub", Bushing.LEAST_FILM).orElseThrow();
        assertTrue(after < before / 2, after + " m against " + before + " m");
    }
}
