package hotidle.geartrain;

/**
 * Torque that a shaft bears.
 *
 * <pre>
 * Formula   W = π·(D⁴ − d⁴)/(16·D); at yield T = W·Sy/2 (largest shear). Repeated from nil to T: mean and alternating shear stress are
 *           both T/(2·W), and K·τa/Se + τm/(Sy/2) = 1, so T = 2·W/(K/Se + 2/Sy). The lesser of both counts
 *           K of a shoulder, h = (Ds − D)/2, 0.25 ≤ h/r ≤ 4, q = h/r, u = 2·h/Ds: C1 + C2·u + C3·u² + C4·u³
 * Source    T. H. Wentzell, Machine Design, ex. 5.5, Soderberg (found); K: W. D. Pilkey, Peterson's Stress Concentration Factors,
 *            ch. 3 (from memory)
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

    /**
     * K of a shoulder with a fillet in torsion [-].
     *
     * @param large  diameter Ds of the shoulder [m]
     * @param small  diameter D beside it [m]
     * @param fillet radius r [m]
     * @throws IllegalArgumentException where h/r lies outside 0.25 to 4, for which the formula was fitted
     */
    public static double shoulder(double large, double small, double fillet) {
        double h = (large - small) / 2;
        double q = h / fillet;
        if (!(q >= 0.25 && q <= 4)) {
            throw new IllegalArgumentException("half the step over the fillet's radius is "
                    + Math.round(q * 100) / 100.0 + " and must lie between 0.25 and 4");
        }
        double u = 2 * h / large;
        double root = Math.sqrt(q);
        double c1 = 0.905 + 0.783 * root - 0.075 * q;
        double c2 = -0.437 - 1.969 * root + 0.553 * q;
        double c3 = 1.557 + 1.073 * root - 0.578 * q;
        double c4 = -1.061 + 0.171 * root + 0.086 * q;
        return c1 + u * (c2 + u * (c3 + u * c4));
    }
}
