package hotidle.law;

/**
 * A clutch that slips with a steady torque until both sides turn alike.
 *
 * <pre>
 * Formula   dω1/dt = (M1 − T)/I1, dω2/dt = (T − M2)/I2: the slip falls by a = (T − M1)/I1 + (T − M2)/I2, so t = Δω/a; heat = T·Δω·t/2
 * Source    R. S. Khurmi, J. K. Gupta, Theory of Machines, ex. 10.27; U. C. Jindal, Machine Design, ex. 22-1 (found)
 * Range     stiff shafts; a torque that does not change while it slips
 * </pre>
 *
 * @param torque         T of the clutch, slipping [N·m], above zero
 * @param slip           Δω at the start [rad/s], zero or more
 * @param drivingInertia I1 of the faster side [kg·m²], infinite where it keeps its speed
 * @param driving        M1 that drives the faster side [N·m]
 * @param drivenInertia  I2 of the slower side [kg·m²], infinite where it keeps its speed
 * @param resisting      M2 that holds the slower side back [N·m]
 */
public record ClosingClutch(
        double torque, double slip, double drivingInertia, double driving, double drivenInertia, double resisting) {

    public ClosingClutch {
        if (!(torque > 0 && slip >= 0 && drivingInertia > 0 && drivenInertia > 0)) {
            throw new IllegalArgumentException("a clutch of " + torque + " N·m that slips by " + slip
                    + " rad/s between " + drivingInertia + " and " + drivenInertia + " kg·m²");
        }
    }

    /** How fast the slip falls [rad/s²]; not above zero where the clutch never closes. */
    public double deceleration() {
        return (torque - driving) / drivingInertia + (torque - resisting) / drivenInertia;
    }

    /** Whether it closes. */
    public boolean closes() {
        return slip == 0 || deceleration() > 0;
    }

    /** Time until it does [s]; infinite where it never does. */
    public double time() {
        if (slip == 0) {
            return 0;
        }
        return closes() ? slip / deceleration() : Double.POSITIVE_INFINITY;
    }

    /** Heat that it makes [J]; infinite where it never closes. */
    public double heat() {
        return slip == 0 ? 0 : torque * slip * time() / 2;
    }

    /** Heat at the start, when it is largest [W]. */
    public double power() {
        return torque * slip;
    }

    /**
     * Rise of a plate's temperature when heat flows into it from both sides and none leaves it [K].
     *
     * @param heat      over the area of all rubbing surfaces [J/m²]
     * @param thickness of the plate [m]
     * @param density   of its steel [kg/m³]
     * @param specific  heat of its steel [J/(kg·K)]
     */
    public static double rise(double heat, double thickness, double density, double specific) {
        return 2 * heat / (thickness * density * specific);
    }
}
