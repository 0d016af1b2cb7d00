package hotidle.law;

/**
 * A volume flow with its slopes. Work space of whoever asks a {@link Restriction} for it, written anew at each question, so that
 * Newton's steps make no objects.
 */
public final class Flow {

    private double q;
    private double byDrop;
    private double byViscous;
    private double byKinetic;
    private double byViscosity;
    private double byDensity;

    /** Room for what a law finds on its way. */
    final double[] work = new double[6];

    /** Volume flow [m³/s], with the sign of the drop. */
    public double q() {
        return q;
    }

    /** dq/dΔp [m³/(s·Pa)]. */
    public double byDrop() {
        return byDrop;
    }

    /** dq/d(viscous coefficient) [m⁶/s]; zero where the law has none. */
    public double byViscous() {
        return byViscous;
    }

    /** dq/d(kinetic coefficient) [m⁷/s]; zero where the law has none. */
    public double byKinetic() {
        return byKinetic;
    }

    /** dq/dμ [m³/(s·Pa·s)]. */
    public double byViscosity() {
        return byViscosity;
    }

    /** dq/dρ [m⁶/(s·kg)]. */
    public double byDensity() {
        return byDensity;
    }

    /** No flow, whatever the drop. */
    void none() {
        set(0, 0, 0, 0);
        byCoefficients(0, 0);
    }

    /** A flow and its slopes; none by coefficients. */
    void set(double flow, double drop, double viscosity, double density) {
        q = flow;
        byDrop = drop;
        byViscosity = viscosity;
        byDensity = density;
        byCoefficients(0, 0);
    }

    /** Slopes by the coefficients of {@link SeriesLoss}. */
    void byCoefficients(double viscous, double kinetic) {
        byViscous = viscous;
        byKinetic = kinetic;
    }
}
