package hotidle.part;

import hotidle.law.Channel;
import hotidle.law.Flow;
import hotidle.law.Hole;
import hotidle.law.SeriesLoss;
import hotidle.oil.OilAt;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A pressure-control solenoid: it makes a pilot pressure from its supply, as far as the supply carries.
 *
 * <pre>
 * State      opening y from 0 to 1 with the balance F = band·(y − ½) − (p_command − p_pilot): the droop over the full stroke is
 *            {@code band}. At y = 1 the supply is too low or the flow too large, and the pilot starves.
 * Openings   feed area·y (all of it in a bleed solenoid) from supply to pilot, exhaust area·(1 − y) from pilot to exhaust,
 *            both with a share that never closes; law in {@link Hole}
 * </pre>
 *
 * @param feed    diameter of the feed opening [m]
 * @param exhaust diameter of the exhaust opening [m]
 * @param band    droop [Pa]
 * @param bleed   true where the feed is a fixed orifice and only the exhaust is moved
 * @param stuck   opening at which it is stuck, if it is [-], 0 to 1
 */
public record Solenoid(double feed, double exhaust, double band, boolean bleed, OptionalDouble stuck) implements Part {

    /** A solenoid that moves freely. */
    public Solenoid(double feed, double exhaust, double band, boolean bleed) {
        this(feed, exhaust, band, bleed, OptionalDouble.empty());
    }

    /** The same stuck at an opening [-]. */
    public Solenoid stuckAt(double opening) {
        return new Solenoid(feed, exhaust, band, bleed, OptionalDouble.of(opening));
    }

    /** That is asked of the solenoid. */
    public static final Measure COMMANDED_PILOT =
            new Measure("commanded_pilot_pa", Measure.QuantityKind.PRESSURE, "that is asked of the solenoid");

    /** Share to which it is open. */
    public static final Measure OPENING_SHARE =
            new Measure("opening", Measure.QuantityKind.NUMBER, "share to which it is open");

    @Override
    public List<Measure> measures() {
        return List.of(COMMANDED_PILOT, OPENING_SHARE);
    }

    /** Share of each opening that never closes (assumed): about the clearance of its spool or seat. */
    private static final double LEAST_OPENING = 0.01;

    private static final double DISCHARGE = Hole.SHARP_EDGE;

    /** How far it feeds the pilot, 0 shut to 1 [-]; it exhausts by the rest. */
    public static final OwnState OPENING = new OwnState("opening");

    public Solenoid {
        Check.positive("feed diameter", feed);
        Check.positive("exhaust diameter", exhaust);
        Check.within("droop band", band, 1, 1e7);
        Check.within("opening at which it is stuck", stuck.orElse(0), 0, 1);
    }

    @Override
    public Map<String, Channel> channels() {
        return Map.of("feed", Channel.hole(feed, 1), "exhaust", Channel.hole(exhaust, 1));
    }

    @Override
    public Form form() {
        double scale = Math.max(band, 1e5);
        Form.Unknown opening = new Form.Unknown(OPENING, 0, 1, 0.5, scale, scale);
        return new Form(
                List.of("supply", "pilot", "exhaust"),
                List.of(stuck.isPresent() ? opening.heldAt(stuck.getAsDouble()) : opening),
                List.of());
    }

    @Override
    public Law law(Setting setting) {
        return law(setting.command(), setting.oil());
    }

    /** The law of a valve of these openings, whatever asks it for a pressure [Pa]. */
    Law law(double command, OilAt oil) {
        return new Piloting(this, command, oil);
    }

    private record Piloting(Solenoid solenoid, double command, OilAt oil) implements Law {
        private static final int SUPPLY = 0;
        private static final int PILOT = 1;
        private static final int EXHAUST = 2;

        @Override
        public void evaluate(Reading in, Stamp out) {
            double y = in.state(0);
            out.balance(0, solenoid.band * (y - 0.5) - (command - in.pressure(PILOT)));
            out.balanceSlope(0, in.own(0), solenoid.band);
            out.balanceSlope(0, in.port(PILOT), 1);
            pass(in, out, SUPPLY, PILOT, solenoid.feed, solenoid.bleed ? 1 : y, solenoid.bleed ? 0 : 1);
            pass(in, out, PILOT, EXHAUST, solenoid.exhaust, 1 - y, -1);
        }

        private void pass(Reading in, Stamp out, int from, int to, double diameter, double open, double direction) {
            SeriesLoss loss = loss(diameter, open);
            Flow flow = out.pass(in, from, to, loss, oil);
            double share = share(open);
            double byShare = -(1.5 * loss.viscous() * flow.byViscous() + 2 * loss.kinetic() * flow.byKinetic()) / share;
            double density = oil.density((in.pressure(from) + in.pressure(to)) / 2);
            out.moveSlope(from, to, in.own(0), density * byShare * direction * (1 - LEAST_OPENING));
        }

        private static double share(double open) {
            return LEAST_OPENING + (1 - LEAST_OPENING) * open;
        }

        /** An opening of a share of the full hole's area: viscous as area^−1.5, kinetic as area^−2. */
        private static SeriesLoss loss(double diameter, double open) {
            return Hole.loss(diameter * Math.sqrt(share(open)), 0, DISCHARGE);
        }

        @Override
        public List<Stream> streams(Reading in) {
            double y = in.state(0);
            SeriesLoss feed = loss(solenoid.feed, solenoid.bleed ? 1 : y);
            SeriesLoss exhaust = loss(solenoid.exhaust, 1 - y);
            return List.of(
                    Stream.through("feed", in, SUPPLY, PILOT, feed, oil),
                    Stream.through("exhaust", in, PILOT, EXHAUST, exhaust, oil));
        }

        @Override
        public List<Measure.Reported> measures(Reading in) {
            return List.of(COMMANDED_PILOT.of(command), OPENING_SHARE.of(in.state(0)));
        }
    }
}
