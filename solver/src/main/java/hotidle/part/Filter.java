package hotidle.part;

import hotidle.law.RatedPoint;

/**
 * A filter, known by a rated point, and the height to the pump inlet above it.
 *
 * @param rated   drop at a flow of a clean filter
 * @param blocked share of the medium that is blocked [-], 0 to 0.999
 * @param rise    height of the outlet above the oil level, where the filter stands in the sump [m]
 */
public record Filter(RatedPoint rated, double blocked, double rise) implements Part {

    /** Standard gravity, ISO 80000-3 [m/s²]. */
    private static final double GRAVITY = 9.80665;

    public Filter {
        Check.within("blocked share", blocked, 0, 0.999);
        Check.within("rise", rise, -2, 2);
    }

    @Override
    public Form form() {
        return Form.THROUGH;
    }

    @Override
    public Law law(Setting setting) {
        return new Through(rated.loss(blocked), setting.oil(), setting.oil().liquidDensity() * GRAVITY * rise);
    }
}
