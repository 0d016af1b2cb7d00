package hotidle.law;

/**
 * A sharp-edged hole at any Reynolds number, from a chamber or from a channel not much wider than itself.
 *
 * <pre>
 * Formula    Δp = [(1 − β⁴)/C² + (12·π + 64·l/d)/Re]·ρ·v²/2, v the mean velocity in the hole, Re = v·d·ρ/μ, β = d/D, so that from
 *            Re of a few hundred on q = C·A·√(2·Δp/ρ)/√(1 − β⁴), the velocity of approach included
 * C          0.5961 + 0.0261·β² − 0.216·β⁸ + 0.000521·(10⁶/Re')^0.7 + (0.0188 + 0.0063·(19000·β/ReD)^0.8)·β^3.5·(10⁶/ReD)^0.3
 * Source     C: M. J. Reader-Harris, J. A. Sattary, in ISO 5167-2:2003, eq. 4, corner tappings (found, in the code of open
 *            libraries). Creeping flow: R. A. Sampson 1891 and Poiseuille (from memory), {@link Hole}
 * Range      ISO 5167: ReD = β·Re from 5000, β 0.1 to 0.75, bores from 12.5 mm in pipes from 50 mm. Its term for pipes below 71 mm,
 *            which stands for edges that are not sharp, is left out. β = 0 and lower Reynolds numbers are extrapolated
 * Numerics   The drift would grow without limit. Re' = Re + 200 and ReD = β·Re + 1000 (ours) end it: within the standard's
 *            own uncertainty in its range (0.5 %, 1.25 % at β = 0.75 and ReD 5000), and Cd 0.43, 0.68, 0.65, 0.61 at Re 10, 100, 1000, 10 000 for β = 0: the hump that measurements have at Re 100 to 300
 *            (F. C. Johansen, Proc. R. Soc. A 126, 1930; 0.68 to 0.70, from memory). The creeping loss is that of a hole in a wide wall
 *            whatever β. The drop rises with the flow everywhere; q is found from it by Newton's method inside a bracket
 * </pre>
 *
 * @param diameter d [m]
 * @param length   l [m], zero or more; from half a diameter on it is a {@link ShortTube}
 * @param ratio    β, diameter over that of the channel before it [-], 0 for a chamber, to 0.8
 */
public record SharpEdge(double diameter, double length, double ratio) implements Restriction, Inverse.DropLaw {

    /** Highest diameter ratio that the law takes; it is published to 0.75. */
    public static final double WIDEST = 0.8;

    private static final double DRIFT_ENDS = 200;
    private static final double PIPE_DRIFT_ENDS = 1000;

    /** Below this drop the flow creeps to the last digit, and its square would be lost to the machine's smallest number [Pa]. */
    private static final double CREEPING = 1e-30;

    public SharpEdge {
        if (!(diameter > 0 && length >= 0 && ratio >= 0 && ratio <= WIDEST)) {
            throw new IllegalArgumentException("a sharp edge needs a diameter above zero, a length and a diameter ratio"
                    + " from 0 to " + WIDEST + ", not " + diameter + " m, " + length + " m, " + ratio);
        }
    }

    @Override
    public void flow(double drop, double density, double viscosity, Flow out) {
        double creeping = 1 / (viscosity * Hole.viscous(diameter, length));
        double size = Math.abs(drop);
        if (size < CREEPING) {
            double q = creeping * drop;
            out.set(q, creeping, -q / viscosity, 0);
            return;
        }
        // never more than in creeping flow, nor than with the largest coefficient of all
        double[] at = out.work;
        coefficient(0, at);
        double most = area() * at[0] * Math.sqrt(2 * size / (density * approach()));
        double q = Inverse.flow(size, Math.min(creeping * size, most), this, density, viscosity, at);
        dropAt(q, density, viscosity, at);
        double sign = Math.signum(drop);
        out.set(sign * q, 1 / at[1], -sign * at[3] / at[1], -sign * at[2] / at[1]);
    }

    /** Drop at a flow above zero, and its slopes by flow, density and viscosity. */
    @Override
    public void dropAt(double q, double density, double viscosity, double[] at) {
        double reynolds = 4 * density * q / (Math.PI * diameter * viscosity);
        coefficient(reynolds, at);
        double heads = approach() / (at[0] * at[0]);
        double byReynolds = -2 * heads * at[1] / at[0] * reynolds;
        double head = density * q * q / (2 * area() * area());
        double viscous = Hole.viscous(diameter, length);
        at[0] = heads * head + viscous * viscosity * q;
        at[1] = (2 * heads + byReynolds) * head / q + viscous * viscosity;
        at[2] = (heads + byReynolds) * head / density;
        at[3] = -byReynolds * head / viscosity + viscous * q;
    }

    /**
     * C and its slope by the Reynolds number, without the creeping loss.
     *
     * @param reynolds Re of the hole, 0 or more
     */
    public double[] coefficient(double reynolds) {
        double[] at = new double[2];
        coefficient(reynolds, at);
        return at;
    }

    private void coefficient(double reynolds, double[] at) {
        double drift = 0.000521 * Math.pow(1e6 / (reynolds + DRIFT_ENDS), 0.7);
        at[0] = 0.5961 + drift;
        at[1] = -0.7 * drift / (reynolds + DRIFT_ENDS);
        if (ratio > 0) {
            double squared = ratio * ratio;
            double inPipe = ratio * reynolds + PIPE_DRIFT_ENDS;
            double slow = 0.0063 * Math.pow(19_000 * ratio / inPipe, 0.8);
            double pipe = Math.pow(ratio, 3.5) * Math.pow(1e6 / inPipe, 0.3);
            at[0] += 0.0261 * squared - 0.216 * Math.pow(squared, 4) + (0.0188 + slow) * pipe;
            at[1] -= ratio / inPipe * pipe * (0.3 * (0.0188 + slow) + 0.8 * slow);
        }
    }

    /** 1 − β⁴: what the velocity of approach leaves to be made by the drop. */
    private double approach() {
        return ratio == 0 ? 1 : 1 - Math.pow(ratio, 4);
    }

    private double area() {
        return Math.PI * diameter * diameter / 4;
    }
}
