package hotidle.geartrain;

/**
 * Stress concentration K of notches in a shaft in torsion: largest shear stress over that of the plain shaft of the diameter D at its
 * thinnest place. The whole of it is taken to count in fatigue, which is on the safe side of a notch that the material feels in part.
 *
 * <pre>
 * Shoulder  h = (Ds − D)/2, q = h/r, u = 2·h/Ds: K = C1 + C2·u + C3·u² + C4·u³, C of q
 * Hole      right through, radially; v = a/D, w = d/D: σ/τ = 4 + C2·v + C3·v² + C4·v³, C of w, by the whole section's τ. Its edge is
 *           pulled one way, so that the largest shear is σ/2 and K = σ/(2·τ)
 * Spline    by the diameter De over its teeth and their root radius r, without the part that sits on it; h = (De − D)/2, q = h/r:
 *           dh = D·(1 + k·(De − D)/De),
 *           α = D/dh·(1 + 0.17·q·(1 + 3.94/(0.1 + q)) + 6.38·(1 + 0.1·q)/(2.38 + D/(2·h)·∛(q + 0.04))²) by the τ of a shaft of dh,
 *           K = α·W(D)/W(dh) with the bore of the shaft
 * Source    shoulder: W. D. Pilkey, Peterson's Stress Concentration Factors, ch. 3 (from memory). Hole: W. C. Young, R. G. Budynas,
 *            Roark's Formulas for Stress and Strain, table 17.1, radial hole in a hollow or solid shaft, torsion (found, in an
 *            engineering calculator). Spline: GB/T 17855-1999, Calculation of load capacity for splines, eq. 7 to 9 (found, quoted in
 *            full in an open design sheet)
 * Range     shoulder 0.25 ≤ h/r ≤ 4; hole a/D ≤ 0.4, d/D ≤ 0.9; of the spline none is published, we take r ≤ h ≤ 10·r
 * Numerics  k is 0.15, that of many involute teeth and the least of the standard's: with few teeth (0.3) or straight sides (0.45, 0.5)
 *           K is up to a quarter less
 * </pre>
 */
public final class StressConcentration {

    private static final double MANY_TEETH = 0.15;

    /** Teeth higher than this times their root radius are not judged (chosen) [-]. */
    private static final double SHARPEST = 10;

    private StressConcentration() {}

    /**
     * Of a shoulder with a fillet [-].
     *
     * @param large  diameter Ds of the shoulder [m]
     * @param small  diameter D beside it [m]
     * @param fillet radius r [m]
     * @throws IllegalArgumentException where h/r lies outside 0.25 to 4, for which the formula was fitted
     */
    public static double shoulder(double large, double small, double fillet) {
        double h = (large - small) / 2;
        double q = h / fillet;
        within("half the step over the fillet's radius", q, 0.25, 4);
        double root = Math.sqrt(q);
        double c1 = 0.905 + 0.783 * root - 0.075 * q;
        double c2 = -0.437 - 1.969 * root + 0.553 * q;
        double c3 = 1.557 + 1.073 * root - 0.578 * q;
        double c4 = -1.061 + 0.171 * root + 0.086 * q;
        return cubic(c1, c2, c3, c4, 2 * h / large);
    }

    /**
     * Of a round hole right through the shaft, as an oil hole [-].
     *
     * @param hole  its diameter a [m]
     * @param outer diameter D of the shaft [m]
     * @param inner diameter d of its bore [m], 0 for a solid shaft
     * @throws IllegalArgumentException where a/D is above 0.4 or d/D above 0.9, up to which the formula was fitted
     */
    public static double hole(double hole, double outer, double inner) {
        double v = hole / outer;
        double w = inner / outer;
        within("the hole over the shaft's diameter", v, 0, 0.4);
        within("the bore over the shaft's diameter", w, 0, 0.9);
        double c2 = -6.793 + 1.133 * w - 0.126 * w * w;
        double c3 = 38.382 - 7.242 * w + 6.495 * w * w;
        double c4 = -44.576 - 7.428 * w + 58.656 * w * w;
        return cubic(4, c2, c3, c4, v) / 2;
    }

    /**
     * Of a spline [-].
     *
     * @param over   diameter De over its teeth [m]
     * @param root   diameter D at their roots [m]
     * @param inner  diameter of the bore [m], 0 for a solid shaft
     * @param fillet radius r at their roots [m]
     * @throws IllegalArgumentException where the teeth are lower than the radius at their roots, or higher than ten times it
     */
    public static double spline(double over, double root, double inner, double fillet) {
        double h = (over - root) / 2;
        double q = h / fillet;
        within("the height of the spline's teeth over the radius at their roots", q, 1, SHARPEST);
        double loaded = root * (1 + MANY_TEETH * (over - root) / over);
        return ofLoaded(root, loaded, h, q) * ShaftStrength.modulus(root, inner) / ShaftStrength.modulus(loaded, inner);
    }

    /** α, by the shear stress of a plain shaft of the diameter dh [-]. */
    private static double ofLoaded(double root, double loaded, double h, double q) {
        double round = 2.38 + root / (2 * h) * Math.cbrt(q + 0.04);
        return root / loaded * (1 + 0.17 * q * (1 + 3.94 / (0.1 + q)) + 6.38 * (1 + 0.1 * q) / (round * round));
    }

    private static double cubic(double c1, double c2, double c3, double c4, double x) {
        return c1 + x * (c2 + x * (c3 + x * c4));
    }

    private static void within(String what, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(what + " is " + Math.round(value * 100) / 100.0
                    + " and must lie between " + shown(low) + " and " + shown(high));
        }
    }

    private static String shown(double bound) {
        return bound == Math.rint(bound) ? Long.toString((long) bound) : Double.toString(bound);
    }
}
