package hotidle.part;

/**
 * What mechanical valves feel of vehicle and driver.
 *
 * @param outputSpeed of the output shaft [rev/s]
 * @param throttle    share to which the throttle is open [-], 0 shut, 1 full
 * @param vacuum      how far the engine's manifold stands below ambient [Pa]
 */
public record Sensed(double outputSpeed, double throttle, double vacuum) {

    /** Standing still, the throttle shut, no vacuum. */
    public static final Sensed NOTHING = new Sensed(0, 0, 0);
}
