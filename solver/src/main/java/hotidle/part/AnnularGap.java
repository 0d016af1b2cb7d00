package hotidle.part;

import hotidle.law.Channel;
import hotidle.law.Slot;
import java.util.Map;

/**
 * The leak between a bore and the valve or shaft in it; law and source in {@link Slot}.
 *
 * @param fit          bore and valve, diametral
 * @param length       of the land [m]
 * @param eccentricity [-], 0 concentric to 1 touching the wall
 * @param count        equal gaps side by side [-], 1 to 200
 */
public record AnnularGap(Fit fit, double length, double eccentricity, int count) implements Part {

    /** One gap. */
    public AnnularGap(Fit fit, double length, double eccentricity) {
        this(fit, length, eccentricity, 1);
    }

    public AnnularGap {
        Check.within("count of gaps", count, 1, 200);
        Check.positive("gap length", length);
        Check.within("eccentricity", eccentricity, 0, 1);
    }

    @Override
    public Map<String, Channel> channels() {
        return Map.of("", Channel.slot(Math.PI * fit.inner() * count));
    }

    @Override
    public Map<String, Fit> fits() {
        return Map.of("diametral clearance", fit);
    }

    @Override
    public Form form() {
        return Form.THROUGH;
    }

    @Override
    public Law law(Setting setting) {
        double clearance = fit.gap(setting.oil().temperature()) / 2;
        return new Through(
                Slot.annular(fit.inner(), clearance, length, eccentricity).times(count), setting.oil());
    }
}
