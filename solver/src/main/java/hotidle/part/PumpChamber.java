package hotidle.part;

import hotidle.law.Channel;
import hotidle.oil.OilAt;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A pump, or one chamber of a pump with several: what it displaces, less what slips back.
 *
 * <pre>
 * Swept      ρ(p_in)·φ·V·n, φ the filling of the {@link PumpInlet} that it names, V in proportion to the slide's
 *            eccentricity where there is a slide
 * Delivered  what is swept, less all slip that the tips do not keep back; counted at the inlet's density
 * Slip       {@link PumpSlip}
 * Torque     V·Δp/(2·π) + Cv·μ·n·V + Cf·V·Δp/(2·π) + T0; W. E. Wilson, "Rotary-pump theory", Trans. ASME 68 (1946) 371 (from
 *            memory); V is the displacement in use, but in the viscous term the full one: the same gears turn. Where the clearance of
 *            the faces is known, what they shear is added by {@link hotidle.law.Couette}, and Cv stands for tips and mesh alone; where
 *            the slip is fitted, Cv stands for all
 * Slide      control pressure against a spring: F = A·p − preload − k·(high − e) rises with its position, the eccentricity e, zero
 *            between its stops; the force of the pumping chambers on it is left out, as if its pivot balanced them
 * </pre>
 *
 * @param displacement V [m³/rev], with a slide at its upper stop
 * @param slip         what slips back
 * @param drag         what it takes to turn
 * @param slide        what varies the displacement; empty in a fixed pump
 */
public record PumpChamber(double displacement, PumpSlip slip, Drag drag, Optional<Slide> slide) implements Part {

    /** That the chamber asks of its shaft. */
    public static final Measure TORQUE =
            new Measure("torque_n_m", Measure.QuantityKind.TORQUE, "that the chamber asks of its shaft");

    /** That the chamber takes. */
    public static final Measure POWER = new Measure("power_w", Measure.QuantityKind.POWER, "that the chamber takes");

    /** Outlet less inlet. */
    public static final Measure PRESSURE_RISE =
            new Measure("pressure_rise_pa", Measure.QuantityKind.PRESSURE, "outlet less inlet");

    /** That leaves the outlet, counted at the inlet. */
    public static final Measure DELIVERED =
            new Measure("delivered_m3_s", Measure.QuantityKind.FLOW, "that leaves the outlet, counted at the inlet");

    /** In use. */
    public static final Measure DISPLACEMENT =
            new Measure("displacement_m3_rev", Measure.QuantityKind.DISPLACEMENT, "in use");

    @Override
    public List<Measure> measures() {
        List<Measure> measures = new ArrayList<>(List.of(TORQUE, POWER, PRESSURE_RISE, DELIVERED, DISPLACEMENT));
        measures.addAll(slip.measures());
        return measures;
    }

    /**
     * What the chamber takes to turn.
     *
     * @param viscous  Cv, without faces whose clearance is known [-]
     * @param friction Cf [-]
     * @param constant T0 [N·m]
     */
    public record Drag(double viscous, double friction, double constant) {
        public Drag {
            Check.notNegative("viscous drag", viscous);
            Check.notNegative("pressure friction", friction);
            Check.notNegative("constant torque", constant);
        }
    }

    /**
     * The slide of a variable pump; control pressure moves it towards less displacement.
     *
     * @param area    A on which the control pressure acts, at the spring's line of action [m²]
     * @param rate    k of the spring [N/m]
     * @param preload of the spring with the slide at its upper stop [N]
     * @param low     least eccentricity [m]
     * @param high    greatest eccentricity, that of the full displacement [m]
     */
    public record Slide(double area, double rate, double preload, double low, double high) {
        public Slide {
            Check.positive("control area of the slide", area);
            Check.positive("spring rate of the slide", rate);
            Check.notNegative("preload of the slide", preload);
            Check.within("least eccentricity", low, 0, high);
            Check.within("greatest eccentricity", high, low, 0.1);
            Check.positive("greatest eccentricity", high);
        }

        /** Share of the full displacement at an eccentricity [m]. */
        public double share(double eccentricity) {
            return eccentricity / high;
        }

        private Form form(List<String> signals) {
            double scale = Math.max(preload, rate * high);
            return new Form(
                    List.of("inlet", "outlet", "control"),
                    List.of(new Form.Unknown(OwnState.POSITION, low, high, high, rate, scale)),
                    signals);
        }
    }

    /** The port whose pressure moves the slide. */
    public static final int CONTROL = 2;

    public PumpChamber {
        Check.positive("displacement", displacement);
    }

    @Override
    public Map<String, Channel> channels() {
        return slip.channels();
    }

    @Override
    public Map<String, Fit> fits() {
        return slip.fits();
    }

    @Override
    public Form form() {
        List<String> signals = slip.readsHub()
                ? List.of(PumpInlet.FILLING.name(), Bushing.OFF_CENTRE.name())
                : List.of(PumpInlet.FILLING.name());
        return slide.map(moved -> moved.form(signals))
                .orElseGet(() -> new Form(List.of("inlet", "outlet"), List.of(), signals));
    }

    @Override
    public Law law(Setting setting) {
        return new Chamber(this, setting);
    }

    private static final class Chamber implements Law {
        private static final int INLET = 0;
        private static final int OUTLET = 1;

        private final PumpChamber pump;
        private final double speed;
        private final OilAt oil;
        private final SlipAtDuty slip;
        private final Slide slide;

        Chamber(PumpChamber pump, Setting setting) {
            this.pump = pump;
            speed = setting.speed();
            oil = setting.oil();
            slip = pump.slip.at(setting);
            slide = pump.slide.orElse(null);
        }

        private Chamber(Chamber other, double speed) {
            pump = other.pump;
            this.speed = speed;
            oil = other.oil;
            slip = other.slip.atSpeed(speed);
            slide = other.slide;
        }

        @Override
        public Law atSpeed(double other) {
            return new Chamber(this, other);
        }

        @Override
        public void evaluate(Reading in, Stamp out) {
            double inlet = in.pressure(INLET);
            double filling = in.signal(0);
            double kept = speed * pump.slip.lost().kept(speed);
            double forward = inUse(in) * kept;
            out.move(INLET, OUTLET, oil.density(inlet) * filling * forward);
            out.moveSlope(INLET, OUTLET, in.port(INLET), oil.densitySlope(inlet) * filling * forward);
            out.moveSlope(INLET, OUTLET, in.read(0), oil.density(inlet) * forward);
            slip.evaluate(in, out);
            if (slide != null) {
                double e = in.state(0);
                out.moveSlope(
                        INLET, OUTLET, in.own(0), oil.density(inlet) * filling * pump.displacement * kept / slide.high);
                out.balance(0, slide.area * in.pressure(CONTROL) - slide.preload - slide.rate * (slide.high - e));
                out.balanceSlope(0, in.port(CONTROL), slide.area);
                out.balanceSlope(0, in.own(0), slide.rate);
            }
        }

        @Override
        public double delivery() {
            return pump.displacement * speed;
        }

        /** Displacement in use [m³/rev]. */
        private double inUse(Reading in) {
            return slide == null ? pump.displacement : pump.displacement * in.state(0) / slide.high;
        }

        @Override
        public List<Stream> streams(Reading in) {
            double density = oil.density(in.pressure(INLET));
            double swept = inUse(in) * speed * in.signal(0);
            List<Stream> streams = new ArrayList<>();
            streams.add(new Stream("swept", INLET, OUTLET, density * swept, swept));
            streams.addAll(slip.streams(in));
            double share = 1 - pump.slip.lost().kept(speed);
            if (!pump.slip.lost().isNone()) {
                double lost = swept * share;
                streams.add(new Stream("speed-slip", OUTLET, INLET, density * lost, lost));
            }
            return streams;
        }

        /** What leaves the outlet [m³/s], as it was at the inlet: mass is kept, volume is not. */
        private double delivered(Reading in) {
            double mass = streams(in).stream()
                    .mapToDouble(stream -> stream.from() == INLET ? stream.mass() : -stream.mass())
                    .sum();
            return mass / oil.density(in.pressure(INLET));
        }

        @Override
        public List<Measure.Reported> measures(Reading in) {
            double rise = in.pressure(OUTLET) - in.pressure(INLET);
            double perRadian = inUse(in) / (2 * Math.PI);
            double viscous = pump.drag.viscous * oil.viscosity(in.pressure(OUTLET)) * speed * pump.displacement;
            double faces = speed > 0 ? slip.faceDrag() / (2 * Math.PI * speed) : 0;
            double torque = perRadian * rise
                    + viscous
                    + faces
                    + pump.drag.friction * perRadian * Math.abs(rise)
                    + pump.drag.constant;
            List<Measure.Reported> measures = new ArrayList<>(List.of(
                    TORQUE.of(torque),
                    POWER.of(torque * 2 * Math.PI * speed),
                    PRESSURE_RISE.of(rise),
                    DELIVERED.of(delivered(in)),
                    DISPLACEMENT.of(inUse(in))));
            measures.addAll(slip.measures());
            return measures;
        }
    }
}
