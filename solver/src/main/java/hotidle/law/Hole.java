package hotidle.law;

/**
 * A round hole whose discharge coefficient is known; where it is not, {@link SharpEdge} and {@link ShortTube} are asked.
 *
 * <pre>
 * Kinetic   q = Cd·A·√(2·Δp/ρ), A = π·d²/4, so kinetic = 1/(2·Cd²·A²)
 * Viscous   Sampson (1891) for a hole without length, q = d³·Δp/(24·μ), followed by Poiseuille over its length:
 *           viscous = 24/d³·(1 + 16·l/(3·π·d)); Z. Dagan, S. Weinbaum, R. Pfeffer, J. Fluid Mech. 115 (1982) 505 (from
 *           memory): within 1 % of the exact creeping flow at any l/d
 * Cd        sharp-edged 0.611 = π/(π + 2), von Mises' free streamline, in Merritt 1967 §3-4 (from memory); a drilled hole of l/d 0.5 to 4
 *           flows full and has 0.7 to 0.8 (common practice), given by the user
 * </pre>
 */
public final class Hole {

    /** Discharge coefficient of a sharp edge: π/(π + 2). */
    public static final double SHARP_EDGE = Math.PI / (Math.PI + 2);

    private Hole() {}

    /**
     * The loss of one hole.
     *
     * @param diameter             d [m], above zero
     * @param length               l [m], zero for a sharp edge
     * @param dischargeCoefficient Cd [-]
     */
    public static SeriesLoss loss(double diameter, double length, double dischargeCoefficient) {
        double area = Math.PI * diameter * diameter / 4;
        return new SeriesLoss(viscous(diameter, length), kinetic(area, dischargeCoefficient));
    }

    /** Viscous coefficient [1/m³] of a hole of diameter and length [m]. */
    public static double viscous(double diameter, double length) {
        return 24 / (diameter * diameter * diameter) * (1 + 16 * length / (3 * Math.PI * diameter));
    }

    /** Kinetic coefficient [1/m⁴] of an opening of any shape of area [m²]. */
    public static double kinetic(double area, double dischargeCoefficient) {
        return 1 / (2 * dischargeCoefficient * dischargeCoefficient * area * area);
    }
}
