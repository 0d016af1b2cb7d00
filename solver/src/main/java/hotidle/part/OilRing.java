package hotidle.part;

/**
 * A ring of oil that turns with a drum and presses outwards, on a piston or in its balance chamber.
 *
 * <pre>
 * Pressure  ρ·ω²·(r² − r0²)/2 at radius r, free surface at r0
 * Force     π·ρ·ω²·[(Ro⁴ − Ri⁴)/4 − r0²·(Ro² − Ri²)/2]
 * Source    J. F. Douglas, J. M. Gasiorek, J. A. Swaffield, Fluid Mechanics, Ex. 6.9 (found)
 * </pre>
 *
 * @param inside  Ri, inner radius of the wall that it presses on [m]
 * @param outside Ro, outer radius [m]
 * @param surface r0, radius of the free surface, where the oil enters or spills [m], not above Ri
 */
public record OilRing(double inside, double outside, double surface) {

    public OilRing {
        Check.within("inner radius of the piston", inside, 1e-4, 1);
        Check.within("outer radius of the piston", outside, inside * 1.0001, 1);
        Check.within("radius of the free surface", surface, 0, inside);
    }

    /**
     * Force on the wall [N].
     *
     * @param density of the oil [kg/m³]
     * @param speed   of the drum [rev/s]
     */
    public double force(double density, double speed) {
        double omega = 2 * Math.PI * speed;
        double squares = outside * outside - inside * inside;
        double fourths = Math.pow(outside, 4) - Math.pow(inside, 4);
        return Math.PI * density * omega * omega * (fourths / 4 - surface * surface * squares / 2);
    }
}
