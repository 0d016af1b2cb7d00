package hotidle.transmission;

import hotidle.geartrain.Drive;
import java.util.Map;
import java.util.Optional;

/**
 * A range of the unit.
 *
 * @param name    for example first
 * @param forward whether it drives the vehicle forward; set pressure is quoted in these
 * @param applied clutches that carry pressure, with what each has to hold
 * @param open    slip speed of packs that are not applied, over the turbine's speed [-]; those left out drag nothing
 * @param driven  what the gear train does; empty where it is not given or nothing drives
 */
public record Range(
        String name,
        boolean forward,
        Map<String, Applied> applied,
        Map<String, Double> open,
        Optional<Drive.Driven> driven) {

    /**
     * What a clutch does in a range.
     *
     * @param torqueShare its torque over the turbine's torque [-]
     * @param speedRatio  speed of its drum over the turbine's speed [-]
     */
    public record Applied(double torqueShare, double speedRatio) {}

    public Range {
        applied = Map.copyOf(applied);
        open = Map.copyOf(open);
    }

    /** A range of a unit whose gear train is not given. */
    public Range(String name, boolean forward, Map<String, Applied> applied, Map<String, Double> open) {
        this(name, forward, applied, open, Optional.empty());
    }

    /** A range whose open packs are not known to drag. */
    public Range(String name, boolean forward, Map<String, Applied> applied) {
        this(name, forward, applied, Map.of(), Optional.empty());
    }
}
