package hotidle.part;

import hotidle.law.Channel;
import hotidle.law.Hole;
import hotidle.law.SeriesLoss;
import hotidle.law.Slot;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What slips back in a pump: through gaps of known size, or by coefficients fitted to a test.
 *
 * <pre>
 * Faces      radial flow over a sector; tips and other lands in series; both {@link Slot}. Both clearances open by
 *            {@code opening} per pascal of pressure rise
 * Hub        a gear whose hub stands off centre in its bushing by e·C, C the radial clearance there, has tips that are far from the
 *            pocket on one side and close to it on the other: h³ becomes c³·(1 + 1.5·ε²), ε = e·C/c, the mean over the circle of
 *            Merritt 1967 §2-5 (from memory). Where the teeth seal against the direction of the shift is not known so closely: they
 *            leak most where the gear draws away, and up to (1 + ε)³ there. ε is kept below 1, where tips touch, by
 *            x/(1 + x⁸)^⅛, 0.8 % short at x = 0.75
 * Tip drag   the gears' half of the speed of their tips drags oil along the housing, D = U·h/2 per width of gap (plane Couette flow),
 *            against the slip q past them, as far as the pump fills. What it keeps back is the lesser of both, q·D/(q⁴ + D⁴)^¼ (ours):
 *            all of D where pressure drives much more, 0.6 % less at q = 2.5·D, and never more than q, so that no pump delivers
 *            more than it sweeps; nothing where the outlet is below the inlet
 * Fitted     laminar·Δp/μ, an orifice of {@code orificeArea} whatever the viscosity ({@link Hole}), and a share of what is swept:
 *            W. E. Wilson, "Rotary-pump theory", Trans. ASME 68 (1946) 371, with the orifice term of J. Dorey, "Modelling of
 *            losses in pumps and motors", 1st Bath Int. Fluid Workshop, 1988 (both from memory). The laminar one grows with the cube
 *            of clearances that open in proportion to pressure, (1 + growth·Δp)³
 * Speed      V·(1 − share)/(1 + bySpeed·n): at speed the teeth fill a little less than they sweep
 * </pre>
 *
 * All of them add up; those that are not known are left out. Past 300 lines, since each way oil slips
 * has its sizes, its flow and its slopes here.
 *
 * @param faces       gaps under the gears' or rotor's faces
 * @param tips        gaps along the housing
 * @param opening     rise of each clearance with pressure [m/Pa]
 * @param fitted      laminar slip fitted to a test
 * @param orificeArea area of the slip that viscosity does not change [m²], above zero
 * @param lost        what is lost of the swept volume whatever the pressure
 */
public record PumpSlip(List<Face> faces, List<Tip> tips, double opening, Fitted fitted, double orificeArea, Lost lost) {

    /**
     * Laminar slip fitted to a test.
     *
     * @param laminar slip times viscosity over pressure rise, without pressure [m³], 0 for none
     * @param growth  rise of the clearances with pressure, over themselves [1/Pa]
     */
    public record Fitted(double laminar, double growth) {

        /** None: the gaps are known. */
        public static final Fitted NONE = new Fitted(0, 0);

        public Fitted {
            Check.within("laminar slip", laminar, 0, 1e-9);
            Check.within("growth of clearances with pressure", growth, 0, 1e-4);
        }
    }

    /**
     * What is lost of the swept volume whatever the pressure.
     *
     * @param share   at every speed [-]
     * @param bySpeed over revolutions a second [s]
     */
    public record Lost(double share, double bySpeed) {

        /** Nothing. */
        public static final Lost NONE = new Lost(0, 0);

        public Lost {
            Check.within("share of the swept volume lost", share, 0, 0.9);
            Check.within("loss of swept volume with speed", bySpeed, 0, 0.1);
        }

        /** Whether it is nothing. */
        boolean isNone() {
            return share == 0 && bySpeed == 0;
        }

        /** Share of the swept volume that is kept at a speed [rev/s]. */
        public double kept(double speed) {
            return (1 - share) / (1 + bySpeed * speed);
        }
    }

    /** That the oil between the faces takes. */
    public static final Measure FACE_DRAG =
            new Measure("face_drag_w", Measure.QuantityKind.POWER, "that the oil between the faces takes");

    public PumpSlip {
        faces = List.copyOf(faces);
        tips = List.copyOf(tips);
        Check.within("opening with pressure", opening, 0, 1e-10);
        Check.positive("area of the orifice-like slip", orificeArea);
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
     * @param hub     bushing and hub that carry the gear, whose eccentricity is then read; empty where its centre stays
     */
    public record Tip(String name, Fit fit, double land, int teeth, double width, double surface, Optional<Fit> hub) {
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

    /** Whether a gear's place depends on how its hub stands in the bushing. */
    boolean readsHub() {
        return tips.stream().anyMatch(tip -> tip.hub.isPresent());
    }

    /** The slip at a duty. */
    SlipAtDuty at(Setting setting) {
        return new SlipAtDuty(this, setting);
    }

    /** A gap that closes in the cold is shut. */
    static SeriesLoss loss(Face face, double gap) {
        return gap > 0 ? face.loss(gap) : SeriesLoss.SHUT;
    }

    static SeriesLoss loss(Tip tip, double clearance) {
        return clearance > 0 ? tip.loss(clearance) : SeriesLoss.SHUT;
    }
}
