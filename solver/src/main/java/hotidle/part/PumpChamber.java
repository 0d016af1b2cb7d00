package hotidle.part;

import hotidle.law.Flow;
import hotidle.law.Hole;
import hotidle.law.SeriesLoss;
import hotidle.law.Slot;
import hotidle.oil.OilAt;
import java.util.List;

/**
 * One chamber of a gear pump: what it displaces, less what slips back.
 *
 * <pre>
 * Delivery   ρ(p_in)·φ·V·n, φ the filling of the {@link PumpInlet} that it names
 * Slip       face gaps, radial flow over a sector, and tip gaps, lands in series, {@link Slot}; both clearances open by
 *            {@code opening} per pascal of pressure rise; beside them an area that passes oil as an orifice whatever the
 *            viscosity (mesh and trapping), {@link Hole}
 * Tip drag   the housing-side half of the tips' speed drags oil forward, U·h/2 per width of gap, which makes up for slip
 *            (plane Couette flow), as far as the chamber fills
 * Torque     V·Δp/(2·π) + Cv·μ·n·V + Cf·V·Δp/(2·π) + T0; W. E. Wilson, "Rotary-pump theory", Trans. ASME 68 (1946) 371 (from
 *            memory)
 * </pre>
 *
 * @param displacement V [m³/rev]
 * @param face         face gaps
 * @param tip          tip gaps
 * @param opening      rise of each clearance with pressure [m/Pa]
 * @param orificeArea  area of the slip that viscosity does not change [m²]
 * @param drag         what it takes to turn
 */
public record PumpChamber(double displacement, Face face, Tip tip, double opening, double orificeArea, Drag drag)
        implements Part {

    /** Cd of the orifice-like slip: a sharp edge. */
    private static final double DISCHARGE = Hole.SHARP_EDGE;

    private static final Form FORM = new Form(List.of("inlet", "outlet"), List.of(), List.of("filling"));

    /**
     * Gaps under the gear faces.
     *
     * @param fit    depth of the pocket and width of the gears
     * @param inner  radius of the shaft or pin that the oil reaches [m]
     * @param outer  root radius of the teeth [m]
     * @param sector share of the circle under pressure [-]
     * @param faces  number of faces
     */
    public record Face(Fit fit, double inner, double outer, double sector, int faces) {
        public Face {
            Check.positive("inner radius of the face", inner);
            Check.within("outer radius of the face", outer, inner * 1.0001, 1);
            Check.within("sector of the face", sector, 0, 1);
            Check.within("number of faces", faces, 1, 8);
        }

        /** The gears float in the middle of their pocket. */
        private SeriesLoss loss(double gap) {
            return Slot.disc(inner, outer, gap / 2, sector).times(faces);
        }
    }

    /**
     * Gaps between tooth tips and housing.
     *
     * @param fit   bore of the pocket and outside diameter of the gear
     * @param land  thickness of a tooth at its tip [m]
     * @param teeth teeth that seal in series
     * @param width total width of the gaps: gear width times the gears that leak side by side [m]
     */
    public record Tip(Fit fit, double land, int teeth, double width) {
        public Tip {
            Check.positive("tip land", land);
            Check.within("number of sealing teeth", teeth, 1, 100);
            Check.positive("width of the tip gaps", width);
        }

        private SeriesLoss loss(double clearance) {
            SeriesLoss one = Slot.flat(width, clearance, land);
            return new SeriesLoss(one.viscous() * teeth, one.kinetic() * teeth);
        }
    }

    /**
     * What the chamber takes to turn.
     *
     * @param viscous  Cv [-]
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

    public PumpChamber {
        Check.positive("displacement", displacement);
        Check.within("opening with pressure", opening, 0, 1e-10);
        Check.positive("area of the orifice-like slip", orificeArea);
    }

    @Override
    public Form form() {
        return FORM;
    }

    @Override
    public Law law(Setting setting) {
        return new Chamber(this, setting);
    }

    /** The slip at a pressure rise; the two clearances are those of the chamber's temperature. */
    private record Slip(SeriesLoss face, SeriesLoss tip, SeriesLoss orifice) {}

    private static final class Chamber implements Law {
        private static final int INLET = 0;
        private static final int OUTLET = 1;

        private final PumpChamber pump;
        private final double speed;
        private final OilAt oil;
        private final double faceGap;
        private final double tipClearance;
        private final SeriesLoss orifice;

        Chamber(PumpChamber pump, Setting setting) {
            this.pump = pump;
            speed = setting.speed();
            oil = setting.oil();
            faceGap = pump.face.fit.gap(oil.temperature());
            tipClearance = pump.tip.fit.gap(oil.temperature()) / 2;
            orifice = new SeriesLoss(
                    Hole.viscous(Math.sqrt(4 * pump.orificeArea / Math.PI), 0),
                    Hole.kinetic(pump.orificeArea, DISCHARGE));
        }

        private Chamber(Chamber other, double speed) {
            pump = other.pump;
            this.speed = speed;
            oil = other.oil;
            faceGap = other.faceGap;
            tipClearance = other.tipClearance;
            orifice = other.orifice;
        }

        @Override
        public Law atSpeed(double other) {
            return new Chamber(this, other);
        }

        @Override
        public void evaluate(Reading in, Stamp out) {
            double inlet = in.pressure(INLET);
            double swept = pump.displacement * speed;
            double filling = in.signal(0);
            out.move(INLET, OUTLET, oil.density(inlet) * filling * swept);
            out.moveSlope(INLET, OUTLET, in.port(INLET), oil.densitySlope(inlet) * filling * swept);
            out.moveSlope(INLET, OUTLET, in.read(0), oil.density(inlet) * swept);

            double opened = opened(in);
            Slip slip = slip(opened);
            out.move(INLET, OUTLET, oil.density(inlet) * filling * dragged());
            out.moveSlope(INLET, OUTLET, in.port(INLET), oil.densitySlope(inlet) * filling * dragged());
            out.moveSlope(INLET, OUTLET, in.read(0), oil.density(inlet) * dragged());

            open(in, out, slip.face, opened > 0 ? pump.opening / (faceGap + opened) : 0);
            open(in, out, slip.tip, opened > 0 ? pump.opening / (tipClearance + opened) : 0);
            out.pass(in, OUTLET, INLET, slip.orifice, oil);
        }

        @Override
        public double delivery() {
            return pump.displacement * speed;
        }

        /** A gap whose relative height grows by {@code growth} per pascal: viscous as its cube, kinetic as its square. */
        private void open(Reading in, Stamp out, SeriesLoss loss, double growth) {
            Flow flow = out.pass(in, OUTLET, INLET, loss, oil);
            if (growth > 0) {
                double mean = (in.pressure(INLET) + in.pressure(OUTLET)) / 2;
                double by = -growth
                        * (3 * loss.viscous() * flow.byViscous() + 2 * loss.kinetic() * flow.byKinetic())
                        * oil.density(mean);
                out.moveSlope(OUTLET, INLET, in.port(OUTLET), by);
                out.moveSlope(OUTLET, INLET, in.port(INLET), -by);
            }
        }

        /** Oil that the tips drag forward where the chamber is full [m³/s]; what pressure opens is left out, a few per cent of it. */
        private double dragged() {
            double surface = Math.PI * pump.tip.fit.inner() * speed;
            return surface * Math.max(tipClearance, 0) * pump.tip.width / 2;
        }

        private double opened(Reading in) {
            return pump.opening * Math.max(in.pressure(OUTLET) - in.pressure(INLET), 0);
        }

        private Slip slip(double opened) {
            return new Slip(
                    faceGap > 0 ? pump.face.loss(faceGap + opened) : SeriesLoss.SHUT,
                    tipClearance > 0 ? pump.tip.loss(tipClearance + opened) : SeriesLoss.SHUT,
                    orifice);
        }

        @Override
        public List<Stream> streams(Reading in) {
            double swept = pump.displacement * speed * in.signal(0);
            Slip slip = slip(opened(in));
            double carried = dragged() * in.signal(0);
            Stream face = Stream.through("face-slip", in, OUTLET, INLET, slip.face, oil);
            Stream tip = Stream.through("tip-slip", in, OUTLET, INLET, slip.tip, oil);
            Stream mesh = Stream.through("mesh-slip", in, OUTLET, INLET, slip.orifice, oil);
            return List.of(
                    new Stream("delivery", INLET, OUTLET, oil.density(in.pressure(INLET)) * swept, swept),
                    new Stream("tip-drag", INLET, OUTLET, oil.density(in.pressure(INLET)) * carried, carried),
                    face,
                    tip,
                    mesh);
        }

        @Override
        public List<Measure> measures(Reading in) {
            double rise = in.pressure(OUTLET) - in.pressure(INLET);
            double perRadian = pump.displacement / (2 * Math.PI);
            double viscous = pump.drag.viscous * oil.viscosity(in.pressure(OUTLET)) * speed * pump.displacement;
            double torque =
                    perRadian * rise + viscous + pump.drag.friction * perRadian * Math.abs(rise) + pump.drag.constant;
            return List.of(
                    new Measure("torque_n_m", torque),
                    new Measure("power_w", torque * 2 * Math.PI * speed),
                    new Measure("pressure_rise_pa", rise),
                    new Measure("face_gap_m", faceGap),
                    new Measure("tip_clearance_m", tipClearance));
        }
    }
}
