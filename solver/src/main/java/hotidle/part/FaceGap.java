package hotidle.part;

import hotidle.law.Channel;
import hotidle.law.Couette;
import hotidle.law.SeriesLoss;
import hotidle.law.Slot;
import hotidle.oil.OilAt;
import java.util.List;
import java.util.Map;

/**
 * Radial leak under a gear or a thrust face, and what its oil takes where the face turns; laws and sources in {@link Slot} and
 * {@link Couette}. Oil is sheared all round the circle, whatever the sector under pressure.
 *
 * @param inner  radius that the oil leaks to or from [m]
 * @param outer  radius on the other side [m]
 * @param fit    depth of the pocket and width of the gear; what is between them is shared by both faces
 * @param share  share of that clearance on the leaking face [-], 0.5 where the gear floats in the middle
 * @param sector share of the circle under pressure [-]
 * @param faces  faces that leak side by side
 * @param turns  speed of the face over the engine's [-]; 0 where it stands, or where its drag is counted elsewhere
 */
public record FaceGap(double inner, double outer, Fit fit, double share, double sector, int faces, double turns)
        implements Part {

    /** A clearance that closes when cold is left this for the drag [m]: the gear would seize before. */
    static final double TIGHTEST = 1e-6;

    public FaceGap {
        Check.positive("inner radius", inner);
        Check.within("outer radius", outer, inner * 1.0001, 1);
        Check.within("share of the clearance", share, 0.01, 1);
        Check.within("sector", sector, 0.001, 1);
        Check.within("number of faces", faces, 1, 4);
        Check.within("turns of the face", turns, 0, 10);
    }

    @Override
    public Map<String, Channel> channels() {
        return Map.of("", Channel.slot(2 * Math.PI * inner * sector * faces));
    }

    @Override
    public Map<String, Fit> fits() {
        return Map.of("clearance", fit);
    }

    @Override
    public List<Measure> measures() {
        return List.of(PumpSlip.FACE_DRAG);
    }

    @Override
    public Form form() {
        return Form.THROUGH;
    }

    @Override
    public Law law(Setting setting) {
        double height = fit.gap(setting.oil().temperature()) * share;
        SeriesLoss loss = Slot.disc(inner, outer, height, sector).times(faces);
        return new FaceFilm(this, new Through(loss, setting.oil()), setting.oil(), setting.speed());
    }

    /** Power that its oil takes at a speed of the engine [rev/s, W]. */
    private double drag(OilAt oil, double speed) {
        double height = Math.max(fit.gap(oil.temperature()), TIGHTEST) * share;
        return faces * Couette.disc(oil.viscosity(), turns * speed, inner, outer, height);
    }

    private record FaceFilm(FaceGap gap, Through through, OilAt oil, double speed) implements Law {

        @Override
        public void evaluate(Reading in, Stamp out) {
            through.evaluate(in, out);
        }

        @Override
        public List<Stream> streams(Reading in) {
            return through.streams(in);
        }

        @Override
        public Law atSpeed(double other) {
            return new FaceFilm(gap, through, oil, other);
        }

        @Override
        public List<Measure.Reported> measures(Reading in) {
            return gap.turns > 0 ? List.of(PumpSlip.FACE_DRAG.of(gap.drag(oil, speed))) : List.of();
        }
    }
}
