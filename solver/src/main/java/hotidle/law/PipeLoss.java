package hotidle.law;

/**
 * A drilled or cast passage: wall friction from laminar to turbulent, and bends, entries and exits.
 *
 * <pre>
 * Formula   Δp = (f·L/d + ΣK)·ρ·v²/2, v = 4·q/(π·d²), Re = v·d·ρ/μ
 * Friction  S. W. Churchill, "Friction-factor equation spans all fluid-flow regimes", Chemical Engineering 84 (1977) 91
 *           (from memory): f = 8·[(8/Re)¹² + (A + B)^(−3/2)]^(1/12), A = [2.457·ln(1/((7/Re)^0.9 + 0.27·e/d))]¹⁶,
 *           B = (37530/Re)¹⁶; equals 64/Re when laminar and has no jump
 * Numerics  q is found from Δp by Newton's method inside a bracket, to the last digits
 * </pre>
 *
 * @param diameter  d [m]
 * @param length    L [m]
 * @param roughness e, mean height of the wall's roughness [m]
 * @param losses    ΣK [-], 0 or more
 */
public record PipeLoss(double diameter, double length, double roughness, double losses) implements Restriction {

    /** Below this Reynolds number the turbulent terms are lost in rounding, and would overflow further down. */
    private static final double CREEPING = 1;

    @Override
    public Flow flow(double drop, double density, double viscosity) {
        double laminar = Math.PI * diameter * diameter * diameter * diameter / (128 * viscosity * length);
        double size = Math.abs(drop);
        double q = laminar * size;
        if (q > 0) {
            q = Inverse.flow(size, q, at -> dropAt(at, density, viscosity));
        }
        double[] at = dropAt(q, density, viscosity);
        double slope = q > 0 ? 1 / at[1] : laminar;
        double sign = Math.signum(drop);
        return new Flow(sign * q, slope, 0, 0, -sign * at[3] * slope, -sign * at[2] * slope);
    }

    /** Drop at a flow q ≥ 0, and its slopes by flow, density and viscosity. */
    private double[] dropAt(double q, double density, double viscosity) {
        if (q == 0) {
            return new double[4];
        }
        double area = Math.PI * diameter * diameter / 4;
        double velocity = q / area;
        double reynolds = velocity * diameter * density / viscosity;
        double[] friction = friction(reynolds, roughness / diameter);
        double head = density * velocity * velocity / 2;
        double total = friction[0] * length / diameter + losses;
        double byReynolds = head * friction[1] * length / diameter;
        return new double[] {
            total * head,
            2 * total * head / q + byReynolds * reynolds / q,
            total * head / density + byReynolds * reynolds / density,
            -byReynolds * reynolds / viscosity
        };
    }

    /**
     * Darcy friction factor and its slope by Reynolds number.
     *
     * @param reynolds          Re, above zero
     * @param relativeRoughness e/d [-]
     */
    public static double[] friction(double reynolds, double relativeRoughness) {
        if (reynolds < CREEPING) {
            return new double[] {64 / reynolds, -64 / (reynolds * reynolds)};
        }
        double laminar = Math.pow(8 / reynolds, 12);
        double smooth = Math.pow(7 / reynolds, 0.9);
        double log = -Math.log(smooth + 0.27 * relativeRoughness);
        double a = Math.pow(2.457 * Math.abs(log), 16);
        double b = Math.pow(37_530 / reynolds, 16);
        double turbulent = Math.pow(a + b, -1.5);
        double sum = laminar + turbulent;
        double f = 8 * Math.pow(sum, 1.0 / 12);
        double logSlope = 0.9 * smooth / reynolds / (smooth + 0.27 * relativeRoughness);
        double aSlope = log == 0 ? 0 : 16 * a / log * logSlope;
        double bSlope = -16 * b / reynolds;
        double sumSlope = -12 * laminar / reynolds - 1.5 * (a + b == 0 ? 0 : turbulent / (a + b)) * (aSlope + bSlope);
        return new double[] {f, f / 12 * sumSlope / sum};
    }
}
