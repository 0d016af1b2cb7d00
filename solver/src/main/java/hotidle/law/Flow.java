package hotidle.law;

/**
 * A volume flow with its slopes.
 *
 * @param q           volume flow [m³/s], with the sign of the drop
 * @param byDrop      dq/dΔp [m³/(s·Pa)]
 * @param byViscous   dq/d(viscous coefficient) [m⁶/s]
 * @param byKinetic   dq/d(kinetic coefficient) [m⁷/s]
 * @param byViscosity dq/dμ [m³/(s·Pa·s)]
 * @param byDensity   dq/dρ [m⁶/(s·kg)]
 */
public record Flow(double q, double byDrop, double byViscous, double byKinetic, double byViscosity, double byDensity) {

    /** No flow, whatever the drop. */
    public static final Flow NONE = new Flow(0, 0, 0, 0, 0, 0);

    /** The flow of several equal paths side by side; slopes by coefficients are those of one path and are dropped. */
    public Flow times(double count) {
        return new Flow(q * count, byDrop * count, 0, 0, byViscosity * count, byDensity * count);
    }
}
