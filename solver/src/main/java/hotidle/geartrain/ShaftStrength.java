package hotidle.geartrain;

/**
 * Torque that a shaft bears.
 *
 * <pre>
 * Formula   W = π·(D⁴ − d⁴)/(16·D); at yield T = W·Sy/2 (largest shear). Repeated from nil to T: mean and alternating shear stress are
 *           both T/(2·W), and K·τa/Se + τm/(Sy/2) = 1, so T = 2·W/(K/Se + 2/Sy). The lesser of both counts
 *           K of a shoulder, a hole, a spline: {@link StressConcentration}
 * Source    T. H. Wentzell, Machine Design, ex. 5.5, Soderberg (found)
 * Range     pure torsion; the endurance strength counts size, surface and load already
 * </pre>
 *
 * @param outer         D, at the thinnest place [m]
 * @param inner         d, 0 for a solid shaft [m]
 * @param yield         Sy, tensile [Pa]
 * @param endurance     Se, in shear [Pa]
 * @param concentration K of the place where it is notched, 1 for none [-]
 */
public record ShaftStrength(double outer, double inner, double yield, double endurance, double concentration) {

    public ShaftStrength {
        if (!(outer > inner && inner >= 0 && yield > 0 && endurance > 0 && concentration >= 1)) {
            throw new IllegalArgumentException("a shaft of " + outer + " and " + inner + " m with yield " + yield
                    + " Pa, endurance " + endurance + " Pa and stress concentration " + concentration);
        }
    }

    /** Section modulus in torsion W [m³]. */
    public double modulus() {
        return modulus(outer, inner);
    }

    /**
     * The same of any tube [m³].
     *
     * @param outer diameter [m]
     * @param inner diameter [m], 0 for a solid one
     */
    static double modulus(double outer, double inner) {
        return Math.PI * (Math.pow(outer, 4) - Math.pow(inner, 4)) / (16 * outer);
    }

    /** Torque at which it yields [N·m]. */
    public double yieldTorque() {
        return modulus() * yield / 2;
    }

    /** Torque that it bears without end when it comes and goes [N·m]. */
    public double repeatedTorque() {
        return 2 * modulus() / (concentration / endurance + 2 / yield);
    }

    /** The lesser of both [N·m]. */
    public double rating() {
        return Math.min(yieldTorque(), repeatedTorque());
    }
}
