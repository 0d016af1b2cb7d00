package hotidle.oil;

/**
 * How much of its viscosity an oil that is thickened by a polymer loses for as long as it is sheared.
 *
 * <pre>
 * Formula  μ = μ0·(1 − loss·x/(1 + x)), x = μ0·γ/stress; γ the rate of shear, μ0 the viscosity at rest
 * Source   M. M. Cross, J. Colloid Sci. 20, 1965, 417 (found), with his exponent at 1 (ours: polymers of low
 *          molecular mass lie between 2/3 and 1). The rate at which half is lost falls as the oil thickens, for a polymer coil is
 *          drawn out by stress: P. E. Rouse, J. Chem. Phys. 21, 1953 (from memory).
 * Range    the loss of viscosity by use, when polymers break for good, is another: that is in the viscosity at rest
 * </pre>
 *
 * @param loss   share of the viscosity that is lost at the highest rates [-], 0 to 0.95
 * @param stress μ0·γ at which half of that is lost [Pa]
 */
public record ShearThinning(double loss, double stress) {

    /** An oil that keeps its viscosity at every rate of shear. */
    public static final ShearThinning NONE = new ShearThinning(0, 1);

    public ShearThinning {
        if (!(loss >= 0 && loss <= 0.95)) {
            throw new IllegalArgumentException("shear loss is " + loss + ", allowed is 0 to 0.95");
        }
        if (!(stress > 0)) {
            throw new IllegalArgumentException("shear stress is " + stress + " Pa, allowed is above 0");
        }
    }

    /**
     * Share of the viscosity that is left [-].
     *
     * @param sheared μ0·γ [Pa], 0 or more
     */
    public double left(double sheared) {
        return 1 - loss * sheared / (stress + sheared);
    }

    /** d ln(left)/d ln(sheared) [-], between −1 and 0. */
    public double leftSlope(double sheared) {
        double whole = stress + sheared;
        return -loss * stress * sheared / (whole * whole) / left(sheared);
    }
}
