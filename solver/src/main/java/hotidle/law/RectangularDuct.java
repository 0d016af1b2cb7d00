package hotidle.law;

/**
 * Slow flow through a short duct of rectangular section, whose four walls all hold the oil back: the joint of a sealing ring.
 *
 * <pre>
 * Formula      q = w·h³·Δp/(12·μ·L)·[1 − 192/π⁵·(h/w)·Σ tanh(n·π·w/(2·h))/n⁵], n = 1, 3, 5 …, h the shorter side
 * Source       J. Boussinesq, J. Math. Pures Appl. 13, 1868, in R. K. Shah, A. L. London, Laminar Flow Forced Convection in Ducts,
 *              1978, ch. VII; F. M. White, Viscous Fluid Flow, 1974, eq. 3-48 (both from memory)
 * Entry, exit  Δp = (1 + K)·ρ·v²/2: the head of the mean velocity and K for the growth of the profile, K = 2·mean(u³ − u²) of the
 *              profile u over its mean; T. Lundgren, E. Sparrow, J. Starr, J. Basic Eng. 86 (1964) 620 (from memory)
 * Numerics     Σ tanh/n⁵ = 31/32·ζ(5) − Σ (1 − tanh)/n⁵; the second sum falls faster than e^(−n·π), six terms reach the last digit.
 *              K is integrated from the exact profile and fitted in h/w: 24/35 between wide plates, 1.5515 in a square, within 0.0021,
 *              with no slope at the square, so that nothing breaks where the sides change places.
 * </pre>
 */
public final class RectangularDuct {

    /** Σ 1/n⁵ over odd n: 31/32·ζ(5). */
    private static final double ODD_FIFTHS = 31.0 / 32 * 1.036_927_755_143_37;

    private static final int LAST = 11;

    private RectangularDuct() {}

    /**
     * The loss of a duct.
     *
     * @param side   one side of its section [m]; zero or less is shut
     * @param other  the other side [m]; zero or less is shut
     * @param length L along the flow [m]
     */
    public static SeriesLoss loss(double side, double other, double length) {
        if (side <= 0 || other <= 0) {
            return SeriesLoss.SHUT;
        }
        double h = Math.min(side, other);
        double w = Math.max(side, other);
        double area = w * h;
        double viscous = 12 * length / (area * h * h * walls(h / w));
        return new SeriesLoss(viscous, (1 + growth(h / w)) / (2 * area * area));
    }

    /** Share of the flow between wide plates that the two side walls leave. */
    private static double walls(double ratio) {
        double sum = ODD_FIFTHS;
        for (int n = 1; n <= LAST; n += 2) {
            sum -= 2 / (Math.exp(n * Math.PI / ratio) + 1) / Math.pow(n, 5);
        }
        return 1 - 192 / Math.pow(Math.PI, 5) * ratio * sum;
    }

    /** K, velocity heads lost to the growth of the profile. */
    private static double growth(double ratio) {
        return 24.0 / 35 + ratio * (1.3931 + ratio * (1.8382 + ratio * (-5.6031 + ratio * (4.4453 - ratio * 1.2083))));
    }
}
