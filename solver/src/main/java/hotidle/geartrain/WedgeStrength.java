package hotidle.geartrain;

/**
 * Torque that a one-way clutch of rollers or sprags bears on its inner race, where both curve against each other.
 *
 * <pre>
 * Formula   p0 = √(E'·N/(π·R·L)), 1/R = 1/r + 1/ri, E' = E/(2·(1 − ν²)); T = z·N·ri·tan ε at the p0 that is allowed; all carry alike
 * Source    H. Hertz's line contact; A. P. Boresi, R. J. Schmidt, Advanced Mechanics of Materials, ch. 17, ex. 17.3 (found);
 *           the wedge is the balance of a strut between two races
 * Range     elastic contact of steel on steel; a strut holds where tan ε stays below the friction of oiled steel, some 0.1
 * </pre>
 *
 * @param count     z, rollers or sprags that carry
 * @param radius    r of the surface on the inner race [m]
 * @param length    L of the line of contact [m]
 * @param race      ri, radius of the inner race [m]
 * @param strut     ε, angle of the strut to the radius at the inner race [rad]
 * @param allowed   p0 that the material bears [Pa]
 */
public record WedgeStrength(int count, double radius, double length, double race, double strut, double allowed) {

    /** E of steel [Pa] and its ν [-]: handbook values. */
    private static final double MODULUS = 206e9;

    private static final double POISSON = 0.3;

    public WedgeStrength {
        if (!(count > 0 && radius > 0 && length > 0 && race > 0 && strut > 0 && strut < Math.PI / 4 && allowed > 0)) {
            throw new IllegalArgumentException(
                    count + " wedges of radius " + radius + " and length " + length + " m on a race of " + race
                            + " m with a strut angle of " + strut + " rad and " + allowed + " Pa allowed");
        }
    }

    /**
     * Largest pressure of two cylinders pressed together [Pa].
     *
     * @param load     over their length [N/m]
     * @param one      radius [m]
     * @param other    radius [m], infinite for a plane
     * @param modulus  of both [Pa]
     * @param poisson  of both [-]
     */
    public static double linePressure(double load, double one, double other, double modulus, double poisson) {
        return Math.sqrt(stiffness(modulus, poisson) * load / (Math.PI * curved(one, other)));
    }

    private static double stiffness(double modulus, double poisson) {
        return modulus / (2 * (1 - poisson * poisson));
    }

    private static double curved(double one, double other) {
        return 1 / (1 / one + 1 / other);
    }

    /** Force on each that presses with what is allowed [N]. */
    public double force() {
        return allowed * allowed * Math.PI * curved(radius, race) * length / stiffness(MODULUS, POISSON);
    }

    /** Torque with which they all press so [N·m]. */
    public double rating() {
        return count * force() * race * Math.tan(strut);
    }
}
