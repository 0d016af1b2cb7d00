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
public record PipeLoss(double diameter, double length, double roughness, double losses)
        implements Restriction, Inverse.DropLaw {

    /** Below this Reynolds number the turbulent terms are lost in rounding, and would overflow further down. */
    private static final double CREEPING = 1;

    /** Below this drop the flow creeps to the last digit, and its square would be lost to the machine's smallest number [Pa]. */
    private static final double FAINTEST = 1e-30;

    @Override
    public void flow(double drop, double density, double viscosity, Flow out) {
        double laminar = Math.PI * diameter * diameter * diameter * diameter / (128 * viscosity * length);
        double size = Math.abs(drop);
        if (size < FAINTEST) {
            double creeping = laminar * drop;
            out.set(creeping, laminar, -creeping / viscosity, 0);
            return;
        }
        double[] at = out.work;
        double q = Inverse.flow(size, laminar * size, this, density, viscosity, at);
        dropAt(q, density, viscosity, at);
        double sign = Math.signum(drop);
        out.set(sign * q, 1 / at[1], -sign * at[3] / at[1], -sign * at[2] / at[1]);
    }

    /** Drop at a flow above zero, and its slopes by flow, density and viscosity. */
    @Override
    public void dropAt(double q, double density, double viscosity, double[] at) {
        double area = Math.PI * diameter * diameter / 4;
        double velocity = q / area;
        double reynolds = velocity * diameter * density / viscosity;
        friction(reynolds, roughness / diameter, at);
        double head = density * velocity * velocity / 2;
        double total = at[0] * length / diameter + losses;
        double byReynolds = head * at[1] * length / diameter;
        at[0] = total * head;
        at[1] = 2 * total * head / q + byReynolds * reynolds / q;
        at[2] = total * head / density + byReynolds * reynolds / density;
        at[3] = -byReynolds * reynolds / viscosity;
    }

    /**
     * Darcy friction factor and its slope by Reynolds number.
     *
     * @param reynolds          Re, above zero
     * @param relativeRoughness e/d [-]
     */
    public static double[] friction(double reynolds, double relativeRoughness) {
        double[] at = new double[2];
        friction(reynolds, relativeRoughness, at);
        return at;
    }

    private static void friction(double reynolds, double relativeRoughness, double[] at) {
        if (reynolds < CREEPING) {
            at[0] = 64 / reynolds;
            at[1] = -64 / (reynolds * reynolds);
            return;
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
        at[0] = f;
        at[1] = f / 12 * sumSlope / sum;
    }
}
