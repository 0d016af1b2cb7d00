package hotidle.network;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.law.RatedPoint;
import hotidle.newton.SteadySolver;
import hotidle.oil.Oil;
import hotidle.part.Cooler;
import hotidle.part.Passage;
import hotidle.part.Setting;
import hotidle.result.State;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Whole networks against published flows. */
class NetworkPublishedTest {

    /** Share of the drop that is not kinetic in a part that stands for h = r·Q²; it moves a flow by half of this. */
    private static final double VISCOUS_TRACE = 1e-9;

    private static final double WATER = 1000;

    /** The textbooks' unit of flow, taken as 1 mL/s: the solver's imbalances are meant for such flows. */
    private static final double UNIT = 1e-6;

    private static State solve(double kinematicViscosity, List<Node> nodes, List<Placed> parts) {
        Oil.Walther line = Oil.Walther.constant(kinematicViscosity);
        Oil water = new Oil("water", line.a(), line.b(), WATER, 0, 0, 0, 0);
        Conditions conditions = new Conditions(
                0, "none", Setting.Lockup.OFF, water, 101_325, Map.of("all", Oil.ZERO_CELSIUS + 15), Map.of());
        return new SteadySolver(new Network(nodes, parts))
                .solve(conditions)
                .state()
                .orElseThrow();
    }

    /** A link with Δp = r·Q². */
    private static Placed square(String name, double r, String from, String to) {
        RatedPoint point = new RatedPoint(UNIT, r, 1e-3, WATER, 1 - VISCOUS_TRACE);
        return Placed.of(name, new Cooler(point, 0, 0), "all", Group.COOLER, from, to);
    }

    /** A link with Δp = r·Q at a dynamic viscosity of 1e-3 Pa·s. */
    private static Placed linear(String name, double r, String from, String to) {
        RatedPoint point = new RatedPoint(UNIT, r, 1e-3, WATER, 0);
        return Placed.of(name, new Cooler(point, 0, 0), "all", Group.COOLER, from, to);
    }

    /** Three reservoirs at 135, 120 and 112 m meet; h = r·Q², r = 0.7594, 36.33, 8.168: junction at 131.6 m (textbook example, source not named). */
    @Test
    void threeReservoirsMeetAtThePublishedHead() {
        State state = solve(
                1e-6,
                List.of(Node.held("a", 135), Node.held("b", 120), Node.held("c", 112), Node.free("junction")),
                List.of(
                        square("one", 0.7594, "a", "junction"),
                        square("two", 36.33, "junction", "b"),
                        square("three", 8.168, "junction", "c")));
        assertEquals(131.6, state.pressure("junction"), 0.05);
        assertEquals(2.116, state.flow("one") / UNIT, 0.005);
    }

    /** Two-loop diamond of Hardy Cross's method, h = k·Q² (classic, from memory; closed form 60·x = 400): 20/3, 10/3, 10/3. */
    @Test
    void diamondOfTwoLoopsCarriesTheClosedFormsFlows() {
        State state = solve(
                1e-6,
                List.of(Node.held("1", 100), Node.free("2"), Node.free("3"), Node.held("4", 0)),
                List.of(
                        square("12", 1, "1", "2"),
                        square("13", 5, "1", "3"),
                        square("23", 1, "2", "3"),
                        square("24", 5, "2", "4"),
                        square("34", 1, "3", "4")));
        assertEquals(20.0 / 3, state.flow("12") / UNIT, 1e-6);
        assertEquals(10.0 / 3, state.flow("23") / UNIT, 1e-6);
        assertEquals(10.0 / 3, state.flow("13") / UNIT, 1e-6);
    }

    /** S. C. Chapra, R. P. Canale, Numerical Methods for Engineers, §12.3 (from memory): resistors of 5 to 20 Ω between 200 V and 0. */
    @Test
    void laminarNetworkCarriesTheResistorsCurrents() {
        State state = solve(
                1e-6,
                List.of(
                        Node.held("1", 200),
                        Node.free("2"),
                        Node.free("3"),
                        Node.free("4"),
                        Node.free("5"),
                        Node.held("6", 0)),
                List.of(
                        linear("12", 5, "1", "2"),
                        linear("32", 10, "3", "2"),
                        linear("43", 5, "4", "3"),
                        linear("54", 15, "5", "4"),
                        linear("52", 10, "5", "2"),
                        linear("65", 20, "6", "5")));
        assertEquals(6.1538, state.flow("12") / UNIT, 5e-5);
        assertEquals(-1.5385, state.flow("32") / UNIT, 5e-5);
        assertEquals(-4.6154, state.flow("52") / UNIT, 5e-5);
        assertEquals(169.23, state.pressure("2"), 5e-3);
        assertEquals(123.08, state.pressure("5"), 5e-3);
    }

    /**
     * F. M. White, Fluid Mechanics, 7th ed., Ex. 6.18: three parallel pipes (100, 150, 80 m; 8, 6, 4 cm; roughness 0.24, 0.12,
     * 0.20 mm), water of 1.02e-6 m²/s, 20.3 m of head: 62.5, 25.9, 11.4 and together 99.8 m³/h. The book's friction is
     * Colebrook's, ours Churchill's, whose factor is up to 2 % higher at these Reynolds numbers: 1 % of flow is allowed for it.
     */
    @Test
    void parallelPipesCarryThePublishedFlows() {
        State state = solve(
                1.02e-6,
                List.of(Node.held("a", WATER * 9.81 * 20.3), Node.held("out", 0), Node.free("b")),
                List.of(
                        Placed.of("1", new Passage(0.08, 100, 0.24e-3, 0), "all", Group.PLATE, "a", "b"),
                        Placed.of("2", new Passage(0.06, 150, 0.12e-3, 0), "all", Group.PLATE, "a", "b"),
                        Placed.of("3", new Passage(0.04, 80, 0.20e-3, 0), "all", Group.PLATE, "a", "b"),
                        Placed.of("wide", new Passage(0.5, 0.01, 0, 0), "all", Group.PLATE, "b", "out")));
        double hour = 3600;
        assertEquals(62.5, state.flow("1") * hour, 0.625);
        assertEquals(25.9, state.flow("2") * hour, 0.259);
        assertEquals(11.4, state.flow("3") * hour, 0.114);
        assertEquals(99.8, state.flow("wide") * hour, 0.998);
    }
}
