package hotidle.part;

import hotidle.law.Hole;

/**
 * An orifice in a separator plate or a drilled hole; law and source in {@link Hole}.
 *
 * @param diameter             [m]
 * @param length               thickness of the plate [m], 0 for a sharp edge
 * @param dischargeCoefficient Cd [-], 0.3 to 1
 * @param count                equal holes side by side
 */
public record Orifice(double diameter, double length, double dischargeCoefficient, int count) implements Part {

    public Orifice {
        Check.positive("orifice diameter", diameter);
        Check.notNegative("orifice length", length);
        Check.within("discharge coefficient", dischargeCoefficient, 0.3, 1);
        Check.within("number of holes", count, 1, 1000);
    }

    @Override
    public Form form() {
        return Form.THROUGH;
    }

    @Override
    public Law law(Setting setting) {
        return new Through(Hole.loss(diameter, length, dischargeCoefficient).times(count), setting.oil());
    }
}
