package hotidle.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import hotidle.law.Poppet;
import hotidle.oil.Oil;
import hotidle.oil.OilAt;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/**
 * Every law's value and first derivative are continuous, but for declared corners: the seat and the stop of a poppet, the stops of a
 * state. Each port of each kind of part is scanned over ten decades of pressure in both directions, the other ports at zero; each
 * state is scanned from stop to stop. The oil has one density and viscosity here; how both follow pressure is scanned apart.
 *
 * <p>Two questions are asked. Is the slope that a law returns the fourth-order difference of its values, to 1e-6 of its scale? Does
 * halving an interval again and again leave a jump?
 * Past 300 lines, since the corners that each kind declares stand beside the scan that allows them.
 */
class LawContinuityPropertyTest {

    private static final double LEAST = 1e-2;
    private static final double MOST = 1e8;
    private static final double POINTS_A_DECADE = 8;

    /** Step of a difference, as a share of the distance to where the law may bend: truncation and rounding are below 1e-9. */
    private static final double STEP = 1e-3;

    /** Nearest to a corner that a central difference is taken, as a share of the pressure there. */
    private static final double NEAR = 1e-4;

    private record Drawn(Part part, Part.Law law, Reading reading, OilAt oil, Random random) {}

    private static Drawn draw(Class<? extends Part> kind, long seed) {
        Random random = new Random(seed);
        Samples samples = new Samples(random);
        Part part = alone(Samples.KINDS.get(kind).apply(samples), random);
        OilAt oil = Oil.fixed(samples.between(780, 900), samples.decades(3e-3, 3));
        Setting setting = new Setting(
                samples.decades(3, 110),
                random.nextBoolean() ? "first" : "reverse",
                random.nextBoolean() ? Setting.Lockup.OFF : Setting.Lockup.ON,
                oil,
                samples.decades(1e4, 1e5));
        Reading reading = new Reading(part.form());
        for (int s = 0; s < part.form().states().size(); s++) {
            Form.Unknown state = part.form().states().get(s);
            double[] places = {state.low(), state.high(), samples.between(state.low(), state.high())};
            reading.set(reading.own(s), places[random.nextInt(places.length)]);
        }
        for (int s = 0; s < part.form().signals().size(); s++) {
            reading.set(reading.read(s), part instanceof PumpChamber ? random.nextDouble() : samples.decades(1e3, 3e6));
        }
        return new Drawn(part, part.law(setting), reading, oil, random);
    }

    /** A spool with one of its openings only, so that no opening hides behind a larger one. */
    private static Part alone(Part part, Random random) {
        return part instanceof SpoolValve all
                ? new SpoolValve(
                        all.ports(),
                        List.of(all.openings().get(random.nextInt(all.openings().size()))),
                        all.areas(),
                        all.spring(),
                        all.stuck())
                : part;
    }

    private static void eachPort(long seed, BiConsumer<Scan, Random> test) {
        for (Class<? extends Part> kind : Samples.KINDS.keySet()) {
            Drawn drawn = draw(kind, seed);
            for (int port = 0; port < drawn.part().form().ports().size(); port++) {
                test.accept(pressure(drawn, port), drawn.random());
            }
        }
    }

    /** The scan of one port's pressure, the others at zero. */
    private static Scan pressure(Drawn drawn, int port) {
        int sign = port == 0 ? 1 : -1;
        double head = drawn.part() instanceof Filter filter
                ? sign * drawn.oil().liquidDensity() * 9.80665 * filter.rise()
                : 0;
        List<Double> corners = poppet(drawn.part())
                .map(poppet -> List.of(sign * poppet.cracking(), sign * poppet.fullLiftPressure()))
                .orElse(List.of());
        return new Scan(drawn.part(), drawn.law(), drawn.reading(), port, head, corners);
    }

    private static Optional<Poppet> poppet(Part part) {
        return part instanceof CheckValve check
                ? Optional.of(check.poppet())
                : part instanceof ReliefValve relief ? Optional.of(relief.poppet()) : Optional.empty();
    }

    /** Drops from LEAST to MOST, log-spaced from a random start. */
    private static double[] ladder(Random random) {
        double ratio = Math.pow(10, 1 / POINTS_A_DECADE);
        return DoubleStream.iterate(
                        LEAST * Math.pow(ratio, random.nextDouble()), drop -> drop <= MOST, drop -> drop * ratio)
                .toArray();
    }

    @Property(tries = 60, seed = "1")
    void slopesAreFourthOrderDifferencesOverTenDecadesOfPressure(@ForAll long seed) {
        eachPort(seed, (scan, random) -> {
            for (double drop : ladder(random)) {
                for (double value : new double[] {scan.origin() + drop, scan.origin() - drop}) {
                    if (scan.room(value) >= NEAR * Math.abs(value)) {
                        scan.central(value, STEP * scan.room(value));
                    }
                }
            }
        });
    }

    @Property(tries = 60, seed = "1")
    void neitherValueNorSlopeJumpsBetweenTwoPressures(@ForAll long seed) {
        eachPort(seed, (scan, random) -> {
            double[] ladder = ladder(random);
            noJumpBetween(scan, scan.origin() - ladder[0], scan.origin() + ladder[0]);
            for (int i = 0; i + 1 < ladder.length; i++) {
                noJumpBetween(scan, scan.origin() + ladder[i], scan.origin() + ladder[i + 1]);
                noJumpBetween(scan, scan.origin() - ladder[i + 1], scan.origin() - ladder[i]);
            }
        });
    }

    private static void noJumpBetween(Scan scan, double low, double high) {
        if (scan.corners().stream().noneMatch(corner -> corner >= low && corner <= high)) {
            scan.noJumpBetween(low, high);
        }
    }

    @Property(tries = 200, seed = "1")
    void slopesAreTheSameOnBothSidesOfNoFlow(@ForAll long seed) {
        eachPort(seed, (scan, random) -> {
            if (!scan.corners().contains(scan.origin())) {
                scan.oneSided(scan.origin(), VISCOUS, scan.origin());
                scan.oneSided(scan.origin(), -VISCOUS, scan.origin());
            }
        });
    }

    /** Step so small that every drop is all viscous, and so large that a filter's head does not swallow it [Pa]. */
    private static final double VISCOUS = 1e-5;

    /** At its seat a poppet begins to let oil by as the lift to the power 1.5: slopes meet, as its root. At its stop they do not. */
    @Property(tries = 200, seed = "1")
    void aPoppetHasOneSlopeAtItsSeatAndTwoAtItsStop(@ForAll long seed) {
        for (Class<? extends Part> kind : List.of(CheckValve.class, ReliefValve.class)) {
            Drawn drawn = draw(kind, seed);
            Scan scan = pressure(drawn, 0);
            double seat = poppet(drawn.part()).orElseThrow().cracking();
            double stop = poppet(drawn.part()).orElseThrow().fullLiftPressure();
            double hair = 1e-12;
            scan.oneSided(seat, -1e-3 * seat, seat * (1 - hair));
            double shut = scan.slope(0, seat * (1 - hair));
            double near = scan.slope(0, seat * (1 + 1e-11)) - shut;
            double farther = scan.slope(0, seat * (1 + 4e-11)) - shut;
            assertEquals(2, farther / near, 0.1, () -> "slope above the seat of " + drawn.part());
            scan.oneSided(stop, -1e-3 * (stop - seat), stop * (1 - hair));
            scan.oneSided(stop, 1e-3 * stop, stop * (1 + hair));
            assertThrows(AssertionError.class, () -> scan.noJumpBetween(stop * (1 - 1e-3), stop * (1 + 1e-3)));
        }
    }

    /** Each state from stop to stop at pressures of a working circuit, with the slopes to one side at the stops themselves. */
    @Property(tries = 200, seed = "1")
    void slopesByStatesAreFourthOrderDifferencesFromStopToStop(@ForAll long seed) {
        for (Class<? extends Part> kind : Samples.KINDS.keySet()) {
            Drawn drawn = draw(kind, seed);
            for (int port = 0; port < drawn.part().form().ports().size(); port++) {
                drawn.reading().set(port, Math.pow(10, 2 + 5 * drawn.random().nextDouble()));
            }
            for (int s = 0; s < drawn.part().form().states().size(); s++) {
                Form.Unknown state = drawn.part().form().states().get(s);
                if (state.high() > state.low()) {
                    scanState(
                            drawn,
                            state,
                            new Scan(
                                    drawn.part(),
                                    drawn.law(),
                                    drawn.reading(),
                                    drawn.reading().own(s),
                                    state.low(),
                                    List.of()));
                }
            }
        }
    }

    private static void scanState(Drawn drawn, Form.Unknown state, Scan scan) {
        double stroke = state.high() - state.low();
        for (double stop : new double[] {state.low(), state.high()}) {
            if (!uncovered(drawn.part(), stop)) {
                double inward = stop == state.low() ? 1 : -1;
                scan.oneSided(stop, inward * step(drawn.part(), stop, stroke), stop);
            }
        }
        for (int i = 0; i < 50; i++) {
            double value = state.low() + stroke * (0.01 + 0.98 * drawn.random().nextDouble());
            if (!uncovered(drawn.part(), value)) {
                scan.central(value, step(drawn.part(), value, stroke));
            }
        }
    }

    /** A spool's edges are rounded over the clearance, so a step there is a thousandth of the least one or of the distance to an edge. */
    private static double step(Part part, double x, double stroke) {
        if (!(part instanceof SpoolValve valve)) {
            return 1e-5 * stroke;
        }
        return valve.openings().stream()
                .flatMapToDouble(o -> DoubleStream.of(
                        o.edge(), o.edge() + (o.opensUp() ? 1 : -1) * (o.holes() > 0 ? o.holeDiameter() : 0)))
                .map(edge -> STEP * (Math.abs(x - edge) + LEAST_CLEARANCE))
                .reduce(STEP * stroke, Math::min);
    }

    private static final double LEAST_CLEARANCE = 1e-6;

    /**
     * Whether a spool is about to uncover a round hole for good, or just has: there the area's second derivative has no limit.
     */
    private static boolean uncovered(Part part, double x) {
        return part instanceof SpoolValve valve
                && valve.openings().stream()
                        .anyMatch(o -> o.holes() > 0
                                && (o.opensUp() ? 1 : -1) * (x - o.edge()) > o.holeDiameter() - 3e-4
                                && (o.opensUp() ? 1 : -1) * (x - o.edge()) < o.holeDiameter() + 3e-4);
    }

    /** How density and viscosity follow pressure, from near vacuum over ten decades. */
    @Property(tries = 200, seed = "1")
    void densityAndViscosityFollowPressureWithoutAJump(@ForAll long seed) {
        Random random = new Random(seed);
        Samples samples = new Samples(random);
        OilAt oil = new OilAt(
                373.15,
                820,
                6e-3,
                samples.decades(1e-9, 4e-8),
                samples.between(0, 0.3),
                samples.between(7e4, 1.1e5),
                0,
                Optional.empty());
        for (double above : ladder(random)) {
            double p = above - oil.ambient();
            double step = STEP * (above + 100);
            double density = fourth(oil::density, p, step);
            double viscosity = fourth(oil::viscosity, p, step);
            assertEquals(density, oil.densitySlope(p), 1e-6 * Math.abs(density) + 20 * Math.ulp(820) / step);
            assertEquals(viscosity, oil.viscositySlope(p), 1e-6 * viscosity + 20 * Math.ulp(oil.viscosity(p)) / step);
        }
    }

    private static double fourth(DoubleUnaryOperator f, double x, double h) {
        double near = f.applyAsDouble(x + h) - f.applyAsDouble(x - h);
        double far = f.applyAsDouble(x + 2 * h) - f.applyAsDouble(x - 2 * h);
        return (8 * near - far) / (12 * h);
    }

    /** A pump whose clearances open with pressure has one slope at no rise: the drag counts the clearance as it stands. */
    @Test
    void aPumpWhoseClearancesOpenHasOneSlopeAtNoRise() {
        PumpChamber pump = new PumpChamber(
                20e-6,
                new PumpSlip(
                        List.of(new PumpSlip.Face("face", Fit.same(0.01305, 0.013), 0.007, 0.016, 0.5, 2, 1)),
                        List.of(new PumpSlip.Tip(
                                "tip", Fit.same(0.0842, 0.084), 1.5e-3, 4, 0.026, 0.084, Optional.empty())),
                        1e-12,
                        PumpSlip.Fitted.NONE,
                        1e-7,
                        PumpSlip.Lost.NONE),
                new PumpChamber.Drag(0, 0, 0),
                Optional.empty());
        Part.Law law = pump.law(new Setting(25, "any", Setting.Lockup.OFF, Oil.fixed(850, 0.01), 0));
        new Scan(pump, law, Reading.of(pump.form(), 0, 0, 1), 1, 0, List.of()).noJumpBetween(-1e-2, 1e-2);
    }

    /** Far from an edge the opening and the overlap keep their digits. */
    @Test
    void aSpoolThatHasUncoveredItsHolesKeepsItsDigits() {
        Fit fit = Fit.same(0.01565, 0.0156);
        SpoolValve valve = new SpoolValve(
                List.of("line", "tank"),
                List.of(new SpoolValve.Opening("bypass", 0, 1, fit, 1, 0, true, 0.5, 0.7, 2, 2e-3)),
                List.of(new SpoolValve.Area(0, 2e-4, Set.of())),
                new SpoolSpring(1e4, 100, 0, 6e-3, 0),
                OptionalDouble.empty());
        Part.Law law = valve.law(new Setting(0, "any", Setting.Lockup.OFF, Oil.fixed(850, 0.01), 0));
        Scan scan = new Scan(valve, law, Reading.of(valve.form(), 3e2, 0, 0), 2, 0, List.of());
        for (double x = 3.1e-3; x < 5.9e-3; x += 1e-4) {
            scan.central(x, 1e-6);
        }
    }

    /**
     * An open port in cold oil creeps as a slit does, q = π·w·b²·Δp/(32·μ), H. E. Merritt, Hydraulic Control Systems, 1967, §3-3 (from
     * memory): the overlap that is gone must not resist any more. b is √(a² + c²), a the opening.
     */
    @Test
    void anOpenPortInColdOilCreepsAsASlit() {
        Fit fit = Fit.same(0.01403, 0.014);
        SpoolValve valve = new SpoolValve(
                List.of("line", "tank"),
                List.of(new SpoolValve.Opening("bypass", 0, 1, fit, 1, 0, true, 0, 0.611)),
                List.of(new SpoolValve.Area(0, 2e-4, Set.of())),
                new SpoolSpring(1e4, 100, 0, 6e-3, 0),
                OptionalDouble.empty());
        Part.Law law = valve.law(new Setting(0, "any", Setting.Lockup.OFF, Oil.fixed(870, 10), 0));
        double q = law.streams(Reading.of(valve.form(), 1e3, 0, 0.5e-3))
                .iterator()
                .next()
                .volume();
        double slit = Math.PI * Math.PI * 0.01403 * 0.5e-3 * 0.5e-3 * 1e3 / (32 * 10);
        assertEquals(slit, q, 0.005 * slit);
    }
}
