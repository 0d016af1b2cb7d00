package hotidle.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.law.Poppet;
import hotidle.law.SeriesLoss;
import hotidle.network.Conditions;
import hotidle.network.Group;
import hotidle.network.Network;
import hotidle.network.Node;
import hotidle.network.Placed;
import hotidle.network.Signal;
import hotidle.newton.SteadySolver;
import hotidle.oil.Oil;
import hotidle.part.AnnularGap;
import hotidle.part.CheckValve;
import hotidle.part.Fit;
import hotidle.part.Orifice;
import hotidle.part.OwnState;
import hotidle.part.Part;
import hotidle.part.Passage;
import hotidle.part.PumpChamber;
import hotidle.part.PumpInlet;
import hotidle.part.PumpSlip;
import hotidle.part.Setting;
import hotidle.part.SpoolSpring;
import hotidle.part.SpoolValve;
import hotidle.result.Solution;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Small circuits solved twice: by our network, and from residuals written out here and handed to Commons Math. The formulas are written
 * again, from the sources that the laws name, so that assembly, slopes and Newton are checked and slips in a law show.
 * Past 300 lines, since four circuits are written twice each.
 */
class OutsideSolverTest {

    /** Both solvers go far below this; what is left is the stopping test of ours. */
    private static final double SAME = 1e-6;

    private static final double DENSITY = 850;
    private static final double KINEMATIC = 8e-6;
    private static final double VISCOSITY = DENSITY * KINEMATIC;
    private static final double SPEED = 25;

    private static Solution solve(List<Node> nodes, List<Placed> parts) {
        Oil oil = new Oil("plain", Oil.Walther.constant(KINEMATIC), DENSITY, 0, 0, 0, 3e4);
        Conditions conditions = new Conditions(
                SPEED, "any", Setting.Lockup.OFF, oil, 101_325, Map.of("all", Oil.ZERO_CELSIUS + 90), Map.of());
        return new SteadySolver(new Network(nodes, parts))
                .solve(conditions)
                .state()
                .orElseThrow();
    }

    private static Placed placed(String name, Part part, String from, String to) {
        return Placed.of(name, part, "all", Group.PLATE, from, to);
    }

    private static void assertSame(PlainCircuit.Solution outside, Solution ours) {
        outside.pressures()
                .forEach((node, p) -> assertEquals(p, ours.pressure(node), SAME * Math.abs(p), "pressure at " + node));
        outside.flows().forEach((branch, q) -> assertEquals(q, flow(ours, branch), SAME * Math.abs(q), branch));
    }

    /** Tips leak what slips past them less what they drag forward. */
    private static double flow(Solution ours, String branch) {
        return branch.endsWith(".tips")
                ? ours.flow(branch.replace("tips", "tip-slip")) - ours.flow(branch.replace("tips", "tip-drag"))
                : ours.flow(branch);
    }

    /** Δp = viscous·μ·q + kinetic·ρ·q·|q|. */
    private static DoubleUnaryOperator series(double viscous, double kinetic) {
        return q -> viscous * VISCOSITY * q + kinetic * DENSITY * q * Math.abs(q);
    }

    /** Sharp-edged hole from a chamber: Sampson's creeping flow, and the standard's coefficient with its drift ended at Re 200. */
    private static DoubleUnaryOperator hole(double diameter) {
        return q -> {
            double v = Math.abs(q) / (Math.PI * diameter * diameter / 4);
            double coefficient = 0.5961 + 0.000521 * Math.pow(1e6 / (v * diameter / KINEMATIC + 200), 0.7);
            return 24 / Math.pow(diameter, 3) * VISCOSITY * q
                    + Math.signum(q) * DENSITY / 2 * Math.pow(v / coefficient, 2);
        };
    }

    private static DoubleUnaryOperator opening(double area, double discharge) {
        double diameter = Math.sqrt(4 * area / Math.PI);
        return series(24 / Math.pow(diameter, 3), 1 / (2 * Math.pow(discharge * area, 2)));
    }

    /** Plane Poiseuille flow through a width and a height, cube its effective h³, with 1.686 velocity heads. */
    private static DoubleUnaryOperator slot(double width, double height, double cube, double length) {
        return series(12 * length / (width * cube), 1.686 / (2 * Math.pow(width * height, 2)));
    }

    /** Three rungs: holes along the line, gaps to the sump. */
    @Test
    void ladderOfHolesAndGaps() {
        double[] holes = {2.0e-3, 1.6e-3, 1.2e-3};
        double[] clearances = {30e-6, 25e-6, 40e-6};
        double[] eccentricities = {0, 0.5, 1};
        PlainCircuit plain = new PlainCircuit().hold("n0", 6e5).hold("sump", 0);
        List<Node> nodes = new ArrayList<>(List.of(Node.held("n0", 6e5), Node.held("sump", 0)));
        List<Placed> parts = new ArrayList<>();
        for (int i = 0; i < holes.length; i++) {
            String from = "n" + i;
            String to = "n" + (i + 1);
            double c = clearances[i];
            double e = eccentricities[i];
            plain.drop("hole" + i, from, to, hole(holes[i]));
            plain.drop("gap" + i, to, "sump", slot(Math.PI * (0.014 + c), c, c * c * c * (1 + 1.5 * e * e), 8e-3));
            nodes.add(Node.free(to));
            parts.add(placed("hole" + i, new Orifice(holes[i], 0, OptionalDouble.empty(), 1), from, to));
            parts.add(placed("gap" + i, new AnnularGap(Fit.same(0.014 + 2 * c, 0.014), 8e-3, e), to, "sump"));
        }
        assertSame(plain.solve(), solve(nodes, parts));
    }

    /** Churchill 1977: the Darcy factor in all regimes, and losses of one velocity head. */
    private static DoubleUnaryOperator pipe(double d, double length, double roughness, double losses) {
        return q -> {
            double v = Math.abs(q) / (Math.PI * d * d / 4);
            double re = Math.max(v * d / KINEMATIC, 1e-3);
            double a = Math.pow(2.457 * Math.log(1 / (Math.pow(7 / re, 0.9) + 0.27 * roughness / d)), 16);
            double b = Math.pow(37_530 / re, 16);
            double f = re < 1 ? 64 / re : 8 * Math.pow(Math.pow(8 / re, 12) + Math.pow(a + b, -1.5), 1.0 / 12);
            return Math.signum(q) * (f * length / d + losses) * DENSITY * v * v / 2;
        };
    }

    /** A bridge of five passages, from laminar to turbulent, with a hole behind it. */
    @Test
    void loopOfPassages() {
        record Pipe(String name, String from, String to, double d, double length, double losses) {}
        List<Pipe> pipes = List.of(
                new Pipe("ab", "a", "b", 6e-3, 0.5, 1.5),
                new Pipe("ac", "a", "c", 3e-3, 0.4, 0.5),
                new Pipe("bc", "b", "c", 3e-3, 0.3, 1),
                new Pipe("bd", "b", "d", 4e-3, 0.6, 0),
                new Pipe("cd", "c", "d", 5e-3, 0.5, 2));
        PlainCircuit plain = new PlainCircuit().hold("a", 8e5).hold("sump", 0).drop("out", "d", "sump", hole(4e-3));
        List<Placed> parts = new ArrayList<>();
        parts.add(placed("out", new Orifice(4e-3, 0, OptionalDouble.empty(), 1), "d", "sump"));
        for (Pipe p : pipes) {
            plain.drop(p.name, p.from, p.to, pipe(p.d, p.length, 5e-6, p.losses));
            parts.add(placed(p.name, new Passage(p.d, p.length, 5e-6, p.losses), p.from, p.to));
        }
        Solution ours = solve(
                List.of(Node.held("a", 8e5), Node.held("sump", 0), Node.free("b"), Node.free("c"), Node.free("d")),
                parts);
        assertSame(plain.solve(), ours);
    }

    /** A pump chamber: displacement and gaps. */
    private record Pump(double displacement, double faceGap, double tipGap) {

        private static final double MESH = 0.3e-6;

        PumpChamber part() {
            return new PumpChamber(
                    displacement,
                    new PumpSlip(
                            List.of(new PumpSlip.Face(
                                    "face", Fit.same(0.013 + faceGap, 0.013), 0.020, 0.032, 0.5, 4, 1)),
                            List.of(new PumpSlip.Tip(
                                    "tip",
                                    Fit.same(0.084 + 2 * tipGap, 0.084),
                                    1.5e-3,
                                    4,
                                    0.026,
                                    0.084,
                                    Optional.empty())),
                            0,
                            PumpSlip.Fitted.NONE,
                            MESH,
                            PumpSlip.Lost.NONE),
                    new PumpChamber.Drag(0.5, 0.05, 0.1),
                    Optional.empty());
        }

        Placed placed(String name, String outlet) {
            return new Placed(
                    name,
                    part(),
                    "all",
                    Group.PUMP,
                    List.of("suction", outlet),
                    List.of(Signal.state("inlet", PumpInlet.FILLING)));
        }

        /** Of a drop over the tips, flow that their drag leaves; the square rounds the bend at none. */
        private double left(DoubleUnaryOperator tooth, double drop) {
            double drag = Math.PI * 0.084 * SPEED / 2 * tipGap * 0.026;
            double past = new BrentSolver(1e-15, 1e-22).solve(1000, q -> 4 * tooth.applyAsDouble(q) - drop, -1, 1);
            double positive = past > 0 ? past * past / (past + 1e-11) : 0;
            return past - positive / Math.pow(1 + Math.pow(positive / drag, 4), 0.25);
        }

        /** The swept flow, what the tips drag along, and three ways back: under both faces, over the tips, through the mesh. */
        void into(PlainCircuit plain, String name, String outlet) {
            double h = faceGap / 2;
            double disc = 6 * Math.log(0.032 / 0.020) / (Math.PI * h * h * h * 0.5);
            double discArea = 2 * Math.PI * 0.020 * 0.5 * h;
            DoubleUnaryOperator face = series(disc / 4, 1.686 / (2 * Math.pow(4 * discArea, 2)));
            DoubleUnaryOperator tooth = slot(0.026, tipGap, Math.pow(tipGap, 3), 1.5e-3);
            plain.source(name + ".swept", "suction", outlet, displacement * SPEED);
            plain.drop(name + ".face-slip", outlet, "suction", face);
            plain.branch(name + ".tips", outlet, "suction", (drop, q) -> (q - left(tooth, drop)) / 1e-5 * 1e5);
            plain.drop(name + ".orifice-slip", outlet, "suction", opening(MESH, Math.PI / (Math.PI + 2)));
        }
    }

    private static final double SEAT = 9e-3;
    private static final double SPRING = 2000;
    private static final double PRELOAD = 1.5;
    private static final double STOP = 4e-3;

    /**
     * The second pump joins the line over a check valve. At 1.5 mm of bleed the valve floats between seat and stop; at 6 mm the
     * second pump's pressure falls short of the line and the valve leaks back.
     */
    @ParameterizedTest
    @ValueSource(doubles = {1.5e-3, 6e-3})
    void twoPumpsAndACheckValve(double bleed) {
        Pump first = new Pump(12e-6, 50e-6, 60e-6);
        Pump second = new Pump(9e-6, 60e-6, 70e-6);
        SeriesLoss leak = new SeriesLoss(4e14, 1e16);
        Poppet poppet = new Poppet(SEAT, SPRING, PRELOAD, STOP, 0.7, leak);
        Solution ours = solve(
                List.of(Node.held("sump", 0), Node.free("suction"), Node.free("line"), Node.free("second")),
                List.of(
                        placed("strainer", new Orifice(12e-3, 0, OptionalDouble.empty(), 1), "sump", "suction"),
                        Placed.of("inlet", PumpInlet.WIDE, "all", Group.PUMP, "suction"),
                        first.placed("one", "line"),
                        second.placed("two", "second"),
                        placed("check", new CheckValve(poppet), "second", "line"),
                        placed("bleed", new Orifice(bleed, 0, OptionalDouble.empty(), 1), "second", "sump"),
                        placed("load", new Orifice(3e-3, 0, OptionalDouble.empty(), 1), "line", "sump")));
        PlainCircuit plain = new PlainCircuit()
                .hold("sump", 0)
                .drop("strainer", "sump", "suction", hole(12e-3))
                .drop("bleed", "second", "sump", hole(bleed))
                .drop("load", "line", "sump", hole(3e-3))
                .drop("check-leak", "second", "line", series(4e14, 1e16))
                .branch("check-open", "second", "line", OutsideSolverTest::poppet);
        first.into(plain, "one", "line");
        second.into(plain, "two", "second");
        PlainCircuit.Solution outside = plain.solve();

        double lift = ours.measure("check", CheckValve.LIFT).orElseThrow();
        assertTrue(bleed < 2e-3 ? lift > 0 && lift < STOP : lift == 0, "lift " + lift);
        assertEquals(1, ours.own("inlet", PumpInlet.FILLING));
        double leaks = outside.flows().remove("check-leak");
        outside.flows().put("check", leaks + outside.flows().remove("check-open"));
        assertSame(outside, ours);
    }

    /** A poppet beside its leak: no flow while it is seated, above it an opening of π·d·lift. */
    private static double poppet(double difference, double q) {
        double lift = Math.min((difference * Math.PI * SEAT * SEAT / 4 - PRELOAD) / SPRING, STOP);
        if (lift <= 0) {
            return q * 1e10;
        }
        double scale = Math.pow(lift / STOP, 2);
        return scale * (difference - opening(Math.PI * SEAT * lift, 0.7).applyAsDouble(q));
    }

    private static final double LAND = 16e-3;
    private static final double CLEARANCE = 15e-6;
    private static final double EDGE = 1e-3;
    private static final double LAND_ECCENTRICITY = 0.5;
    private static final double DISCHARGE = 0.65;
    private static final double AREA = 1.2e-4;
    private static final double RATE = 6000;
    private static final double BIAS = 70;
    private static final double TRAVEL = 5e-3;

    /**
     * Line pressure of a pump on a load, held by a regulator that bypasses to the sump; by Brent's method inside Brent's method. A load
     * of 1 and 4 mm leaves the spool to regulate, 7 mm takes all the oil and the spool stands at its lower stop.
     */
    @ParameterizedTest
    @ValueSource(doubles = {1.0e-3, 4.0e-3, 7.0e-3})
    void regulatorWithItsSpool(double load) {
        Pump pump = new Pump(18e-6, 50e-6, 60e-6);
        SpoolValve valve = new SpoolValve(
                List.of("line", "tank"),
                List.of(new SpoolValve.Opening(
                        "bypass",
                        0,
                        1,
                        Fit.same(LAND + 2 * CLEARANCE, LAND),
                        1,
                        EDGE,
                        true,
                        LAND_ECCENTRICITY,
                        DISCHARGE)),
                List.of(new SpoolValve.Area(0, AREA, Set.of())),
                new SpoolSpring(RATE, BIAS, 0, TRAVEL, 0),
                OptionalDouble.empty());
        Solution ours = solve(
                List.of(Node.held("sump", 0), Node.held("suction", 0), Node.free("line")),
                List.of(
                        Placed.of("inlet", PumpInlet.WIDE, "all", Group.PUMP, "suction"),
                        pump.placed("pump", "line"),
                        Placed.of("regulator", valve, "all", Group.VALVE_BODY, "line", "sump"),
                        placed("load", new Orifice(load, 0, OptionalDouble.empty(), 1), "line", "sump")));

        double line = new BrentSolver(1e-14, 1e-6).solve(1000, p -> excess(p, load, pump), 1, 1e7);
        assertEquals(line, ours.pressure("line"), SAME * line);
        double x = position(line);
        assertTrue(load > 5e-3 ? x == 0 : x > 0 && x < TRAVEL, "position " + x);
        assertEquals(x, ours.own("regulator", OwnState.POSITION), SAME * TRAVEL);
        double bypass = bypass(line, x);
        assertEquals(bypass, ours.flow("regulator.bypass"), SAME * bypass);
    }

    /** What the pump delivers beyond load and bypass, at a line pressure. */
    private static double excess(double line, double load, Pump pump) {
        PlainCircuit slip = new PlainCircuit().hold("suction", 0).hold("line", line);
        pump.into(slip, "pump", "line");
        Map<String, Double> flows = slip.solve().flows();
        double delivered = flows.get("pump.swept");
        double lost = flows.get("pump.face-slip") + flows.get("pump.tips") + flows.get("pump.orifice-slip");
        return (delivered - lost - through(line, hole(load)) - bypass(line, position(line)))
                / (pump.displacement() * SPEED);
    }

    private static double through(double drop, DoubleUnaryOperator law) {
        return new BrentSolver(1e-14, 1e-20).solve(1000, q -> (law.applyAsDouble(q) - drop) / drop, 0, 1);
    }

    /** Where spring, pressure and flow force balance, or the stop that they press against. */
    private static double position(double line) {
        if (force(line, 0) >= 0) {
            return 0;
        }
        return force(line, TRAVEL) <= 0
                ? TRAVEL
                : new BrentSolver(1e-14, 1e-16).solve(1000, x -> force(line, x), 0, TRAVEL);
    }

    /** Closing force: spring and flow force 2·Cd·Cv·cos 69°·A·(kinetic drop), less pressure. */
    private static double force(double line, double x) {
        double q = bypass(line, x);
        double head = DENSITY * q * q / (2 * Math.pow(DISCHARGE * whole(x), 2));
        double jet = 2 * DISCHARGE * 0.98 * Math.cos(Math.toRadians(69)) * Math.PI * (LAND + 2 * CLEARANCE) * open(x);
        return BIAS + RATE * x + jet * head - AREA * line;
    }

    /** The edge rounded over the clearance. */
    private static double open(double x) {
        return (Math.hypot(x - EDGE, CLEARANCE) + x - EDGE) / 2;
    }

    private static double whole(double x) {
        return Math.PI * (LAND + 2 * CLEARANCE) * Math.hypot(open(x), CLEARANCE);
    }

    /** An annular gap of the overlap's length, then a slit's creeping and the opening's kinetic drop. */
    private static double bypass(double line, double x) {
        double width = Math.PI * (LAND + 2 * CLEARANCE);
        double rounded = open(x) - (x - EDGE);
        double overlap = Math.pow(rounded, 3) / (rounded * rounded + CLEARANCE * CLEARANCE);
        double mean = Math.PI * (LAND + CLEARANCE);
        double cube = Math.pow(CLEARANCE, 3) * (1 + 1.5 * LAND_ECCENTRICITY * LAND_ECCENTRICITY);
        double slit = 32 / Math.PI / (width * Math.pow(whole(x) / width, 2));
        return through(line, series(12 * overlap / (mean * cube) + slit, 1 / (2 * Math.pow(DISCHARGE * whole(x), 2))));
    }
}
