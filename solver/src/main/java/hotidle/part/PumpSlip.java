package hotidle.part;

import hotidle.law.Channel;
import hotidle.law.Couette;
import hotidle.law.Flow;
import hotidle.law.Hole;
import hotidle.law.SeriesLoss;
import hotidle.law.Slot;
import hotidle.oil.OilAt;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * What slips back in a pump: through gaps of known size, or by coefficients fitted to a test.
 *
 * <pre>
 * Faces      radial flow over a sector; tips and other lands in series; both {@link Slot}. Both clearances open by
 *            {@code opening} per pascal of pressure rise
 * Tip drag   the gears' half of the speed of their tips drags oil along the housing, U·h/2 per width of gap: forward where the tips
 *            seal from outlet to inlet (plane Couette flow), as far as the pump fills
 * Fitted     laminar·Δp/μ, an orifice of {@code orificeArea} whatever the viscosity ({@link Hole}), and a share of what is swept:
 *            W. E. Wilson, "Rotary-pump theory", Trans. ASME 68 (1946) 371, with the orifice term of J. Dorey, "Modelling of
 *            losses in pumps and motors", 1st Bath Int. Fluid Workshop, 1988 (both from memory)
 * </pre>
 *
 * All of them add up; those that are not known are left out. Past 300 lines, since each way oil slips
 * has its sizes, its flow and its slopes here.
 *
 * @param faces       gaps under the gears' or rotor's faces
 * @param tips        gaps along the housing
 * @param opening     rise of each clearance with pressure [m/Pa]
 * @param laminar     fitted laminar coefficient: slip times viscosity over pressure rise [m³], 0 for none
 * @param orificeArea area of the slip that viscosity does not change [m²], above zero
 * @param speedShare  share of the swept volume lost at every speed and pressure [-], 0 for none
 */
public record PumpSlip(
        List<Face> faces, List<Tip> tips, double opening, double laminar, double orificeArea, double speedShare) {

    /** That the oil between the faces takes. */
    public static final Measure FACE_DRAG =
            new Measure("face_drag_w", Measure.QuantityKind.POWER, "that the oil between the faces takes");

    private static final int INLET = 0;
    private static final int OUTLET = 1;

    /** A clearance that closes when cold is left this [m]: the pump would seize before (assumed). */
    private static final double TIGHTEST = 1e-6;

    /** Cd of the orifice-like slip: a sharp edge. */
    private static final double DISCHARGE = Hole.SHARP_EDGE;

    public PumpSlip {
        faces = List.copyOf(faces);
        tips = List.copyOf(tips);
        Check.within("opening with pressure", opening, 0, 1e-10);
        Check.within("laminar slip", laminar, 0, 1e-9);
        Check.positive("area of the orifice-like slip", orificeArea);
        Check.within("share of the swept volume lost", speedShare, 0, 0.9);
    }

    /**
     * A gap under faces that turn.
     *
     * @param name   for example face
     * @param fit    depth of the pocket and width of the gears
     * @param inner  radius of the shaft or pin that the oil reaches [m]
     * @param outer  root radius of the teeth [m]
     * @param sector share of the circle under pressure [-]
     * @param count  number of faces
     * @param turns  their speed over the engine's [-]
     */
    public record Face(String name, Fit fit, double inner, double outer, double sector, int count, double turns) {
        public Face {
            Check.positive("inner radius of the face", inner);
            Check.within("outer radius of the face", outer, inner * 1.0001, 1);
            Check.within("sector of the face", sector, 0, 1);
            Check.within("number of faces", count, 1, 8);
            Check.notNegative("turns of the faces", turns);
        }

        /** How wide it is at temperature. */
        public Measure gap() {
            return new Measure(name.replace('-', '_') + "_gap_m", Measure.QuantityKind.LENGTH, "at temperature");
        }

        /** The gears float in the middle of their pocket. */
        private SeriesLoss loss(double gap) {
            return Slot.disc(inner, outer, gap / 2, sector).times(count);
        }
    }

    /**
     * Gaps between what turns and the housing or crescent.
     *
     * @param name    for example tip
     * @param fit     bore of the pocket and outside diameter of the gear; or inside diameter of a ring gear's teeth and that of the
     *                crescent inside them
     * @param land    thickness of a tooth at its tip, or length of a land along the flow [m]
     * @param teeth   teeth that seal in series
     * @param width   total width of the gaps: gear width times the gears that leak side by side [m]
     * @param surface diameter of the moving surface over the engine's revolutions [m]: that of the gear times its own speed over the
     *                engine's
     */
    public record Tip(String name, Fit fit, double land, int teeth, double width, double surface) {
        public Tip {
            Check.positive("tip land", land);
            Check.within("number of sealing teeth", teeth, 1, 100);
            Check.positive("width of the tip gaps", width);
            Check.notNegative("diameter of the moving surface", surface);
        }

        /** How wide it is at temperature. */
        public Measure clearance() {
            return new Measure(name.replace('-', '_') + "_clearance_m", Measure.QuantityKind.LENGTH, "at temperature");
        }

        private SeriesLoss loss(double clearance) {
            SeriesLoss one = Slot.flat(width, clearance, land);
            return new SeriesLoss(one.viscous() * teeth, one.kinetic() * teeth);
        }
    }

    List<Measure> measures() {
        List<Measure> measures = new ArrayList<>();
        if (!faces.isEmpty()) {
            measures.add(FACE_DRAG);
        }
        faces.forEach(face -> measures.add(face.gap()));
        tips.forEach(tip -> measures.add(tip.clearance()));
        return measures;
    }

    Map<String, Channel> channels() {
        Map<String, Channel> channels = new LinkedHashMap<>();
        for (Face face : faces) {
            channels.put(face.name + "-slip", Channel.slot(2 * Math.PI * face.inner * face.sector * face.count));
        }
        for (Tip tip : tips) {
            channels.put(tip.name + "-slip", Channel.slot(tip.width));
        }
        channels.put("orifice-slip", Channel.hole(Math.sqrt(4 * orificeArea / Math.PI), 1));
        return channels;
    }

    Map<String, Fit> fits() {
        Map<String, Fit> fits = new LinkedHashMap<>();
        faces.forEach(face -> fits.put(face.name + " clearance", face.fit));
        tips.forEach(tip -> fits.put("diametral " + tip.name + " clearance", tip.fit));
        return fits;
    }

    /** The slip at a duty. */
    At at(Setting setting) {
        return new At(this, setting);
    }

    /** Slip with the clearances of one temperature. */
    static final class At {
        private final PumpSlip slip;
        private final OilAt oil;
        private final double[] faceGap;
        private final double[] tipClearance;
        private final SeriesLoss[] faceLoss;
        private final SeriesLoss[] tipLoss;
        private final double turned;
        private final double dragged;
        private final SeriesLoss orifice;
        private final SeriesLoss fitted;

        At(PumpSlip slip, Setting setting) {
            this.slip = slip;
            oil = setting.oil();
            faceGap = slip.faces.stream()
                    .mapToDouble(face -> face.fit.gap(oil.temperature()))
                    .toArray();
            tipClearance = slip.tips.stream()
                    .mapToDouble(tip -> tip.fit.gap(oil.temperature()) / 2)
                    .toArray();
            faceLoss = IntStream.range(0, faceGap.length)
                    .mapToObj(i -> faceGap[i] > 0 ? slip.faces.get(i).loss(faceGap[i]) : SeriesLoss.SHUT)
                    .toArray(SeriesLoss[]::new);
            tipLoss = IntStream.range(0, tipClearance.length)
                    .mapToObj(i -> tipClearance[i] > 0 ? slip.tips.get(i).loss(tipClearance[i]) : SeriesLoss.SHUT)
                    .toArray(SeriesLoss[]::new);
            orifice = new SeriesLoss(
                    Hole.viscous(Math.sqrt(4 * slip.orificeArea / Math.PI), 0),
                    Hole.kinetic(slip.orificeArea, DISCHARGE));
            fitted = slip.laminar > 0 ? new SeriesLoss(1 / slip.laminar, 0) : SeriesLoss.SHUT;
            double sum = 0;
            for (int i = 0; i < tipClearance.length; i++) {
                Tip tip = slip.tips.get(i);
                sum += Math.PI * tip.surface * Math.max(tipClearance[i], 0) * tip.width / 2;
            }
            turned = sum;
            dragged = turned * setting.speed();
        }

        private At(At other, double speed) {
            slip = other.slip;
            oil = other.oil;
            faceGap = other.faceGap;
            tipClearance = other.tipClearance;
            faceLoss = other.faceLoss;
            tipLoss = other.tipLoss;
            orifice = other.orifice;
            fitted = other.fitted;
            turned = other.turned;
            dragged = turned * speed;
        }

        /** The same slip at another speed [rev/s]. */
        At atSpeed(double speed) {
            return new At(this, speed);
        }

        /** Oil that the tips drag forward in a full pump [m³/s]; what pressure opens is left out, a few per cent of it. */
        double dragged() {
            return dragged;
        }

        void evaluate(Reading in, Stamp out) {
            double opened = opened(in);
            for (int i = 0; i < faceGap.length; i++) {
                open(in, out, faceLoss[i], faceGap[i], opened);
            }
            for (int i = 0; i < tipClearance.length; i++) {
                open(in, out, tipLoss[i], tipClearance[i], opened);
            }
            out.pass(in, OUTLET, INLET, orifice, oil);
            out.pass(in, OUTLET, INLET, fitted, oil);
        }

        /** A gap that pressure opens: its viscous coefficient falls as the cube of its height, its kinetic one as the square. */
        private void open(Reading in, Stamp out, SeriesLoss loss, double gap, double opened) {
            double closer = closer(gap, opened);
            double viscous = loss.viscous() * closer * closer * closer;
            double kinetic = loss.kinetic() * closer * closer;
            Flow flow = out.pass(in, OUTLET, INLET, viscous, kinetic, oil);
            if (closer < 1 && Double.isFinite(viscous)) {
                double mean = (in.pressure(INLET) + in.pressure(OUTLET)) / 2;
                double by = -slip.opening
                        / (gap + opened)
                        * (3 * viscous * flow.byViscous() + 2 * kinetic * flow.byKinetic())
                        * oil.density(mean);
                out.moveSlope(OUTLET, INLET, in.port(OUTLET), by);
                out.moveSlope(OUTLET, INLET, in.port(INLET), -by);
            }
        }

        private double opened(Reading in) {
            return slip.opening * Math.max(in.pressure(OUTLET) - in.pressure(INLET), 0);
        }

        /** Height of a gap without pressure over that with it; a gap that is shut stays so. */
        private static double closer(double gap, double opened) {
            return gap > 0 ? gap / (gap + opened) : 1;
        }

        private static SeriesLoss opened(SeriesLoss loss, double gap, double opened) {
            double closer = closer(gap, opened);
            return new SeriesLoss(loss.viscous() * closer * closer * closer, loss.kinetic() * closer * closer);
        }

        List<Stream> streams(Reading in) {
            double opened = opened(in);
            List<Stream> streams = new ArrayList<>();
            for (int i = 0; i < faceGap.length; i++) {
                streams.add(stream(slip.faces.get(i).name, in, opened(faceLoss[i], faceGap[i], opened)));
            }
            for (int i = 0; i < tipClearance.length; i++) {
                streams.add(stream(slip.tips.get(i).name, in, opened(tipLoss[i], tipClearance[i], opened)));
            }
            streams.add(stream("orifice", in, orifice));
            if (slip.laminar > 0) {
                streams.add(stream("laminar", in, fitted));
            }
            return streams;
        }

        private Stream stream(String name, Reading in, SeriesLoss loss) {
            return Stream.through(name + "-slip", in, OUTLET, INLET, loss, oil);
        }

        /** Power that the faces' Couette flow takes at an engine speed [W]; reported only, the torque's Cv stands for all viscous drag. */
        private double faceDrag(double speed) {
            double sum = 0;
            for (int i = 0; i < faceGap.length; i++) {
                Face face = slip.faces.get(i);
                double gap = Math.max(faceGap[i], TIGHTEST) / 2;
                sum += face.count * Couette.disc(oil.viscosity(), face.turns * speed, face.inner, face.outer, gap);
            }
            return sum;
        }

        List<Measure.Reported> measures(double speed) {
            List<Measure.Reported> measures = new ArrayList<>();
            if (faceGap.length > 0) {
                measures.add(FACE_DRAG.of(faceDrag(speed)));
            }
            for (int i = 0; i < faceGap.length; i++) {
                measures.add(slip.faces.get(i).gap().of(faceGap[i]));
            }
            for (int i = 0; i < tipClearance.length; i++) {
                measures.add(slip.tips.get(i).clearance().of(tipClearance[i]));
            }
            return measures;
        }
    }
}
