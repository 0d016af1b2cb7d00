package hotidle.part;

import hotidle.law.Channel;
import hotidle.law.PipeLoss;
import java.util.Map;

/**
 * A drilled or cast passage; law and source in {@link PipeLoss}.
 *
 * @param diameter  [m]
 * @param length    [m]
 * @param roughness of the wall [m]
 * @param losses    sum of the loss coefficients of bends, entry and exit [-]
 */
public record Passage(double diameter, double length, double roughness, double losses) implements Part {

    public Passage {
        Check.positive("passage diameter", diameter);
        Check.positive("passage length", length);
        Check.within("passage roughness", roughness, 0, diameter / 4);
        Check.notNegative("loss coefficient", losses);
    }

    @Override
    public Map<String, Channel> channels() {
        return Map.of("", Channel.pipe(diameter, 1));
    }

    @Override
    public Form form() {
        return Form.THROUGH;
    }

    @Override
    public Law law(Setting setting) {
        return new Through(new PipeLoss(diameter, length, roughness, losses), setting.oil());
    }
}
