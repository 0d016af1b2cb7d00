package hotidle.law;

/**
 * How much of the heat that it could give off a cooler does give off.
 *
 * <pre>
 * Formula   ε = (1 − exp(−NTU·(1 − C)))/(1 − C·exp(−NTU·(1 − C))) in counterflow, NTU/(1 + NTU) at C = 1;
 *           NTU = U·A/Cmin, C = Cmin/Cmax, capacity rates = mass flow times specific heat
 *           parallel flow ε = (1 − exp(−NTU·(1 + C)))/(1 + C)
 *           crossflow, both unmixed ε = 1 − exp(NTU^0.22/C·(exp(−C·NTU^0.78) − 1)), an approximation; 1 − exp(−NTU) at C = 0
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
                // (exp(−C·NTU^0.78) − 1)/C tends to −NTU^0.78 as C goes to zero
                double inner = ratio * Math.pow(units, 0.78);
                double shaped = ratio == 0 ? -Math.pow(units, 0.78) : Math.expm1(-inner) / ratio;
                return -Math.expm1(Math.pow(units, 0.22) * shaped);
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
