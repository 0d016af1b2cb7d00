package hotidle.part;

import hotidle.law.RatedPoint;

/**
 * A cooler with its hoses, known by a rated point of flow and drop.
 *
 * @param rated      drop at a flow
 * @param blocked    share of its tubes that are blocked [-], 0 to 0.999
 * @param neededFlow flow that it should have [m³/s]
 */
public record Cooler(RatedPoint rated, double blocked, double neededFlow) implements Part {

    public Cooler {
        Check.within("blocked share", blocked, 0, 0.999);
        Check.notNegative("flow needed", neededFlow);
    }

    @Override
    public Form form() {
        return Form.THROUGH;
    }

    @Override
    public Law law(Setting setting) {
        return new Through(rated.loss(blocked), setting.oil());
    }
}
