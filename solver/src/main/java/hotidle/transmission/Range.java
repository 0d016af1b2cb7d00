package hotidle.transmission;

import java.util.Map;

/**
 * A range of the unit.
 *
 * @param name    for example first
 * @param forward whether it drives the vehicle forward; set pressure is quoted in these
 * @param applied clutches that carry pressure, with what each has to hold
 */
public record Range(String name, boolean forward, Map<String, Applied> applied) {

    /**
     * What a clutch does in a range.
     *
     * @param torqueShare its torque over the turbine's torque [-]
     * @param speedRatio  speed of its drum over the turbine's speed [-]
     */
    public record Applied(double torqueShare, double speedRatio) {}

    public Range {
        applied = Map.copyOf(applied);
    }
}
