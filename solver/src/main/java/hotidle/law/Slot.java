package hotidle.law;

/**
 * A thin gap between two faces or around a spool: plane Poiseuille flow with the loss of its entry and exit.
 *
 * <pre>
 * Flat       q = w·h³·Δp/(12·μ·L); Merritt 1967 §2-5 (from memory)
 * Annular    {@link Annulus}, which is the flat gap of w = π·(d + c) and h³ = c³·(1 + 1.5·ε²) in a film
 * Tapered    h³ becomes 2·h1²·h2²/(h1 + h2): the integral of 1/h³ over a straight taper
 * Disc       q = π·h³·Δp/(6·μ·ln(ro/ri)) over the full circle; Massey &amp; Ward-Smith, Mechanics of Fluids, Ex. 6.2 (found)
 * Entry, exit  Δp = LOSS·ρ·v²/2: the head 1 of the fully spent exit velocity and 0.686 for the growth of the profile between
 *            parallel plates; T. Lundgren, E. Sparrow, J. Starr, J. Basic Eng. 86 (1964) 620 (from memory)
 * </pre>
 */
public final class Slot {

    /** Velocity heads lost at entry, in development and at exit [-]. */
    public static final double LOSS = 1.686;

    private Slot() {}

    /**
     * A flat gap.
     *
     * @param width  w across the flow [m]
     * @param height h [m]; zero or less is shut
     * @param length L along the flow [m]
     */
    public static SeriesLoss flat(double width, double height, double length) {
        return of(width, height * height * height, height, length);
    }

    /** A flat gap whose height changes in a straight line from h1 at the entry to h2 at the exit [m]. */
    public static SeriesLoss tapered(double width, double entry, double exit, double length) {
        return of(width, 2 * entry * entry * exit * exit / (entry + exit), Math.min(entry, exit), length);
    }

    /**
     * An annular gap.
     *
     * @param diameter     d of the piece in the bore [m], above zero
     * @param clearance    c, radial [m]; zero or less is shut
     * @param length       L [m]
     * @param eccentricity ε [-], 0 concentric to 1 touching
     */
    public static SeriesLoss annular(double diameter, double clearance, double length, double eccentricity) {
        if (clearance <= 0) {
            return SeriesLoss.SHUT;
        }
        double area = Math.PI * (diameter + clearance) * clearance;
        return new SeriesLoss(Annulus.viscous(diameter, clearance, eccentricity) * length, LOSS / (2 * area * area));
    }

    /** What eccentricity makes of the flow of a thin annulus: 1 + 1.5·ε²; H. E. Merritt, 1967, §2-5 (from memory). */
    public static double eccentricityFactor(double eccentricity) {
        return 1 + 1.5 * eccentricity * eccentricity;
    }

    /**
     * Radial flow in a gap under a gear or a thrust face.
     *
     * @param inner  ri [m]
     * @param outer  ro [m], above ri
     * @param height h [m]; zero or less is shut
     * @param sector share of the circle that takes part [-], 0 to 1
     */
    public static SeriesLoss disc(double inner, double outer, double height, double sector) {
        if (height <= 0 || sector <= 0) {
            return SeriesLoss.SHUT;
        }
        double viscous = 6 * Math.log(outer / inner) / (Math.PI * height * height * height * sector);
        double area = 2 * Math.PI * inner * sector * height;
        return new SeriesLoss(viscous, LOSS / (2 * area * area));
    }

    private static SeriesLoss of(double width, double cube, double height, double length) {
        if (height <= 0 || width <= 0) {
            return SeriesLoss.SHUT;
        }
        double area = width * height;
        return new SeriesLoss(12 * length / (width * cube), LOSS / (2 * area * area));
    }
}
