package hotidle.law;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Newton's method is only as good as the slopes that the laws give it: each against the difference of the law's own values. */
class LawSlopesTest {

    private static final double DENSITY = 850;
    private static final double VISCOSITY = 9e-3;

    /** Share by which a quantity is moved; the difference is of the fourth order, so that its error is near rounding. */
    private static final double STEP = 2e-3;

    private static final double SAME = 1e-7;

    static Stream<Arguments> laws() {
        Poppet poppet = new Poppet(8e-3, 4000, 20, 1e-3, 0.7, new SeriesLoss(4e14, 1e16));
        SeriesLoss gap = Slot.annular(0.014, 20e-6, 8e-3, 0.5);
        return Stream.of(
                Arguments.of("gap", gap),
                Arguments.of("hole", Hole.loss(1e-3, 0.3e-3, 0.7)),
                Arguments.of("joint", RectangularDuct.loss(0.3e-3, 0.1e-3, 2e-3)),
                Arguments.of("passage", new PipeLoss(6e-3, 0.2, 20e-6, 1.5)),
                Arguments.of("smooth passage", new PipeLoss(3e-3, 0.5, 0, 0)),
                Arguments.of("drilled hole", new ShortTube(1.5e-3, 3e-3)),
                Arguments.of("drilled hole behind a channel", new ShortTube(1.5e-3, 1e-3, 0.6)),
                Arguments.of("sharp edge", new SharpEdge(1.5e-3, 0.2e-3, 0)),
                Arguments.of("sharp edge behind a channel", new SharpEdge(1.5e-3, 0, 0.7)),
                Arguments.of("poppet", poppet),
                Arguments.of("ways side by side", Restriction.beside(gap, new SharpEdge(1e-3, 0, 0))),
                Arguments.of("three ways", Restriction.several(new ShortTube(1e-3, 1e-3), 3)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("laws")
    void slopesAreTheDifferencesOfTheFlow(String name, Restriction law) {
        for (double drop : new double[] {3, 1e3, 2e4, 2.5e5, 4.3e5, 3e6, -40, -7e4, -2e6}) {
            Flow flow = law.flow(drop, DENSITY, VISCOSITY);
            String where = name + " at " + drop + " Pa";
            assertSlope(flow.byDrop(), p -> law.flow(p, DENSITY, VISCOSITY).q(), drop, flow.q(), where + " by drop");
            assertSlope(
                    flow.byDensity(), r -> law.flow(drop, r, VISCOSITY).q(), DENSITY, flow.q(), where + " by density");
            assertSlope(
                    flow.byViscosity(),
                    m -> law.flow(drop, DENSITY, m).q(),
                    VISCOSITY,
                    flow.q(),
                    where + " by viscosity");
            assertTrue(flow.q() * drop > 0, where + " flows downhill");
        }
    }

    /** One way of the same law either way; a poppet only opens one way. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("laws")
    void turnedRoundTheFlowIsTheSame(String name, Restriction law) {
        for (double drop : new double[] {1e2, 1e5, 1e6}) {
            Flow there = law.flow(drop, DENSITY, VISCOSITY);
            Flow back = law.flow(-drop, DENSITY, VISCOSITY);
            if (!(law instanceof Poppet)) {
                assertEquals(-there.q(), back.q(), 1e-14 * there.q(), name);
                assertEquals(there.byDrop(), back.byDrop(), 1e-14 * there.byDrop(), name);
                assertEquals(-there.byDensity(), back.byDensity(), 1e-13 * Math.abs(there.byDensity()), name);
                assertEquals(-there.byViscosity(), back.byViscosity(), 1e-13 * Math.abs(there.byViscosity()), name);
            }
        }
    }

    /** A passage that is fed nothing has the slope of creeping flow, else Newton's first step from rest would go nowhere. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("laws")
    void atTheFaintestDropAndAtNoneTheFlowCreeps(String name, Restriction law) {
        Flow creeps = law.flow(1e-7, DENSITY, VISCOSITY);
        Flow out = law.flow(1e6, DENSITY, VISCOSITY);
        for (double drop : new double[] {1e-20, 1e-31, -1e-31, 1e-159, Double.MIN_VALUE, 0}) {
            law.flow(drop, DENSITY, VISCOSITY, out);
            String where = name + " at " + drop + " Pa";
            assertEquals(creeps.byDrop(), out.byDrop(), 1e-3 * creeps.byDrop(), where);
            assertEquals(out.byDrop() * drop, out.q(), 1e-6 * Math.abs(out.q()), where);
            assertEquals(-out.q() / VISCOSITY, out.byViscosity(), 1e-3 * Math.abs(out.q() / VISCOSITY), where);
            assertEquals(0, out.byDensity(), 1e-3 * Math.abs(out.q() / DENSITY), where);
        }
    }

    @Test
    void slopesByTheCoefficientsOfALossAreItsDifferences() {
        SeriesLoss loss = Hole.loss(1e-3, 0.3e-3, 0.7);
        for (double drop : new double[] {10, 1e4, -1e4, 2e6}) {
            Flow flow = loss.flow(drop, DENSITY, VISCOSITY);
            assertSlope(
                    flow.byViscous(),
                    v -> new SeriesLoss(v, loss.kinetic())
                            .flow(drop, DENSITY, VISCOSITY)
                            .q(),
                    loss.viscous(),
                    flow.q(),
                    drop + " Pa by viscous");
            assertSlope(
                    flow.byKinetic(),
                    k -> new SeriesLoss(loss.viscous(), k)
                            .flow(drop, DENSITY, VISCOSITY)
                            .q(),
                    loss.kinetic(),
                    flow.q(),
                    drop + " Pa by kinetic");
        }
    }

    /** What a law writes must not keep a slope of the law that wrote there before. */
    @Test
    void aLawWithoutCoefficientsLeavesNoSlopesByThem() {
        Flow out = new Flow();
        Hole.loss(1e-3, 0, 0.7).flow(1e5, DENSITY, VISCOSITY, out);
        assertTrue(out.byViscous() < 0 && out.byKinetic() < 0);
        new SharpEdge(1e-3, 0, 0).flow(1e5, DENSITY, VISCOSITY, out);
        assertEquals(0, out.byViscous());
        assertEquals(0, out.byKinetic());
        Hole.loss(1e-3, 0, 0.7).flow(1e5, DENSITY, VISCOSITY, out);
        SeriesLoss.SHUT.flow(1e5, DENSITY, VISCOSITY, out);
        for (double slope : new double[] {out.q(), out.byDrop(), out.byDensity(), out.byViscosity(), out.byViscous()}) {
            assertEquals(0, slope);
        }
    }

    @Test
    void slopesOfFrictionHeadsAndCoefficientAreTheirDifferences() {
        for (double rough : new double[] {0, 1e-3, 0.03}) {
            for (double reynolds : new double[] {0.3, 40, 1500, 2400, 3300, 2e4, 1e6}) {
                double[] at = PipeLoss.friction(reynolds, rough);
                assertSlope(
                        at[1], re -> PipeLoss.friction(re, rough)[0], reynolds, at[0], "friction at Re " + reynolds);
            }
        }
        for (double z : new double[] {1e-5, 1e-3, 0.012, 0.02, 0.05, 3}) {
            double[] at = ShortTube.heads(z);
            assertSlope(at[1], x -> ShortTube.heads(x)[0], z, at[0], "heads at z " + z);
        }
        SharpEdge edge = new SharpEdge(2e-3, 0, 0.6);
        for (double reynolds : new double[] {1, 300, 5000, 1e6}) {
            double[] at = edge.coefficient(reynolds);
            assertSlope(at[1], re -> edge.coefficient(re)[0], reynolds, at[0], "coefficient at Re " + reynolds);
        }
    }

    /** A law that gives the drop at a flow is inverted to the last digits, wherever the first guess lies. */
    @Test
    void theFlowFoundHasTheDropAskedFor() {
        Inverse.DropLaw[] laws = {
            new PipeLoss(6e-3, 0.2, 20e-6, 1.5), new ShortTube(1.5e-3, 3e-3, 0.5), new SharpEdge(1.5e-3, 1e-4, 0.7)
        };
        double[] at = new double[6];
        for (Inverse.DropLaw law : laws) {
            for (double drop = 1e-3; drop < 1e8; drop *= 7) {
                double q = ((Restriction) law).flow(drop, DENSITY, VISCOSITY).q();
                law.dropAt(q, DENSITY, VISCOSITY, at);
                assertEquals(drop, at[0], 4e-15 * drop);
            }
        }
    }

    /** The difference of the fourth order on both sides. */
    private static void assertSlope(double slope, DoubleUnaryOperator law, double x, double size, String where) {
        double h = STEP * Math.abs(x);
        double near = law.applyAsDouble(x + h) - law.applyAsDouble(x - h);
        double far = law.applyAsDouble(x + 2 * h) - law.applyAsDouble(x - 2 * h);
        assertEquals((8 * near - far) / (12 * h), slope, SAME * Math.abs(size / x), where);
    }
}
