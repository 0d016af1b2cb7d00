package hotidle.law;

/**
 * How much of the heat that it could give off a cooler does give off.
 *
 * <pre>
 * Formula   ε = (1 − exp(−NTU·(1 − C)))/(1 − C·exp(−NTU·(1 − C))) in counterflow, NTU/(1 + NTU) at C = 1;
 *           NTU = U·A/Cmin, C = Cmin/Cmax, capacity rates = mass flow times specific heat
 * Heat      ε·Cmin·(T_hot,in − T_cold,in)
 * Source    W. M. Kays, A. L. London, Compact Heat Exchangers (from memory); F. P. Incropera et al., Fundamentals of Heat and Mass
 *           Transfer, table 11.3 (from memory)
 * </pre>
 */
public final class Effectiveness {

    private Effectiveness() {}

    /**
     * Effectiveness in counterflow.
     *
     * @param units NTU, 0 or more
     * @param ratio C, 0 to 1
     */
    public static double counterflow(double units, double ratio) {
        if (!(units >= 0) || !(ratio >= 0 && ratio <= 1)) {
            throw new IllegalArgumentException("transfer units " + units
                    + " must not be below 0 and the capacity ratio " + ratio + " must lie between 0 and 1");
        }
        double x = units * (1 - ratio);
        // with p = (1 − e^−x)/(1 − C) this is p/(1 + C·p), which needs no case of its own at C = 1 but the limit of p
        double p = ratio == 1 ? units : -Math.expm1(-x) / (1 - ratio);
        return p / (1 + ratio * p);
    }
}
