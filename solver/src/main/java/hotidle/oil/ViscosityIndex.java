package hotidle.oil;

/**
 * How little an oil thins with heat.
 *
 * <pre>
 * A        VI = 100·(L − U)/(L − H) up to 100; U its viscosity at 40 °C, L and H those of oils of VI 0 and 100 that have the same
 *          viscosity Y at 100 °C
 * B        from 100 on, VI = 100 + (10^N − 1)/0.00715, N = (log H − log U)/log Y
 * L, H     a·Y² + b·Y + c in ranges of Y
 * Source   ASTM D2270-93, §5 and 6, table 2 (coefficients from memory; they join at the ends of their ranges within 0.2 %)
 * Range    Y from 2 mm²/s
 * </pre>
 */
public final class ViscosityIndex {

    private ViscosityIndex() {}

    private static final double SQUARE_MILLIMETRE = 1e-6;

    /** From Y [mm²/s] on: a, b, c of L, then of H. */
    private static final double[][] TABLE = {
        {2.0, 1.14673, 1.7576, -0.109, 0.84155, 1.5521, -0.077},
        {3.8, 3.38095, -15.4952, 33.196, 0.78571, 1.7929, -0.183},
        {4.4, 2.5000, -7.2143, 13.812, 0.82143, 1.5679, 0.119},
        {5.0, 0.10100, 16.6350, -45.469, 0.04985, 9.1613, -18.557},
        {6.4, 3.35714, -23.5643, 78.466, 0.22619, 7.7369, -16.656},
        {7.0, 0.01191, 21.4750, -72.870, 0.79762, -0.7321, 14.610},
        {7.7, 0.41858, 16.1558, -56.040, 0.05794, 10.5156, -28.240},
        {9.0, 0.88779, 7.5527, -16.600, 0.26665, 6.7015, -10.810},
        {12, 0.76720, 10.7972, -38.180, 0.20073, 8.4658, -22.490},
        {15, 0.97305, 5.3135, -2.200, 0.28889, 5.9741, -4.930},
        {18, 0.97256, 5.2500, -0.980, 0.24504, 7.4160, -16.730},
        {22, 0.91413, 7.4759, -21.820, 0.20323, 9.1267, -34.230},
        {28, 0.87031, 9.7157, -50.770, 0.18411, 10.1015, -46.750},
        {40, 0.84703, 12.6752, -133.310, 0.17029, 11.4866, -80.620},
        {55, 0.85921, 11.1009, -83.190, 0.17130, 11.3680, -76.940},
        {70, 0.83531, 14.6731, -216.246, 0.16841, 11.8493, -96.947}
    };

    /**
     * The index, not rounded.
     *
     * @param at40  kinematic viscosity at 40 °C [m²/s]
     * @param at100 at 100 °C [m²/s], 2e-6 or more
     * @throws IllegalArgumentException where the oil is thinner at 100 °C
     */
    public static double of(double at40, double at100) {
        double u = at40 / SQUARE_MILLIMETRE;
        double y = at100 / SQUARE_MILLIMETRE;
        double h = high(y);
        if (u >= h) {
            return 100 * (low(y) - u) / (low(y) - h);
        }
        double n = Math.log10(h / u) / Math.log10(y);
        return 100 + (Math.pow(10, n) - 1) / 0.00715;
    }

    /** L [mm²/s] at Y [mm²/s]. */
    private static double low(double y) {
        return quadratic(row(y), 1, y);
    }

    /** H [mm²/s] at Y [mm²/s]. */
    private static double high(double y) {
        return quadratic(row(y), 4, y);
    }

    private static double quadratic(double[] row, int from, double y) {
        return (row[from] * y + row[from + 1]) * y + row[from + 2];
    }

    private static double[] row(double y) {
        if (!(y >= TABLE[0][0])) {
            throw new IllegalArgumentException("viscosity at 100 °C is " + y + " mm²/s and must be 2 or more");
        }
        double[] found = TABLE[0];
        for (double[] row : TABLE) {
            found = y >= row[0] ? row : found;
        }
        return found;
    }
}
