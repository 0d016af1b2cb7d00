package hotidle.validation;

import hotidle.law.RatedPoint;
import hotidle.network.Conditions;
import hotidle.network.Group;
import hotidle.network.Network;
import hotidle.network.Node;
import hotidle.network.Placed;
import hotidle.newton.SteadySolver;
import hotidle.oil.Oil;
import hotidle.part.Cooler;
import hotidle.part.Passage;
import hotidle.part.Setting;
import hotidle.result.Solution;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Whole networks. */
final class NetworkRows {

    private static final String PART = "Network";

    /** Share of the drop that is not kinetic in a part that stands for h = r·Q²; it moves a flow by half of this. */
    private static final double VISCOUS_TRACE = 1e-9;

    private static final double WATER = 1000;

    /** The textbooks' unit of flow, taken as 1 mL/s: the solver's imbalances are meant for such flows. */
    private static final double UNIT = 1e-6;

    private NetworkRows() {}

    static List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        rows.addAll(diamond());
        rows.addAll(resistors());
        rows.addAll(parallel());
        return rows;
    }

    private static Solution solve(double kinematicViscosity, List<Node> nodes, List<Placed> parts) {
        Oil.Walther line = Oil.Walther.constant(kinematicViscosity);
        Oil water = new Oil("water", line, WATER, 0, 0, 0, 0);
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

    /** The classic two-loop diamond; in closed form 60·x = 400. */
    private static List<Row> diamond() {
        Solution state = solve(
                1e-6,
                List.of(Node.held("1", 100), Node.free("2"), Node.free("3"), Node.held("4", 0)),
                List.of(
                        square("12", 1, "1", "2"),
                        square("13", 5, "1", "3"),
                        square("23", 1, "2", "3"),
                        square("24", 5, "2", "4"),
                        square("34", 1, "3", "4")));
        String inputs = "two-loop diamond, 10 in at 1, out at 4, h = k·Q², k12 = k34 = k23 = 1, k13 = k24 = 5";
        Source source = Source.memory("Wikipedia, Hardy Cross method, worked example");
        return List.of(
                Row.of(PART, "flow 1 to 2", inputs, "6.667", "", state.flow("12") / UNIT, source),
                Row.of(PART, "flow 2 to 3", inputs, "3.333", "", state.flow("23") / UNIT, source),
                Row.of(PART, "flow 1 to 3", inputs, "3.333", "", state.flow("13") / UNIT, source));
    }

    private static List<Row> resistors() {
        Solution state = solve(
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
        String inputs = "resistors 12: 5, 23: 10, 34: 5, 45: 15, 52: 10, 56: 20 Ω, 200 V at 1, 0 at 6";
        Source source = Source.memory("S. C. Chapra, R. P. Canale, Numerical Methods for Engineers, §12.3");
        return List.of(
                Row.of(PART, "current 1 to 2", inputs, "6.1538", "A", state.flow("12") / UNIT, source),
                Row.of(PART, "current 3 to 2", inputs, "-1.5385", "A", state.flow("32") / UNIT, source),
                Row.of(PART, "current 5 to 2", inputs, "-4.6154", "A", state.flow("52") / UNIT, source),
                Row.of(PART, "voltage at 2", inputs, "169.23", "V", state.pressure("2"), source),
                Row.of(PART, "voltage at 5", inputs, "123.08", "V", state.pressure("5"), source));
    }

    private static List<Row> parallel() {
        Solution state = solve(
                1.02e-6,
                List.of(Node.held("a", WATER * Trade.GRAVITY * 20.3), Node.held("out", 0), Node.free("b")),
                List.of(
                        Placed.of("1", new Passage(0.08, 100, 0.24e-3, 0), "all", Group.PLATE, "a", "b"),
                        Placed.of("2", new Passage(0.06, 150, 0.12e-3, 0), "all", Group.PLATE, "a", "b"),
                        Placed.of("3", new Passage(0.04, 80, 0.20e-3, 0), "all", Group.PLATE, "a", "b"),
                        Placed.of("wide", new Passage(0.5, 0.01, 0, 0), "all", Group.PLATE, "b", "out")));
        return List.of(
                pipe(state, "1", "62.5", "100 m, 8 cm, e 0.24 mm"),
                pipe(state, "2", "25.9", "150 m, 6 cm, e 0.12 mm"),
                pipe(state, "3", "11.4", "80 m, 4 cm, e 0.20 mm"),
                pipe(state, "wide", "99.8", "all three"));
    }

    private static Row pipe(Solution state, String key, String published, String inputs) {
        return Row.of(
                        PART,
                        "flow in parallel pipes",
                        inputs + ", water of 1.02 mm²/s, head 20.3 m",
                        published,
                        "m³/h",
                        state.flow(key) * 3600,
                        Source.found("F. M. White, Fluid Mechanics, 7th ed., ex. 6.18"))
                .withinShare(0.01, "1 %: the book's friction is Colebrook's, ours is Churchill's");
    }
}
