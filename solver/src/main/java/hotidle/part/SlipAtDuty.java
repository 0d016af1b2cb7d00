package hotidle.part;

import hotidle.law.Couette;
import hotidle.law.Flow;
import hotidle.law.Hole;
import hotidle.law.SeriesLoss;
import hotidle.law.Slot;
import hotidle.oil.OilAt;
import java.util.ArrayList;
import java.util.List;

/** The slip of a pump settled at a duty, with the clearances of one temperature; formulas in {@link PumpSlip}. */
final class SlipAtDuty {

    private static final int INLET = 0;
    private static final int OUTLET = 1;
    private static final int FILLING = 0;
    private static final int ECCENTRICITY = 1;

    /** Cd of the orifice-like slip: a sharp edge. */
    private static final double DISCHARGE = Hole.SHARP_EDGE;

    /** A drag below this drags nothing [m³/s]. */
    private static final double LEAST = 1e-30;

    /** Power in which a shift of centre is kept below the clearance: high, so that little is changed below it. */
    private static final double TOUCHING = 8;

    /** Power in which what tips keep back goes over from the whole slip to the whole drag: high, so that the lesser of both is kept. */
    private static final double LESSER = 4;

    /** A slip of this size keeps back half of itself, whatever the drag: far below any that counts, it rounds the bend at none [m³/s]. */
    private static final double ROUNDED = 1e-11;

    /**
     * A gap as it stands at the duty.
     *
     * @param name  of its stream, without -slip
     * @param loss  without pressure
     * @param rate  rise of its height with pressure, over itself [1/Pa]
     * @param shift of the gear's centre in a bushing in which the hub touches, over its height; 0 where the centre stays
     * @param drag  what its moving wall drags along in a turn of the engine [m³]
     */
    private record Gap(String name, SeriesLoss loss, double rate, double shift, double drag) {

        /** Height without pressure over that with it. */
        double closer(double rise) {
            return 1 / (1 + rate * Math.max(rise, 0));
        }

        /** ε at an eccentricity of the hub. */
        double off(double eccentricity) {
            double x = shift * eccentricity;
            return x / Math.pow(1 + Math.pow(x, TOUCHING), 1 / TOUCHING);
        }

        double offSlope(double eccentricity) {
            return shift * Math.pow(1 + Math.pow(shift * eccentricity, TOUCHING), -1 / TOUCHING - 1);
        }
    }

    private final PumpSlip slip;
    private final OilAt oil;
    private final double speed;
    private final double[] faceGap;
    private final double[] tipClearance;
    private final List<Gap> gaps;
    private final SeriesLoss orifice;
    private final boolean readsHub;

    SlipAtDuty(PumpSlip slip, Setting setting) {
        this.slip = slip;
        readsHub = slip.readsHub();
        oil = setting.oil();
        speed = setting.speed();
        double warm = oil.temperature();
        faceGap =
                slip.faces().stream().mapToDouble(face -> face.fit().gap(warm)).toArray();
        tipClearance =
                slip.tips().stream().mapToDouble(tip -> tip.fit().gap(warm) / 2).toArray();
        gaps = gaps(warm);
        orifice = new SeriesLoss(
                Hole.viscous(Math.sqrt(4 * slip.orificeArea() / Math.PI), 0),
                Hole.kinetic(slip.orificeArea(), DISCHARGE));
    }

    private SlipAtDuty(SlipAtDuty other, double speed) {
        slip = other.slip;
        oil = other.oil;
        this.speed = speed;
        faceGap = other.faceGap;
        tipClearance = other.tipClearance;
        gaps = other.gaps;
        orifice = other.orifice;
        readsHub = other.readsHub;
    }

    private List<Gap> gaps(double warm) {
        List<Gap> all = new ArrayList<>();
        for (int i = 0; i < faceGap.length; i++) {
            PumpSlip.Face face = slip.faces().get(i);
            all.add(new Gap(face.name(), PumpSlip.loss(face, faceGap[i]), rate(faceGap[i]), 0, 0));
        }
        for (int i = 0; i < tipClearance.length; i++) {
            PumpSlip.Tip tip = slip.tips().get(i);
            double clearance = tipClearance[i];
            double play = tip.hub().map(hub -> Math.max(hub.gap(warm) / 2, 0)).orElse(0.0);
            double shift = clearance > 0 ? play / clearance : 0;
            double drag = Math.PI * tip.surface() * Math.max(clearance, 0) * tip.width() / 2;
            all.add(new Gap(tip.name(), PumpSlip.loss(tip, clearance), rate(clearance), shift, drag));
        }
        PumpSlip.Fitted fitted = slip.fitted();
        if (fitted.laminar() > 0) {
            all.add(new Gap("laminar", new SeriesLoss(1 / fitted.laminar(), 0), fitted.growth(), 0, 0));
        }
        return List.copyOf(all);
    }

    /** Rise of a gap with pressure, over itself; one that is shut stays so. */
    private double rate(double gap) {
        return gap > 0 ? slip.opening() / gap : 0;
    }

    /** The same slip at another speed [rev/s]. */
    SlipAtDuty atSpeed(double other) {
        return new SlipAtDuty(this, other);
    }

    void evaluate(Reading in, Stamp out) {
        for (Gap gap : gaps) {
            pass(gap, in, out);
        }
        out.pass(in, OUTLET, INLET, orifice, oil);
    }

    private double rise(Reading in) {
        return in.pressure(OUTLET) - in.pressure(INLET);
    }

    private double eccentricity(Reading in) {
        return readsHub ? in.signal(ECCENTRICITY) : 0;
    }

    /** A gap that pressure opens: its viscous coefficient falls as the cube of its height, its kinetic one as the square. */
    private void pass(Gap gap, Reading in, Stamp out) {
        double viscous = viscous(gap, in);
        double closer = gap.closer(rise(in));
        double kinetic = gap.loss.kinetic() * closer * closer;
        Flow flow = out.pass(in, OUTLET, INLET, viscous, kinetic, oil);
        if (Double.isInfinite(viscous)) {
            return;
        }
        double mean = (in.pressure(INLET) + in.pressure(OUTLET)) / 2;
        double opening =
                closer < 1 ? -gap.rate * closer * (3 * viscous * flow.byViscous() + 2 * kinetic * flow.byKinetic()) : 0;
        out.moveSlope(OUTLET, INLET, in.port(OUTLET), opening * oil.density(mean));
        out.moveSlope(OUTLET, INLET, in.port(INLET), -opening * oil.density(mean));
        double off = gap.off(eccentricity(in));
        double byHub = gap.shift == 0
                ? 0
                : -flow.byViscous() * viscous * 3 * off / Slot.eccentricityFactor(off) * gap.offSlope(eccentricity(in));
        if (gap.shift > 0) {
            out.moveSlope(OUTLET, INLET, in.read(ECCENTRICITY), byHub * oil.density(mean));
        }
        if (gap.drag * speed > 0) {
            double byMean = flow.byDensity() * oil.densitySlope(mean) + flow.byViscosity() * oil.viscositySlope(mean);
            double up = flow.byDrop() + opening;
            drag(gap, flow.q(), up + byMean / 2, -up + byMean / 2, byHub, in, out);
        }
    }

    /** Viscous coefficient of a gap with its pressure and the place of its gear. */
    private double viscous(Gap gap, Reading in) {
        double closer = gap.closer(rise(in));
        return gap.loss.viscous()
                * closer
                * closer
                * closer
                / Slot.eccentricityFactor(gap.shift > 0 ? gap.off(eccentricity(in)) : 0);
    }

    /** What the tips keep back of a slip q [m³/s], with the slopes of q by the outlet's and inlet's pressure and the hub. */
    private void drag(Gap gap, double q, double byOutlet, double byInlet, double byHub, Reading in, Stamp out) {
        double full = drag(gap, in);
        if (q <= 0) {
            return;
        }
        double inlet = in.pressure(INLET);
        double density = oil.density(inlet);
        double back = keptBack(full, q);
        double ratio = rounded(q) / full;
        double byRounded = full > LEAST ? Math.pow(1 + Math.pow(ratio, LESSER), -1 - 1 / LESSER) : 0;
        double slope = byRounded * (1 - Math.pow(ROUNDED / (q + ROUNDED), 2));
        out.move(INLET, OUTLET, density * back);
        out.moveSlope(INLET, OUTLET, in.port(OUTLET), density * slope * byOutlet);
        out.moveSlope(INLET, OUTLET, in.port(INLET), density * slope * byInlet + oil.densitySlope(inlet) * back);
        double byFull = full > LEAST ? back / full - ratio * byRounded : 1;
        out.moveSlope(INLET, OUTLET, in.read(FILLING), density * gap.drag * speed * byFull);
        if (gap.shift > 0) {
            out.moveSlope(INLET, OUTLET, in.read(ECCENTRICITY), density * slope * byHub);
        }
    }

    /** What the tips drag along, as far as the pump fills [m³/s]. */
    private double drag(Gap gap, Reading in) {
        return gap.drag * speed * Math.max(in.signal(FILLING), 0);
    }

    /** What a drag keeps back of a slip [m³/s]. */
    private static double keptBack(double full, double q) {
        double ratio = rounded(q) / full;
        return q > 0 && full > LEAST ? rounded(q) * Math.pow(1 + Math.pow(ratio, LESSER), -1 / LESSER) : 0;
    }

    private static double rounded(double q) {
        return q * q / (q + ROUNDED);
    }

    /** All that slips back, and what the tips drag forward against it. */
    List<Stream> streams(Reading in) {
        List<Stream> streams = new ArrayList<>();
        double carried = 0;
        for (Gap gap : gaps) {
            double closer = gap.closer(rise(in));
            SeriesLoss loss = new SeriesLoss(viscous(gap, in), gap.loss.kinetic() * closer * closer);
            Stream stream = stream(gap.name, in, loss);
            streams.add(stream);
            carried += keptBack(drag(gap, in), stream.volume());
        }
        streams.add(0, new Stream("tip-drag", INLET, OUTLET, oil.density(in.pressure(INLET)) * carried, carried));
        boolean fitted = slip.fitted().laminar() > 0;
        streams.add(fitted ? streams.size() - 1 : streams.size(), stream("orifice", in, orifice));
        return streams;
    }

    private Stream stream(String name, Reading in, SeriesLoss loss) {
        return Stream.through(name + "-slip", in, OUTLET, INLET, loss, oil);
    }

    /** Power that the faces' Couette flow takes, all round the circle [W]; a part of the chamber's torque. */
    double faceDrag() {
        double sum = 0;
        for (int i = 0; i < faceGap.length; i++) {
            PumpSlip.Face face = slip.faces().get(i);
            double gap = Math.max(faceGap[i], FaceGap.TIGHTEST) / 2;
            sum += face.count() * Couette.disc(oil.viscosity(), face.turns() * speed, face.inner(), face.outer(), gap);
        }
        return sum;
    }

    List<Measure.Reported> measures() {
        List<Measure.Reported> measures = new ArrayList<>();
        if (faceGap.length > 0) {
            measures.add(PumpSlip.FACE_DRAG.of(faceDrag()));
        }
        for (int i = 0; i < faceGap.length; i++) {
            measures.add(slip.faces().get(i).gap().of(faceGap[i]));
        }
        for (int i = 0; i < tipClearance.length; i++) {
            measures.add(slip.tips().get(i).clearance().of(tipClearance[i]));
        }
        return measures;
    }
}
