package hotidle.law;

/**
 * A drilled hole or short tube: the flow fills it, and its profile grows along it.
 *
 * <pre>
 * Formula   Δp = f(z)·ρ·v²/2, z = l/(d·Re), Re = 4·ρ·q/(π·d·μ)
 *           f = 1.5 + 13.74·√z below z = 1/50, 2.28 + 64·z above; Cd = f^−½
 * Source    H. E. Merritt, Hydraulic Control Systems, 1967, in M. G. Rabie, Fluid Power Engineering, eq. 2.40 and 2.41 (found)
 * Approach  from a channel, f is less by β⁴, the head that the oil brings along, and by ½·β², what the contraction then does not lose:
 *           K = ½·(1 − β²) of the 1.5; J. Weisbach's rule as in F. M. White, Fluid Mechanics, eq. 6.78 (from memory, 0.42 there)
 * Range     l/d from 0.5; shorter holes are sharp-edged, {@link SharpEdge}
 * Numerics  The two branches miss each other by 1.7 % at the seam. They are blended by z⁴/(z⁴ + Z⁴), Z = 0.015, where they
 *           come closest: within 1 % of the nearer branch everywhere, without a jump in value or slope.
 *           Creeping flow is that of Poiseuille; Sampson's end loss, 37.7/Re, is left out as in the source.
 *           q is found from Δp by Newton's method inside a bracket, to the last digits.
 * </pre>
 *
 * @param diameter d [m]
 * @param length   l [m], above zero
 * @param ratio    β, diameter over that of the channel before it [-], 0 for a chamber, below 1
 */
public record ShortTube(double diameter, double length, double ratio) implements Restriction, Inverse.DropLaw {

    /** A tube from a chamber. */
    public ShortTube(double diameter, double length) {
        this(diameter, length, 0);
    }

    /** Shortest hole that flows full, as a multiple of its diameter (common practice). */
    public static final double SHORTEST = 0.5;

    private static final double SEAM = 0.015;

    /** Below this drop the flow creeps to the last digit, and its square would be lost to the machine's smallest number [Pa]. */
    private static final double CREEPING = 1e-30;

    @Override
    public void flow(double drop, double density, double viscosity, Flow out) {
        double poiseuille = Math.PI * Math.pow(diameter, 4) / (128 * viscosity * length);
        double size = Math.abs(drop);
        if (size < CREEPING) {
            double creeping = poiseuille * drop;
            out.set(creeping, poiseuille, -creeping / viscosity, 0);
            return;
        }
        // never more than Poiseuille's flow, nor than that of the least kinetic share, 1.5 heads
        double area = Math.PI * diameter * diameter / 4;
        double most = Math.min(poiseuille * size, area * Math.sqrt(2 * size / ((1.5 - saved()) * density)));
        double[] at = out.work;
        double q = Inverse.flow(size, most, this, density, viscosity, at);
        dropAt(q, density, viscosity, at);
        double sign = Math.signum(drop);
        out.set(sign * q, 1 / at[1], -sign * at[3] / at[1], -sign * at[2] / at[1]);
    }

    /** Drop at a flow above zero, and its slopes by flow, density and viscosity. */
    @Override
    public void dropAt(double q, double density, double viscosity, double[] at) {
        double area = Math.PI * diameter * diameter / 4;
        double head = density * q * q / (2 * area * area);
        double z = Math.PI * length * viscosity / (4 * density * q);
        heads(z, at);
        double lost = (at[0] - saved()) * head;
        double byZ = head * at[1] * z;
        at[0] = lost;
        at[1] = (2 * lost - byZ) / q;
        at[2] = (lost - byZ) / density;
        at[3] = byZ / viscosity;
    }

    /** Velocity heads that the oil's own velocity before the tube saves. */
    private double saved() {
        double squared = ratio * ratio;
        return squared * squared + squared / 2;
    }

    /**
     * Velocity heads lost from a chamber, f = Cd^−2, and their slope.
     *
     * @param z l/(d·Re), above zero
     */
    public static double[] heads(double z) {
        double[] at = new double[2];
        heads(z, at);
        return at;
    }

    private static void heads(double z, double[] at) {
        double root = Math.sqrt(z);
        double upper = 1.5 + 13.74 * root;
        double lower = 2.28 + 64 * z;
        double ratio = z / SEAM;
        double fourth = ratio * ratio * ratio * ratio;
        double share = fourth > 1e100 ? 1 : fourth / (1 + fourth);
        double shareSlope = 4 * share * (1 - share) / z;
        at[0] = upper + (lower - upper) * share;
        at[1] = 13.74 / (2 * root) * (1 - share) + 64 * share + (lower - upper) * shareSlope;
    }
}
