package hotidle.part;

import hotidle.law.Channel;
import hotidle.law.Slot;
import java.util.Map;

/**
 * Radial leak under a gear or a thrust face; law and source in {@link Slot}.
 *
 * @param inner  radius that the oil leaks to or from [m]
 * @param outer  radius on the other side [m]
 * @param fit    depth of the pocket and width of the gear; what is between them is shared by both faces
 * @param share  share of that clearance on the leaking face [-], 0.5 where the gear floats in the middle
 * @param sector share of the circle under pressure [-]
 * @param faces  faces that leak side by side
 */
public record FaceGap(double inner, double outer, Fit fit, double share, double sector, int faces) implements Part {

    public FaceGap {
        Check.positive("inner radius", inner);
        Check.within("outer radius", outer, inner * 1.0001, 1);
        Check.within("share of the clearance", share, 0.01, 1);
        Check.within("sector", sector, 0.001, 1);
        Check.within("number of faces", faces, 1, 4);
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
    public Form form() {
        return Form.THROUGH;
    }

    @Override
    public Law law(Setting setting) {
        double height = fit.gap(setting.oil().temperature()) * share;
        return new Through(Slot.disc(inner, outer, height, sector).times(faces), setting.oil());
    }
}
