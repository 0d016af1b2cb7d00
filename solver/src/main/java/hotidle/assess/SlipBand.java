package hotidle.assess;

/**
 * How closely the slip of a pump is known.
 *
 * <pre>
 * Formula   slip ± ε·(swept − slip): an error ε of the volumetric efficiency η, relative to η, is one of ε·η/(1 − η) of the slip
 * Source    ε 3.4 % with worn clearances as measured, 9.4 % with nominal ones, mean errors at 800 rpm; "Volumetric efficiency
 *           prediction of external gear pumps using a leakage model based on dynamic clearances", Actuators 15 (2026) 56, abstract
 *           (found)
 * Range     one external gear pump; taken for other pumps too
 * </pre>
 *
 * @param measured where all clearances are as measured [m³/s], above and below
 * @param nominal  where they are nominal [m³/s], above and below
 */
public record SlipBand(double measured, double nominal) {

    private static final double MEASURED = 0.0335;
    private static final double NOMINAL = 0.0943;

    /**
     * The band of a pump.
     *
     * @param swept what it displaces, as far as it fills [m³/s]
     * @param slip  what slips back of it [m³/s]
     */
    public static SlipBand of(double swept, double slip) {
        double delivered = Math.max(swept - slip, 0);
        return new SlipBand(MEASURED * delivered, NOMINAL * delivered);
    }
}
