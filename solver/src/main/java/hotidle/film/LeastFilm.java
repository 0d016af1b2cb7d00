package hotidle.film;

/**
 * How thin a film may get, and how thin it gets where a shaft stands askew.
 *
 * <pre>
 * Roughness  Λ·√(Rq1² + Rq2²), Λ the film ratio; Rq = √(π/2)·Ra = 1.25·Ra for heights that are spread as Gauss's curve, D. J.
 *            Whitehouse, Handbook of Surface Metrology, 1994 (from memory). A ground or turned surface lies between 1.1 and 1.4.
 * Trumpler   0.0002 in + 0.00004·d: the film that P. R. Trumpler asks of ground journals of machined bearings, so that what the
 *            oil carries passes; in Shigley, Mechanical Engineering Design, §12-7 (from memory)
 * Edge       h − ½·L·tilt: ISO 7902-3:1998 and VDI 2204 add ½·B·q of inclination to the least film allowed (from memory). The load
 *            is balanced as if the axes were parallel, so that the lift which the narrow end gives is left out: the true edge
 *            keeps somewhat more.
 * </pre>
 */
public final class LeastFilm {

    /** Root mean square over mean height of a Gaussian surface, Rq/Ra = √(π/2) [-]. */
    public static final double RQ_OVER_RA = Math.sqrt(Math.PI / 2);

    private static final double TRUMPLER_BASE = 0.0002 * 0.0254;

    private static final double TRUMPLER_SLOPE = 0.00004;

    private LeastFilm() {}

    /**
     * The film [m] that keeps two rough surfaces apart.
     *
     * @param ratio film ratio Λ [-]
     * @param one   roughness Ra of one surface [m]
     * @param other of the other [m]
     */
    public static double ofRoughness(double ratio, double one, double other) {
        return ratio * RQ_OVER_RA * Math.hypot(one, other);
    }

    /** Least film by Trumpler's criterion [m] of a journal of a diameter [m]. */
    public static double trumpler(double diameter) {
        return TRUMPLER_BASE + TRUMPLER_SLOPE * diameter;
    }

    /**
     * Film at the edge [m], never below zero.
     *
     * @param film   in the middle of the length [m]
     * @param tilt   of the shaft against its bore [rad]
     * @param length of the bearing [m]
     */
    public static double atEdge(double film, double tilt, double length) {
        return Math.max(film - tilt * length / 2, 0);
    }
}
