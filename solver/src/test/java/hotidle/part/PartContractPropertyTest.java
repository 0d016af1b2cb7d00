package hotidle.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.oil.Oil;
import hotidle.oil.ShearThinning;
import hotidle.oil.ThermalData;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** What every part owes the solver: flows that add up, slopes that belong to them, finite answers at any pressure. */
class PartContractPropertyTest {

    private static final Oil OIL = oil();

    private static Oil oil() {
        Oil.Walther line =
                Oil.Walther.through(new Oil.ViscosityPoint(313.15, 34e-6), new Oil.ViscosityPoint(373.15, 7.4e-6));
        return new Oil(
                "invented", line, 850, 0.65, 1.5e-8, 0.02, 7e4, ThermalData.BY_DENSITY, new ShearThinning(0.3, 3e3));
    }

    private record Drawn(Part part, Part.Law law, Reading reading) {}

    private static Drawn draw(Class<? extends Part> kind, Random random) {
        Samples samples = new Samples(random);
        Part part = Samples.KINDS.get(kind).apply(samples);
        Setting setting = new Setting(
                samples.decades(3, 110),
                random.nextBoolean() ? "first" : "reverse",
                List.of(Setting.Lockup.OFF, Setting.Lockup.SLIPPING, Setting.Lockup.ON)
                        .get(random.nextInt(3)),
                OIL.at(samples.between(250, 420), 101_325),
                samples.decades(1e4, 1e6));
        Reading reading = new Reading(part.form());
        for (int c = 0; c < reading.size(); c++) {
            reading.set(c, samples.decades(1e3, 3e6));
        }
        for (int s = 0; s < part.form().states().size(); s++) {
            Form.Unknown state = part.form().states().get(s);
            reading.set(reading.own(s), samples.between(state.low(), state.high()));
        }
        for (int s = 0; s < part.form().signals().size(); s++) {
            if (part instanceof PumpChamber) {
                reading.set(reading.read(s), random.nextDouble());
            }
        }
        return new Drawn(part, part.law(setting), reading);
    }

    private static Stamp stamp(Drawn drawn) {
        Stamp stamp = new Stamp(drawn.part().form());
        drawn.law().evaluate(drawn.reading(), stamp);
        return stamp;
    }

    @Test
    void everyKindOfPartIsSampled() {
        Set<Class<?>> permitted =
                Arrays.stream(Part.class.getPermittedSubclasses()).collect(Collectors.toSet());
        assertEquals(
                permitted,
                Set.copyOf(Samples.KINDS.keySet()),
                "say in the list kinds() of solver/src/test/java/hotidle/part/Samples.java how one of each is drawn"
                        + " (DEVELOPERS.md, Add a kind of part)");
    }

    @Property(tries = 400, seed = "1")
    void whatEntersAPartLeavesIt(@ForAll long seed) {
        for (Class<? extends Part> kind : Samples.KINDS.keySet()) {
            Drawn drawn = draw(kind, new Random(seed));
            Stamp stamp = stamp(drawn);
            double sum = 0;
            double size = 0;
            for (int port = 0; port < drawn.part().form().ports().size(); port++) {
                sum += stamp.value(port);
                size += Math.abs(stamp.value(port));
            }
            assertTrue(Math.abs(sum) <= 1e-14 * size, kind + " loses " + sum + " kg/s of " + size);
        }
    }

    @Property(tries = 400, seed = "1")
    void streamsAreTheFlowsThatTheSolverSees(@ForAll long seed) {
        for (Class<? extends Part> kind : Samples.KINDS.keySet()) {
            Drawn drawn = draw(kind, new Random(seed));
            Stamp stamp = stamp(drawn);
            double[] flow = new double[drawn.part().form().ports().size()];
            double size = 0;
            for (Stream stream : drawn.law().streams(drawn.reading())) {
                flow[stream.from()] += stream.mass();
                flow[stream.to()] -= stream.mass();
                size += Math.abs(stream.mass());
            }
            for (int port = 0; port < flow.length; port++) {
                assertEquals(stamp.value(port), flow[port], 1e-13 * size, kind + " port " + port);
            }
        }
    }

    /** Central differences of third order error; the step is balanced between rounding and curvature. */
    @Property(tries = 300, seed = "1")
    void slopesAreTheDifferencesOfValues(@ForAll long seed) {
        for (Class<? extends Part> kind : Samples.KINDS.keySet()) {
            Drawn drawn = draw(kind, new Random(seed));
            Stamp at = stamp(drawn);
            for (int column = 0; column < drawn.reading().size(); column++) {
                double value = drawn.reading().at(column);
                double step = 1e-5 * Math.max(Math.abs(value), 1e-5);
                Stamp above = moved(drawn, column, value + step);
                Stamp below = moved(drawn, column, value - step);
                Stamp farAbove = moved(drawn, column, value + 2 * step);
                Stamp farBelow = moved(drawn, column, value - 2 * step);
                drawn.reading().set(column, value);
                for (int row = 0; row < at.rows(); row++) {
                    double wide = (farAbove.value(row) - farBelow.value(row)) / (4 * step);
                    double near = (above.value(row) - below.value(row)) / (2 * step);
                    double difference = (4 * near - wide) / 3;
                    double rounding = 1e-14 * (Math.abs(at.value(row)) + biggest(at)) / step;
                    double corner = Math.abs(near - wide);
                    assertEquals(
                            difference,
                            at.slope(row, column),
                            1e-6 * Math.abs(difference) + 20 * rounding + 3 * corner,
                            kind + " row " + row + " column " + column + " at " + drawn.reading());
                }
            }
        }
    }

    private static double biggest(Stamp stamp) {
        double biggest = 0;
        for (int row = 0; row < stamp.rows(); row++) {
            biggest = Math.max(biggest, Math.abs(stamp.value(row)));
        }
        return biggest;
    }

    private static Stamp moved(Drawn drawn, int column, double to) {
        drawn.reading().set(column, to);
        return stamp(drawn);
    }

    @Property(tries = 200, seed = "1")
    void answersAreFiniteAtRestReversedAndExtreme(@ForAll long seed) {
        for (Class<? extends Part> kind : Samples.KINDS.keySet()) {
            Random random = new Random(seed);
            Drawn drawn = draw(kind, random);
            double[] extremes = {0, -9e4, 1e-9, -1e-9, 1e8, 5e6};
            for (int port = 0; port < drawn.part().form().ports().size(); port++) {
                drawn.reading().set(port, extremes[random.nextInt(extremes.length)]);
            }
            for (int s = 0; s < drawn.part().form().states().size(); s++) {
                Form.Unknown state = drawn.part().form().states().get(s);
                drawn.reading().set(drawn.reading().own(s), random.nextBoolean() ? state.low() : state.high());
            }
            Stamp stamp = stamp(drawn);
            for (int row = 0; row < stamp.rows(); row++) {
                assertTrue(Double.isFinite(stamp.value(row)), kind + " " + drawn.reading());
                for (int column = 0; column < drawn.reading().size(); column++) {
                    assertTrue(Double.isFinite(stamp.slope(row, column)), kind + " slope at " + drawn.reading());
                }
            }
        }
    }

    /** Parts without a direction of their own: what flows one way under a drop flows back under the opposite one. */
    @Property(tries = 300, seed = "1")
    void plainRestrictionsFlowBothWaysAlike(@ForAll long seed) {
        for (Class<? extends Part> kind : Set.of(
                Orifice.class,
                AnnularGap.class,
                FlatGap.class,
                FaceGap.class,
                SealingRing.class,
                Passage.class,
                Cooler.class,
                LubeBranch.class,
                Clutch.class,
                Converter.class)) {
            Drawn drawn = draw(kind, new Random(seed));
            double there = stamp(drawn).value(0);
            double from = drawn.reading().pressure(0);
            drawn.reading().set(0, drawn.reading().pressure(1));
            drawn.reading().set(1, from);
            assertEquals(-there, stamp(drawn).value(0), 1e-14 * Math.abs(there), kind.toString());
        }
    }
}
