package hotidle.law;

/**
 * Air through a small hole, as it calibrates a test stand.
 *
 * <pre>
 * Formula  ṁ = Cd·A·ph·√(2·κ/((κ−1)·R·T)·(r^(2/κ) − r^((κ+1)/κ))), r = pl/ph; below r = (2/(κ+1))^(κ/(κ−1)) = 0.528 choked: that of 0.528
 * Source   A. J. C. B. de Saint-Venant, L. Wantzel 1839; A. H. Shapiro, Compressible Fluid Flow, vol. 1, 1953, ch. 4 (both from memory).
 *          Coefficient of a sharp edge: it rises from 0.6 to 0.84 as the flow chokes, J. A. Perry, Trans. ASME 71 (1949) 757
 *          (from memory); see {@link #SHARP_EDGE}
 * Range    the hole's edge is clean and square, its plate thinner than half of its diameter
 * </pre>
 */
public final class AirOrifice {

    /** Of a clean drilled hole of about 1 mm between 0.6 at small drops and 0.84 choked (assumed) [-]. */
    public static final double SHARP_EDGE = 0.72;

    /** Pressure ratio below which the flow is choked [-]. */
    private static final double CRITICAL = Math.pow(2 / (AirLeak.KAPPA + 1), AirLeak.KAPPA / (AirLeak.KAPPA - 1));

    private AirOrifice() {}

    /**
     * The air that a hole passes, counted at ambient pressure [m³/s].
     *
     * @param diameter    [m]
     * @param coefficient Cd [-]
     * @param high        absolute pressure before the hole [Pa]
     * @param low         absolute pressure behind it [Pa], not above {@code high}
     * @param ambient     absolute pressure at which the flow is counted [Pa]
     * @param temperature before the hole [K]
     */
    public static double freeAir(
            double diameter, double coefficient, double high, double low, double ambient, double temperature) {
        double kappa = AirLeak.KAPPA;
        double r = Math.max(low / high, CRITICAL);
        double area = Math.PI * diameter * diameter / 4;
        double speed = Math.sqrt(2
                * kappa
                / (kappa - 1)
                * AirLeak.R
                * temperature
                * (Math.pow(r, 2 / kappa) - Math.pow(r, (kappa + 1) / kappa)));
        return coefficient * area * speed * high / ambient;
    }
}
