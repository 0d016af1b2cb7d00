package hotidle.law;

/**
 * Slow flow along the gap between a round bore and a round piece in it, from a film to a wide ring.
 *
 * <pre>
 * Formula    q = π·Δp/(8·μ·L)·[ro⁴ − ri⁴ − (ro² − ri²)²/ln(ro/ri)]·(1 + 1.5·ε²), ro = ri + c
 * Source     concentric: H. Lamb, Hydrodynamics, 6th ed., 1932, §331; R. B. Bird, W. E. Stewart, E. N. Lightfoot, Transport Phenomena,
 *            §2.4 (both from memory). Eccentric, thin: H. E. Merritt, Hydraulic Control Systems, 1967, §2-5 (from memory)
 * Range      laminar. The factor of eccentricity is that of a film: against the exact eccentric solution (N. A. V. Piercy, M. S. Hooper,
 *            H. F. Winny, Phil. Mag. 15, 1933, 647, from memory) it is 0.006 % high at c = ri/50 and ε = 0.9, 0.15 % at ri/10, 2.3 % at ri/2
 * Numerics   With s = (ro − ri)/(ro + ri) and A = artanh(s)/s the bracket is 8·rm⁴·s·[(1 + s²)·A − 1]/A, rm the mean radius. Both A and
 *            what stands in brackets are series of positive terms, Σ s^2k/(2k + 1) and Σ s^2k·4k/(4k² − 1), so that a film loses no digits;
 *            they are summed below s = 0.25, the logarithm is taken above. There the two agree to 1e-14.
 * </pre>
 */
public final class Annulus {

    /** Where the series gives way to the logarithm; its terms fall by a factor of 16 or more below it. */
    private static final double SEAM = 0.25;

    /** Terms of the series; 0.25^(2·16) is far below the last digit. */
    private static final int TERMS = 16;

    private Annulus() {}

    /**
     * Viscous coefficient of a length of it [1/m⁴]: Δp = viscous·L·μ·q.
     *
     * @param inner        diameter of the piece in the bore, 2·ri [m], above zero
     * @param clearance    c, radial [m], above zero
     * @param eccentricity ε [-], 0 concentric to 1 touching
     */
    public static double viscous(double inner, double clearance, double eccentricity) {
        double mean = (inner + clearance) / 2;
        double s = clearance / (inner + clearance);
        double squared = mean * mean;
        return 1 / (Math.PI * squared * squared * s * bracket(s) * Slot.eccentricityFactor(eccentricity));
    }

    /** 1 + s² − s/artanh(s), which is 4/3·s² in a film. */
    private static double bracket(double s) {
        double squared = s * s;
        if (s >= SEAM) {
            return 1 + squared - 2 * s / Math.log((1 + s) / (1 - s));
        }
        double artanh = 0;
        double above = 0;
        for (int k = TERMS; k >= 1; k--) {
            artanh = (artanh + 1.0 / (2 * k + 1)) * squared;
            above = (above + 4.0 * k / (4.0 * k * k - 1)) * squared;
        }
        return above / (1 + artanh);
    }
}
