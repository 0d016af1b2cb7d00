package hotidle.law;

/**
 * Geometric displacement of gear and vane pumps.
 *
 * <pre>
 * Two diameters  V = π/4·(Do² − Di²)·b; A. Esposito, Fluid Power with Applications, eq. 5-1, Ex. 5-1 (found)
 * Tip, centres   V = π/2·b·(da² − a²), two equal gears of tip diameter da on a centre distance a; the same rule with Di = 2·a − Do
 *                gives π·b·a·(Do − a), larger by up to a few per cent
 * Involute       per revolution of the first gear, by one mesh: V = π·b·[ra1² − r1² + (r1/r2)·(ra2² − r2²) − (1 + r1/r2)·pb²/12],
 *                pb = π·m·cos α; classic result, from memory; a ring gear counts with a negative r2
 * Vanes          V = π/2·(Dc + Dr)·e·b, cam ring Dc, rotor Dr, eccentricity e; A. Esposito, Fluid Power with Applications, §5.5 (from memory)
 * </pre>
 *
 * All lengths in metres, displacement in m³ per revolution.
 */
public final class GearDisplacement {

    /** Usual pressure angle of involute gears: 20°, ISO 53. */
    public static final double PRESSURE_ANGLE = Math.toRadians(20);

    private GearDisplacement() {}

    /** By outside and inside diameter of the swept ring and the gears' width [m]. */
    public static double twoDiameters(double outside, double inside, double width) {
        return Math.PI / 4 * (outside * outside - inside * inside) * width;
    }

    /** Two equal gears, by tip diameter, centre distance and width [m]. */
    public static double tipAndCentres(double tip, double centres, double width) {
        return Math.PI / 2 * width * (tip * tip - centres * centres);
    }

    /**
     * One mesh of two involute gears with standard addendum, per revolution of the driving gear.
     *
     * @param module  m [m]
     * @param driving teeth of the driving gear
     * @param driven  teeth of the driven gear
     * @param tip1    outside diameter of the driving gear [m]
     * @param tip2    outside diameter of the driven gear [m]
     * @param width   b [m]
     */
    public static double involute(double module, int driving, int driven, double tip1, double tip2, double width) {
        double r1 = module * driving / 2;
        double r2 = module * driven / 2;
        double pitch = Math.PI * module * Math.cos(PRESSURE_ANGLE);
        double ratio = r1 / r2;
        return Math.PI
                * width
                * (square(tip1 / 2)
                        - r1 * r1
                        + ratio * (square(tip2 / 2) - r2 * r2)
                        - (1 + ratio) * pitch * pitch / 12);
    }

    /**
     * An external gear in an internal one, per revolution of the driving inner gear: the same integral with a negative pitch radius of
     * the ring.
     *
     * @param module m [m]
     * @param inner  teeth of the driving inner gear
     * @param ring   teeth of the ring gear, more than those of the inner one
     * @param tip1   outside diameter of the inner gear [m]
     * @param tip2   inside diameter of the ring gear's teeth [m]
     * @param width  b [m]
     */
    public static double internal(double module, int inner, int ring, double tip1, double tip2, double width) {
        return involute(module, inner, -ring, tip1, tip2, width);
    }

    /**
     * A vane pump with one stroke a turn, V = 2·π·D·e·b: each of z spaces grows from its least to its greatest, z·(V_max − V_min); M. G.
     * Rabie, Fluid Power Engineering, 2009, p. 134 (found), summed here for many thin vanes. Seven sweep 3.4 % less, nine 2.0 %. The
     * rotor's diameter does not enter. Textbooks that count the crescent between ring and rotor, π/2·(D + d)·e·b, have about half.
     *
     * @param ring         inside diameter of the ring [m]
     * @param eccentricity e of ring to rotor [m]
     * @param width        b [m]
     */
    public static double vanes(double ring, double eccentricity, double width) {
        return 2 * Math.PI * ring * eccentricity * width;
    }

    private static double square(double value) {
        return value * value;
    }
}
