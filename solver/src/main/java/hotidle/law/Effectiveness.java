package hotidle.law;

/**
 * How much of the heat that it could give off a cooler does give off.
 *
 * <pre>
 * Formula   ε = (1 − exp(−NTU·(1 − C)))/(1 − C·exp(−NTU·(1 − C))) in counterflow, NTU/(1 + NTU) at C = 1;
 *           NTU = U·A/Cmin, C = Cmin/Cmax, capacity rates = mass flow times specific heat
 *           parallel flow ε = (1 − exp(−NTU·(1 + C)))/(1 + C)
 *           crossflow, both unmixed ε = Σ P(n + 1, NTU)·P(n + 1, C·NTU)/(C·NTU), n from 0, P the regularised lower gamma function:
 *           J. L. Mason, Heat Transfer in Crossflow, Proc. 2nd U.S. Nat. Congr. Appl. Mech., 1955 (from memory)
 *           shell and tube, one shell pass and two or more tube passes
 *           ε = 2/(1 + C + √(1 + C²)·(1 + e)/(1 − e)), e = exp(−NTU·√(1 + C²))
 * Heat      ε·Cmin·(T_hot,in − T_cold,in)
 * Source    W. M. Kays, A. L. London, Compact Heat Exchangers (from memory); F. P. Incropera et al., Fundamentals of Heat and Mass
 *           Transfer, table 11.3 (from memory)
 * </pre>
 */
public final class Effectiveness {

    /** How two streams flow past each other. */
    public enum Arrangement {
        COUNTERFLOW {
            @Override
            public double effectiveness(double units, double ratio) {
                return counterflow(units, ratio);
            }
        },
        PARALLEL {
            @Override
            public double effectiveness(double units, double ratio) {
                check(units, ratio);
                return -Math.expm1(-units * (1 + ratio)) / (1 + ratio);
            }
        },
        CROSSFLOW {
            @Override
            public double effectiveness(double units, double ratio) {
                check(units, ratio);
                return ratio == 0 ? -Math.expm1(-units) : mason(units, ratio);
            }
        },
        SHELL_AND_TUBE {
            @Override
            public double effectiveness(double units, double ratio) {
                check(units, ratio);
                double root = Math.sqrt(1 + ratio * ratio);
                // (1 + e)/(1 − e) is the hyperbolic cotangent of half the exponent
                return units == 0 ? 0 : 2 / (1 + ratio + root / Math.tanh(units * root / 2));
            }
        };

        /**
         * Effectiveness.
         *
         * @param units NTU, 0 or more
         * @param ratio C, 0 to 1
         */
        public abstract double effectiveness(double units, double ratio);
    }

    private Effectiveness() {}

    /** Both flows unmixed; terms fall faster than any power once n exceeds NTU. */
    private static double mason(double units, double ratio) {
        double other = ratio * units;
        double ownTerm = Math.exp(-units);
        double otherTerm = Math.exp(-other);
        double ownLeft = -Math.expm1(-units);
        double otherLeft = -Math.expm1(-other);
        double sum = 0;
        for (int n = 0; n < 400; n++) {
            double term = ownLeft * otherLeft;
            sum += term;
            if (term <= 1e-17 * sum) {
                break;
            }
            ownTerm *= units / (n + 1);
            otherTerm *= other / (n + 1);
            ownLeft = Math.max(ownLeft - ownTerm, 0);
            otherLeft = Math.max(otherLeft - otherTerm, 0);
        }
        return units == 0 ? 0 : sum / other;
    }

    private static void check(double units, double ratio) {
        if (!(units >= 0) || !(ratio >= 0 && ratio <= 1)) {
            throw new IllegalArgumentException("transfer units " + units
                    + " must not be below 0 and the capacity ratio " + ratio + " must lie between 0 and 1");
        }
    }

    /**
     * Effectiveness in counterflow.
     *
     * @param units NTU, 0 or more
     * @param ratio C, 0 to 1
     */
    public static double counterflow(double units, double ratio) {
        check(units, ratio);
        double x = units * (1 - ratio);
        // with p = (1 − e^−x)/(1 − C) this is p/(1 + C·p), which needs no case of its own at C = 1 but the limit of p
        double p = ratio == 1 ? units : -Math.expm1(-x) / (1 - ratio);
        return p / (1 + ratio * p);
    }
}
