package hotidle.newton;

import hotidle.network.Group;
import hotidle.network.Network;
import hotidle.network.Node;
import hotidle.network.Placed;
import hotidle.part.Fit;
import hotidle.part.Part;
import hotidle.part.Reading;
import hotidle.part.SpoolSpring;
import hotidle.part.SpoolValve;
import hotidle.part.Stamp;
import hotidle.part.Stream;
import hotidle.study.TenNodes;
import hotidle.transmission.Transmission;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One node and one spool whose equations are given, so that each step of a method can be told by hand: the node's imbalance as a share
 * of its scale over the line pressure [Pa] and the spool's place [m], and the spool's force over its stiffness [m] over the same two.
 */
record MadeEquations(Share node, Share spool) {

    static final double LOW = 1e-3;
    static final double HIGH = 3e-3;
    static final double RATE = 4000;

    /** A share or a way over line pressure and place, with its slopes by both. */
    interface Share {
        double at(double line, double place);

        double byLine(double line, double place);

        double byPlace(double line, double place);
    }

    /** What hangs on the line pressure alone. */
    static Share line(java.util.function.DoubleUnaryOperator value, java.util.function.DoubleUnaryOperator slope) {
        return share(
                (line, place) -> value.applyAsDouble(line), (line, place) -> slope.applyAsDouble(line), (l, p) -> 0);
    }

    /** What hangs on the spool's place alone. */
    static Share place(java.util.function.DoubleUnaryOperator value, java.util.function.DoubleUnaryOperator slope) {
        return share(
                (line, place) -> value.applyAsDouble(place), (l, p) -> 0, (line, place) -> slope.applyAsDouble(place));
    }

    /** Straight in both about a point. */
    static Share straight(double line, double place, double byLine, double byPlace) {
        return share(
                (at, there) -> (at - line) * byLine + (there - place) * byPlace,
                (at, there) -> byLine,
                (at, there) -> byPlace);
    }

    private static Share share(
            java.util.function.DoubleBinaryOperator value,
            java.util.function.DoubleBinaryOperator byLine,
            java.util.function.DoubleBinaryOperator byPlace) {
        return new Share() {
            @Override
            public double at(double line, double place) {
                return value.applyAsDouble(line, place);
            }

            @Override
            public double byLine(double line, double place) {
                return byLine.applyAsDouble(line, place);
            }

            @Override
            public double byPlace(double line, double place) {
                return byPlace.applyAsDouble(line, place);
            }
        };
    }

    /**
     * The equations, set at hot idle of the ten nodes.
     *
     * @param edges places [m] at which the spool is said to open something
     */
    Equations equations(double... edges) {
        Network network = new Network(
                List.of(Node.held("sump", 0), Node.free("line")),
                List.of(Placed.of(
                        "spool",
                        new SpoolValve(
                                List.of("line", "sump"),
                                Arrays.stream(edges)
                                        .mapToObj(MadeEquations::opening)
                                        .toList(),
                                List.of(),
                                new SpoolSpring(RATE, 0, LOW, HIGH, 0),
                                OptionalDouble.empty()),
                        "sump",
                        Group.VALVE_BODY,
                        "line",
                        "sump")));
        Transmission unit = TenNodes.worn(1);
        double[] scale = new double[1];
        Equations equations = new Equations(network, (placed, setting) -> new Given(this, scale));
        equations.set(unit.conditions(unit.duties().get(0)));
        scale[0] = equations.massScale();
        return equations;
    }

    private static SpoolValve.Opening opening(double edge) {
        return new SpoolValve.Opening("port", 0, 1, new Fit(10.03e-3, 10e-3, 0, 0, 293.15), 1, edge, true, 0, 0.7);
    }

    /** The law of both, whose flows are shares of a scale that is known once the equations are set. */
    private static final class Given implements Part.Law {
        private final MadeEquations made;
        private final double[] scale;

        Given(MadeEquations made, double[] scale) {
            this.made = made;
            this.scale = scale;
        }

        @Override
        public void evaluate(Reading in, Stamp out) {
            double line = in.pressure(0);
            double place = in.state(0);
            out.move(0, 1, scale[0] * made.node.at(line, place));
            out.moveSlope(0, 1, in.port(0), scale[0] * made.node.byLine(line, place));
            out.moveSlope(0, 1, in.own(0), scale[0] * made.node.byPlace(line, place));
            out.balance(0, RATE * made.spool.at(line, place));
            out.balanceSlope(0, in.port(0), RATE * made.spool.byLine(line, place));
            out.balanceSlope(0, in.own(0), RATE * made.spool.byPlace(line, place));
        }

        @Override
        public List<Stream> streams(Reading in) {
            return List.of();
        }
    }
}
