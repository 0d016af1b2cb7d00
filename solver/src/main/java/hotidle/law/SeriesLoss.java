package hotidle.law;

/**
 * A restriction whose pressure drop has a viscous and a kinetic share in series.
 *
 * <pre>
 * Formula   Δp = viscous·μ·q + kinetic·ρ·q·|q|; solved for q = 2·Δp/(b + √(b² + 4·a·|Δp|)), b = viscous·μ, a = kinetic·ρ
 * Slope     dq/dΔp = 1/(b + 2·a·|q|)
 * Source    H. E. Merritt, Hydraulic Control Systems, 1967, §3-2 to 3-5 (from memory): pipes, short tubes and orifices have
 *           a viscous limit Δp ∝ μq and a kinetic limit Δp ∝ ρq²; the laws of this package give both coefficients.
 *           Between its two limits the sum is an interpolation of our own.
 * Numerics  The value and first slope are continuous everywhere; the second slope jumps in sign at Δp = 0.
 * </pre>
 *
 * @param viscous viscous coefficient [1/m³]; infinite where the path is shut
 * @param kinetic kinetic coefficient [1/m⁴], 0 or more
 */
public record SeriesLoss(double viscous, double kinetic) implements Restriction {

    /** A path that is shut. */
    public static final SeriesLoss SHUT = new SeriesLoss(Double.POSITIVE_INFINITY, 0);

    public SeriesLoss {
        if (!(viscous > 0) || !(kinetic >= 0)) {
            throw new IllegalArgumentException("viscous coefficient " + viscous
                    + " 1/m³ must be above zero and kinetic " + kinetic + " 1/m⁴ not below it");
        }
    }

    @Override
    public void flow(double drop, double density, double viscosity, Flow out) {
        flow(viscous, kinetic, drop, density, viscosity, out);
    }

    /** The same for two coefficients that are not worth an object, because they are new at each question. */
    public static void flow(double viscous, double kinetic, double drop, double density, double viscosity, Flow out) {
        if (Double.isInfinite(viscous)) {
            out.none();
            return;
        }
        double b = viscous * viscosity;
        double a = kinetic * density;
        double q = 2 * drop / (b + Math.sqrt(b * b + 4 * a * Math.abs(drop)));
        double square = q * Math.abs(q);
        double slope = 1 / (b + 2 * a * Math.abs(q));
        out.set(q, slope, -viscous * q * slope, -kinetic * square * slope);
        out.byCoefficients(-viscosity * q * slope, -density * square * slope);
    }

    /** The same path followed by another. */
    public SeriesLoss then(SeriesLoss other) {
        return new SeriesLoss(viscous + other.viscous, kinetic + other.kinetic);
    }

    /** Several equal paths side by side. */
    public SeriesLoss times(double count) {
        return new SeriesLoss(viscous / count, kinetic / (count * count));
    }

    /** Kinetic share of the drop [Pa] at a flow [m³/s], never negative. */
    public double kineticDrop(double q, double density) {
        return kinetic * density * q * q;
    }
}
